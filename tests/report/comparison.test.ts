import { expect, test } from 'vitest';
import { comparisonOf } from '../../server/report/comparison.ts';
import { comparisonText } from '../../server/report/comparison-text.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { compared } from '../harness/remarks.ts';

const BOOK = `
  notebook  Marsh runner
  session 2026-05-02  Good
    initial 9 deg
    mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm
    idle 850 rpm in neutral
    todo strainer: look
    keep
  session 2026-05-03
    initial 10 deg
    idle 830 rpm in neutral
  session 2026-05-04  Worse
    initial +2 deg
    idle 800 rpm in neutral
    idle 700 rpm in drive
    done strainer
    fault rod: knocks
`;

test('with the session kept: settings, totals, readings of both, items', () => {
  const { before, after, settings, totals, readings, opened, done } = compared(BOOK, {
    line: 12,
    against: 'kept',
  });
  expect([before, after]).toEqual(['2026-05-02 Good', '2026-05-04 Worse']);
  expect(settings).toEqual([{ name: 'initial', before: '9 deg', after: '12 deg', change: '3 deg more' }]);
  expect(totals).toContainEqual({ name: 'total', before: '31 deg', after: '34 deg', change: '3 deg more' });
  expect(readings).toEqual([
    { name: 'idle', before: '850 rpm in neutral', after: '800 rpm in neutral', change: '50 rpm less' },
  ]);
  expect([opened, done]).toEqual([['fault rod: knocks'], ['todo strainer: look']]);
});

test('with what stood before: the readings of the session before', () => {
  const { before, settings, readings } = compared(BOOK, { line: 10, against: 'before' });
  expect(before).toBe('what was before');
  expect(settings).toMatchObject([{ before: '10 deg', after: '12 deg', change: '2 deg more' }]);
  expect(readings).toMatchObject([{ name: 'idle', change: '30 rpm less' }]);
});

test('another part: what there is to set on it, and not what went with the old one', () => {
  const { settings } = compared(
    `
    parts
      carb single "one barrel"
      carb two-Barrel "a pair"
    session 2026-05-02
      fit carb single
      main jet 58
      float level 7/16 in
    session 2026-05-03
      fit carb two-Barrel
      main jet 62
    `,
    { line: 9, against: 'before' },
  );
  expect(settings).toEqual([
    { name: 'carburettor', before: 'carb single', after: 'carb two-Barrel', change: undefined },
    { name: 'main jet', before: '58', after: '62', change: '4 more' },
  ]);
});

test('with any session by a line of it', () =>
  expect(compared(BOOK, { line: 12, against: 8 }).before).toBe('2026-05-03'));

test.each([
  ['no session', 'engine\n', 'There is no session above this line.'],
  ['none kept', 'session 2026-05-02\nsession 2026-05-03\n', 'No earlier session is marked "keep".'],
])('%s: says so', (_what, text, problem) =>
  expect(comparisonOf(openNotebook(text), { line: 1, against: 'kept' })).toEqual({ problem }),
);

test('as a page: tables, and no sign of the notebook is taken for Markdown', () => {
  const text = comparisonText(
    compared(BOOK.replace('knocks', 'knocks | *badly*'), { line: 12, against: 'kept' }),
  );
  expect(text).toContain('# Marsh runner: 2026-05-04 Worse against 2026-05-02 Good\n');
  expect(text).toContain('| initial | 9 deg  | 12 deg | 3 deg more |');
  expect(text).toContain('- fault rod: knocks \\| \\*badly\\*');
});
