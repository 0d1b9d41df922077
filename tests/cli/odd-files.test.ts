/** Files that are none, and answers that nobody takes: one line says so, and nothing waits without end. */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { builtProgram, type Program } from './program.ts';

const OLD = `engine\ncylinders 4\n${'; a remark of some length\n'.repeat(1000)}`;
/** Anybody but root, whom nothing is forbidden. */
const NOBODY = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};
const PREPARED = [
  'ln -s b.tappet a.tappet; ln -s a.tappet b.tappet',
  'mkfifo pipe.tappet',
  'mkdir folder.tappet empty',
  'mkdir books; ln -s ../books books/again',
  "printf '\\xff\\xfee\\0n\\0g\\0' > utf16.tappet",
  "printf '\\x7fELF\\0\\x80\\x81' > binary.tappet",
  'truncate -s 101M huge.tappet',
  'mkdir locked; cp long.tappet locked/a.tappet; chmod 666 locked/a.tappet; chmod 555 locked',
  'cp long.tappet secret.tappet; chmod 0 secret.tappet',
  'cp long.tappet fixed.tappet; chmod 444 fixed.tappet',
  'mkdir shut; chmod 0 shut',
  'cp long.tappet one.tappet; ln one.tappet two.tappet',
  'cp long.tappet real.tappet; ln -s real.tappet link.tappet; chmod 666 real.tappet',
].join('\n');

/** Where there are pipes with names and a disk that is always full. */
const HAS_DEVICES = existsSync('/dev/full');

let program: Program;
beforeAll(() => {
  program = builtProgram();
});
afterAll(() => program.remove());
beforeEach(() => {
  spawnSync('chmod', ['-R', 'u+rwx', program.folder]);
  for (const name of readdirSync(program.folder))
    rmSync(join(program.folder, name), { recursive: true, force: true });
  writeFileSync(join(program.folder, 'long.tappet'), OLD);
  program.shell(`chmod 777 .; ${PREPARED}`);
});

describe.runIf(HAS_DEVICES)('one line, and exit code 2', { timeout: 60_000 }, () => {
  test.each<[line: string, err: string]>([
    ['check a.tappet', 'a.tappet: its symbolic links form a loop'],
    ['show a.tappet', 'a.tappet: its symbolic links form a loop'],
    ['format --write a.tappet', 'a.tappet: its symbolic links form a loop'],
    ['check pipe.tappet', 'pipe.tappet: this is a pipe, not a file. Use - to read the standard input'],
    [
      'format --write pipe.tappet',
      'pipe.tappet: this is a pipe, not a file. Use - to read the standard input',
    ],
    ['check /dev/zero', '/dev/zero: this is a device, not a file'],
    ['show /dev/zero', '/dev/zero: this is a device, not a file'],
    ['format --write /dev/null', '/dev/null: this is a device, not a file'],
    ['check - < /dev/zero', '-: too large: more than 100 MB'],
    ['check huge.tappet', 'huge.tappet: too large: more than 100 MB'],
    ['show folder.tappet', 'folder.tappet: this is a folder, not a notebook'],
    ['check empty', 'empty: no notebooks (*.tappet) here'],
    ['check books', 'books: no notebooks (*.tappet) here'],
    ['check - < empty', '-: this is a folder, not a notebook'],
    ['check utf16.tappet', 'utf16.tappet: not UTF-8 text'],
    ['format --write binary.tappet', 'binary.tappet: not UTF-8 text'],
    ['check none.tappet', 'none.tappet: no such file'],
    ['check secret.tappet', 'secret.tappet: no permission'],
    ['check shut', 'shut: no permission'],
    ['check shut/a.tappet', 'shut/a.tappet: no permission'],
    [`check ${'n'.repeat(300)}.tappet`, `${'n'.repeat(300)}.tappet: the name is too long`],
    ['check long.tappet > /dev/full', 'the output was cut short: no space left on the disk'],
    ['show long.tappet > /dev/full', 'the output was cut short: no space left on the disk'],
    ['explain > /dev/full', 'the output was cut short: no space left on the disk'],
    ['--help > /dev/full', 'the output was cut short: no space left on the disk'],
    [
      'format --write locked/a.tappet',
      'locked/a.tappet: not written: no permission to create a file in its folder. A file is replaced by a whole new one or not at all',
    ],
    ['format --write fixed.tappet', 'fixed.tappet: not written: no permission'],
    [
      'format --write two.tappet',
      'two.tappet: not written: it has other names on the disk (hard links), which would keep the old text. Without --write the formatted text is printed',
    ],
  ])('tappet %s', (line, err) => {
    const ran = program.shell(`tappet ${line}`, NOBODY);
    const { checked, ...rest } = { ...ran, checked: ran.out.replace(/^0 notebooks checked.*\n/, '') };
    expect({ ...rest, out: checked }).toEqual({ code: 2, out: '', err: `tappet: ${err}\n`, trace: '' });
    for (const each of ['locked/a.tappet', 'fixed.tappet', 'one.tappet'])
      expect(readFileSync(join(program.folder, each), 'utf8')).toBe(OLD);
  });

  test('a size limit for files leaves the notebook whole', () => {
    const ran = program.shell('ulimit -f 8; tappet format --write long.tappet');
    expect(ran).toMatchObject({
      code: 2,
      err: 'tappet: long.tappet: not written: over the size limit for files here\n',
    });
    expect(readFileSync(join(program.folder, 'long.tappet'), 'utf8')).toBe(OLD);
    expect(readdirSync(program.folder).filter((name) => name.endsWith('.tmp'))).toEqual([]);
  });

  test('a complaint that nobody can be told ends with 2 all the same', () =>
    expect(program.shell('tappet check none.tappet 2> /dev/full').code).toBe(2));
});

describe.runIf(HAS_DEVICES)('all the same', { timeout: 60_000 }, () => {
  test('what lies beside odd files is checked', () => {
    const { code, out, err } = program.shell('tappet check', NOBODY);
    expect(code).toBe(2);
    expect(out).toContain('7 notebooks checked');
    expect(err.match(/^tappet: [^:]+/gm)?.map((line) => line.slice(8))).toEqual([
      'shut/',
      'a.tappet',
      'b.tappet',
      'binary.tappet',
      'huge.tappet',
      'pipe.tappet',
      'secret.tappet',
      'utf16.tappet',
    ]);
  });

  test('a reader who has enough ends it quietly', () => {
    const { out, err } = program.shell('(tappet explain; echo $? >&3) | head -n 1');
    expect([out.split('\n').length, err]).toEqual([2, '']);
  });

  test('a link is followed and stays a link', () => {
    expect(program.shell('tappet format --write link.tappet; ls -l link.tappet', NOBODY).out).toMatch(
      /-> real\.tappet\n$/,
    );
    expect(readFileSync(join(program.folder, 'real.tappet'), 'utf8')).toContain('  cylinders');
  });
});
