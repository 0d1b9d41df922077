/** Notebooks that use another one, in the terminal. */
import { mkdirSync, mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { placeOf } from '../../server/cli/node-files.ts';
import { type Files, ran } from './terminal.ts';

const FILES = {
  'shop/limits.tappet': 'limits\n  total <= 30 deg\n',
  'boats/marsh.tappet': 'use ../shop/limits.tappet\nsession 2026-05-02\n  total 31 deg @ 3000 rpm\n',
  'boats/lost.tappet': 'use limits.tappet\n',
  'boats/out.tappet': 'use ../../limits.tappet\n',
  'a.tappet': 'use b.tappet\n',
  'b.tappet': 'use ./a.tappet\n',
  'boats/photo.tappet':
    'session 2026-05-02\n  photo p/a.jpg\n  photo p/b.jpg\n  log p/run.csv\n  photo ../../c.jpg\n',
  'boats/p/a.jpg': '',
};
const foundIn = (path: string, files: Files) =>
  JSON.parse(ran(`check ${path} --format json`, files).out).files[0].findings.map(
    ({ code }: { code: string }) => code,
  );

test.each([
  ['boats/marsh.tappet', ['over-limit']],
  ['boats/lost.tappet', ['use-missing']],
  ['boats/out.tappet', ['use-outside']],
  ['a.tappet', ['use-cycle']],
  ['b.tappet', ['use-cycle']],
  ['boats/photo.tappet', ['file-missing', 'file-missing']],
])('%s', (path, found) => expect(foundIn(path, FILES)).toEqual(found));

test('what is used holds in what is shown', () =>
  expect(ran('show boats/marsh.tappet', FILES).out).toMatch(/total +<= 30 deg|total.*30 deg/));

describe('notebooks by the thousand', { timeout: 60_000 }, () => {
  const COUNT = 5000;
  const each = <T>(make: (i: number) => T): readonly T[] => Array.from({ length: COUNT }, (_, i) => make(i));
  const chain = (last: string) =>
    Object.fromEntries(each((i) => [`n${i}.tappet`, i < COUNT - 1 ? `use n${i + 1}.tappet\n` : last]));
  const USER = 'use n0.tappet\nsession 2026-05-02\n  total 31 deg @ 3000 rpm\n';

  test('a chain gives at its end what its first one says', () =>
    expect(foundIn('a.tappet', { ...chain(FILES['shop/limits.tappet']), 'a.tappet': USER })).toEqual([
      'over-limit',
    ]));

  test('a circle of them gives nothing, and each has the finding', () => {
    const files = chain('use n0.tappet\n');
    expect(foundIn('a.tappet', { ...files, 'a.tappet': USER })).toEqual([]);
    expect(foundIn('n17.tappet', files)).toEqual(['use-cycle']);
  });

  test('one that uses them all', () => {
    const files = Object.fromEntries(each((i) => [`n${i}.tappet`, FILES['shop/limits.tappet']]));
    const uses = each((i) => `use n${i}.tappet\n`).join('');
    expect(foundIn('a.tappet', { ...files, 'a.tappet': uses + USER.replace(/.*\n/, '') })).toEqual([
      'over-limit',
    ]);
  });
});

let folder: string;
beforeAll(() => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'places-')));
  for (const each of ['repository/.git', 'repository/boats', 'alone'])
    mkdirSync(join(folder, each), { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true }));

test('a notebook may use what lies in its repository, else in its own folder', () => {
  expect(placeOf(join(folder, 'repository/boats/a.tappet'))).toEqual({
    root: join(folder, 'repository'),
    parts: ['boats'],
  });
  expect(placeOf(join(folder, 'alone/a.tappet'))).toEqual({ root: join(folder, 'alone'), parts: [] });
});
