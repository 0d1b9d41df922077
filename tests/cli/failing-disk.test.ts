/** Whatever fails while a notebook is written, and whenever the program is killed: the old text or the new one, whole. */
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { builtProgram, type Program } from './program.ts';

const OLD = 'engine\ncylinders 4\nbore 3 in\n';
const NEW = 'engine\n  cylinders        4\n  bore             3 in\n';
/** What writing a file calls that changes something on the disk; a call that is added must be added here. */
const CALLS = [
  'openSync',
  'writeSync',
  'fchownSync',
  'fchownSync',
  'fchmodSync',
  'fsyncSync',
  'closeSync',
  'renameSync',
  'fsyncSync',
];
/** What may fail without a loss: whose it is, its mode, and after the new name is there the last flush. */
const NEEDLESS: ReadonlySet<number> = new Set([3, 4, 5, 9]);
const numbered = CALLS.map((name, i): [at: number, name: string] => [i + 1, name]);

let program: Program;
beforeAll(() => {
  program = builtProgram();
});
afterAll(() => program.remove());
beforeEach(() => {
  for (const name of readdirSync(program.folder)) rmSync(join(program.folder, name));
  writeFileSync(join(program.folder, 'a.tappet'), OLD);
});

function written(disk: string) {
  const shim = join(import.meta.dirname, 'failing-disk.ts');
  const { code, err, trace } = program.shell('tappet format --write a.tappet', {
    env: { DISK: disk, NODE_MORE: `--import ${shim}` },
  });
  return {
    code,
    err,
    calls: trace.split('\n').filter(Boolean),
    text: readFileSync(join(program.folder, 'a.tappet'), 'utf8'),
    files: readdirSync(program.folder).length,
  };
}

describe('a disk that fails', { timeout: 60_000 }, () => {
  test('not at all', () =>
    expect(written('')).toEqual({ code: 0, err: '', calls: CALLS, text: NEW, files: 1 }));

  test('in no way but that it takes little at a time', () =>
    expect(written('0 short')).toMatchObject({ code: 0, err: '', text: NEW, files: 1 }));

  test.each(numbered)('full at call %i, %s', (at) => {
    const { code, err, text, files } = written(`${at} fail ENOSPC`);
    const complaint = 'tappet: a.tappet: not written: no space left on the disk\n';
    expect({ code, err, text, files }).toEqual(
      NEEDLESS.has(at)
        ? { code: 0, err: '', text: NEW, files: 1 }
        : { code: 2, err: complaint, text: OLD, files: 1 },
    );
  });

  test.each(numbered)('killed before call %i, %s', (at) => {
    const { code, text } = written(`${at} kill`);
    expect({ code, text }).toEqual({ code: 137, text: at <= CALLS.indexOf('renameSync') + 1 ? OLD : NEW });
  });

  test.each(numbered)('killed in call %i, %s', (at) => {
    const { code, text } = written(`${at} late`);
    expect({ code, text }).toEqual({ code: 137, text: at <= CALLS.indexOf('renameSync') ? OLD : NEW });
  });

  test.each([
    ['1 fail EACCES', 'no permission to create a file in its folder'],
    ['1 fail EROFS', 'the disk is read-only'],
    ['2 fail EFBIG', 'over the size limit for files here'],
    ['2 fail EDQUOT', 'your disk quota is used up'],
    ['6 fail EIO', 'the disk failed'],
    ['8 fail EACCES', 'no permission'],
    ['8 fail EODD', 'EODD'],
  ])('%s', (disk, why) => {
    const { code, err, text, files } = written(disk);
    expect({ code, text, files }).toEqual({ code: 2, text: OLD, files: 1 });
    expect(err).toMatch(/^tappet: a\.tappet: not written: [^\n]+\n$/);
    expect(err).toContain(why);
  });

  test.each(numbered.slice(0, 7))('another program writes before call %i, %s', (at) =>
    expect(written(`${at} change other`)).toMatchObject({
      code: 2,
      err: 'tappet: a.tappet: not written: another program has changed it since it was read. Run this again\n',
      text: 'other',
      files: 1,
    }),
  );
});
