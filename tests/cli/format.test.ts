import { expect, test } from 'vitest';
import { ran } from './terminal.ts';

const LOOSE = 'engine\ncylinders 4\n';
const LAID = 'engine\n  cylinders        4\n';

test.each<[line: string, code: number, out: string, err?: string]>([
  ['format loose.tappet', 0, LAID],
  ['format laid.tappet', 0, LAID],
  ['format - ', 0, LAID],
  ['format loose.tappet --indent 0', 0, 'engine\ncylinders        4\n'],
  ['format inch.tappet --units table', 0, 'engine\n  bore             3 in\n'],
  ['format loose.tappet laid.tappet', 2, '', 'only one notebook can be printed'],
  ['format', 2, '', 'only one notebook can be printed'],
  ['format --check', 1, 'below/loose.tappet\ninch.tappet\nloose.tappet\n'],
  ['format --check laid.tappet', 0, ''],
  ['format --check loose.tappet none.tappet', 2, 'loose.tappet\n', 'none.tappet: no such file'],
  ['format --check --write', 2, '', 'cannot be used with'],
  ['format --indent 9 loose.tappet', 2, '', 'from 0 to 8'],
  ['format --units inches loose.tappet', 2, '', 'Allowed choices are as written, table'],
  ['format --write -', 2, '', "the standard input can't be written"],
])('%s', (line, code, out, err = '') => {
  const files = {
    '-': LOOSE,
    'loose.tappet': LOOSE,
    'laid.tappet': LAID,
    'inch.tappet': 'engine\n  bore 3"\n',
    'below/loose.tappet': LOOSE,
  };
  const done = ran(line, files);
  expect(done.err).toContain(err);
  expect(done).toMatchObject({ code, out, saved: {} });
  if (!err) expect(done.err).toBe('');
});

test('files are written only with --write, and only those that change', () => {
  const files = { 'loose.tappet': LOOSE, 'laid.tappet': LAID };
  expect(ran('format --write loose.tappet laid.tappet', files)).toEqual({
    code: 0,
    out: 'loose.tappet\n',
    err: '',
    saved: { 'loose.tappet': LAID },
  });
});

test('a byte order mark stays where one was, and none is put where none was', () => {
  const files = { 'marked.tappet': `\uFEFF${LOOSE}`, 'laid.tappet': `\uFEFF${LAID}`, 'plain.tappet': LOOSE };
  expect(ran('format --write', files).saved).toEqual({
    'marked.tappet': `\uFEFF${LAID}`,
    'plain.tappet': LAID,
  });
  expect(ran('format marked.tappet', files).out).toBe(`\uFEFF${LAID}`);
  expect(ran('format --check laid.tappet', files)).toMatchObject({ code: 0, out: '' });
});

test('one that cannot be written is told, and the others are', () => {
  const files = { 'a-locked.tappet': LOOSE, 'b.tappet': LOOSE };
  expect(ran('format --write', files)).toEqual({
    code: 2,
    out: 'b.tappet\n',
    err: 'tappet: a-locked.tappet: not written: no permission\n',
    saved: { 'b.tappet': LAID },
  });
});

test('words that another notebook gives are known', () => {
  const files = {
    'a.tappet': 'use b.tappet\nsession 2026-05-02\nflap gap 3 mm\n',
    'b.tappet': 'words\n  flap gap: setting, 2..5 mm\n',
  };
  expect(ran('format a.tappet', files).out).toBe(
    'use b.tappet\nsession 2026-05-02\n  flap gap         3 mm\n',
  );
});
