/** What stays as it was when a file is replaced, and what is not replaced. */
import {
  chmodSync,
  chownSync,
  linkSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { replaceFile } from '../../server/cli/replace-file.ts';

const OLD = 'the old text\n';
const NEW = 'the new text, °\n';
const IS_ROOT = process.getuid?.() === 0;
let folder: string;
const at = (...parts: string[]): string => join(folder, ...parts);

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'replace-'));
  mkdirSync(at('real'));
  writeFileSync(at('real/a'), OLD);
});
afterEach(() => rmSync(folder, { recursive: true }));

test('the text is the new one, and nothing is left beside it', () => {
  replaceFile(at('real/a'), OLD, NEW);
  expect(readFileSync(at('real/a'), 'utf8')).toBe(NEW);
  expect(readdirSync(at('real'))).toEqual(['a']);
});

const UUID = '123e4567-e89b-42d3-a456-426614174000';

test.each<[what: string, name: string, minutes: number, stays: boolean]>([
  ['what a kill left behind long ago goes', `.tappet-${UUID}.tmp`, 2, false],
  ['what another program may be writing stays', `.tappet-${UUID}.tmp`, 0.5, true],
  ['what is none of ours stays', '.tappet-old.tmp', 2, true],
  ['a copy that somebody made stays', `.tappet-${UUID}.tmp.bak`, 2, true],
])('%s', (_, name, minutes, stays) => {
  writeFileSync(at('real', name), NEW);
  const then = Date.now() / 1000 - 60 * minutes;
  utimesSync(at('real', name), then, then);
  replaceFile(at('real/a'), OLD, NEW);
  expect(readdirSync(at('real'))).toEqual(stays ? [name, 'a'] : ['a']);
});

test.each([0o600, 0o640, 0o664, 0o755])('a mode of %o stays', (mode) => {
  chmodSync(at('real/a'), mode);
  replaceFile(at('real/a'), OLD, NEW);
  expect(statSync(at('real/a')).mode & 0o7777).toBe(mode);
});

test.runIf(IS_ROOT)('the owner and the group stay', () => {
  chownSync(at('real/a'), 12, 34);
  replaceFile(at('real/a'), OLD, NEW);
  const { uid, gid } = statSync(at('real/a'));
  expect([uid, gid]).toEqual([12, 34]);
});

test('a link stays one, through another link and a linked folder, and what it leads to is replaced', () => {
  symlinkSync('real', at('way'));
  symlinkSync('way/a', at('near'));
  symlinkSync(at('near'), at('far'));
  replaceFile(at('far'), OLD, NEW);
  expect(readFileSync(at('real/a'), 'utf8')).toBe(NEW);
  expect([readlinkSync(at('far')), readlinkSync(at('near'))]).toEqual([at('near'), 'way/a']);
  expect(lstatSync(at('real/a')).isFile()).toBe(true);
  expect(readdirSync(folder).toSorted()).toEqual(['far', 'near', 'real', 'way']);
});

describe('left as it is, with nothing beside it:', () => {
  test.each<[what: string, before: string, prepare: () => void, code: string]>([
    ['one that was changed', OLD, () => writeFileSync(at('real/a'), OLD.replace('o', 'O')), 'CHANGED'],
    ['one that is longer now', OLD, () => writeFileSync(at('real/a'), `${OLD}more\n`), 'CHANGED'],
    ['one that is shorter now', OLD, () => writeFileSync(at('real/a'), ''), 'CHANGED'],
    ['one with two names', OLD, () => linkSync(at('real/a'), at('b')), 'SEVERAL_NAMES'],
    ['one that has gone', OLD, () => rmSync(at('real/a')), 'ENOENT'],
    [
      'one that is a folder now',
      OLD,
      () => {
        rmSync(at('real/a'));
        mkdirSync(at('real/a'));
      },
      'FOLDER',
    ],
    [
      'a circle of links',
      OLD,
      () => {
        rmSync(at('real/a'));
        symlinkSync('a', at('real/a'));
      },
      'ELOOP',
    ],
  ])('%s', (_, before, prepare, code) => {
    prepare();
    const was = seen();
    expect(() => replaceFile(at('real/a'), before, NEW)).toThrow(expect.objectContaining({ code }));
    expect(seen()).toEqual(was);
  });
});

function seen() {
  return readdirSync(at('real')).map((name) => {
    const { ino, size } = lstatSync(at('real', name));
    return { name, ino, size };
  });
}
