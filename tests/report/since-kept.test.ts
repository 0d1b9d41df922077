/** What is set otherwise than at the last session marked to keep, as rows of words. */
import { expect, test } from 'vitest';
import { inForceAt } from '../../server/report/in-force.ts';
import { openNotebook } from '../../server/rules/check.ts';

const BOOK = `session 2026-05-02  Good
  initial 9 deg
  mixture left 1 turn, right 1 turn
  keep
session 2026-05-03
  initial 10 deg
  plug gap 0.035 in
session 2026-05-04  Worse
  initial +2 deg
  mixture left in 1/4 turn
`;

const rowsAt = (text: string, line: number) =>
  inForceAt(openNotebook(text), line).sinceKept.map(({ name, before, after, change, where }) =>
    [name, before, after, change, where && `line ${(where.line ?? 0) + 1}`]
      .map((cell) => cell ?? '-')
      .join(' | '),
  );

test.each<[string, number, readonly string[]]>([
  [
    'at the end',
    9,
    [
      'initial | 9 deg | 12 deg | 3 deg more | line 9',
      'mixture left | 1 turn | 3/4 turn | 1/4 turn less | line 10',
      'plug gap | - | 0.035 in | - | line 7',
    ],
  ],
  ['in the session after it', 5, ['initial | 9 deg | 10 deg | 1 deg more | line 6']],
  ['in the kept session itself nothing', 3, []],
])('%s', (_, line, expected) => expect(rowsAt(BOOK, line)).toEqual(expected));

test('nothing where none is kept', () => expect(rowsAt(BOOK.replace('keep', 'note'), 9)).toEqual([]));

test('nothing once gone back to it', () =>
  expect(rowsAt(`${BOOK}session 2026-05-05\n  revert to 2026-05-02\n`, 11)).toEqual([]));
