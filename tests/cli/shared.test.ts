/** Notebooks that use another one, in the terminal. */
import { mkdirSync, mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { placeOf } from '../../server/cli/node-files.ts';
import { ran } from './terminal.ts';

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
const codes = (path: string) =>
  JSON.parse(ran(`check ${path} --format json`, FILES).out).files[0].findings.map(
    ({ code }: { code: string }) => code,
  );

test.each([
  ['boats/marsh.tappet', ['over-limit']],
  ['boats/lost.tappet', ['use-missing']],
  ['boats/out.tappet', ['use-outside']],
  ['a.tappet', ['use-cycle']],
  ['b.tappet', ['use-cycle']],
  ['boats/photo.tappet', ['file-missing', 'file-missing']],
])('%s', (path, found) => expect(codes(path)).toEqual(found));

test('what is used holds in what is shown', () =>
  expect(ran('show boats/marsh.tappet', FILES).out).toMatch(/total +<= 30 deg|total.*30 deg/));

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
