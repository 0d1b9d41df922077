import { expect, test } from 'vitest';
import { selections } from '../harness/checks.ts';

const NOTEBOOK = (line: string) => `session 2026-05-02\n${line}\n  keep\n\nsession 2026-05-03`;
const SESSION = (line: string) => `session 2026-05-02\n${line}\n  keep`;

test.each<[marked: string, ...texts: string[]]>([
  ['  idle 850 r‸pm in neutral ; hot', 'rpm', '850 rpm', '850 rpm in neutral', 'idle 850 rpm in neutral'],
  ['  mixture left 1 turn, ri‸ght 2 turns', 'right', 'right 2 turns', 'mixture left 1 turn, right 2 turns'],
  ['  todo cho‸ke: hook it up', 'choke', 'todo choke: hook it up'],
])('%s', (marked, ...texts) => {
  const line = marked.replace('‸', '');
  expect(selections(NOTEBOOK(marked))).toEqual([
    ...new Set([...texts, line, SESSION(line), `${SESSION(line)}\n`, NOTEBOOK(line)]),
  ]);
});

test('a row, its trial, its session', () =>
  expect(
    selections('session 2026-05-02\n  trial stop hole -> vacuum advance\n    1/4 in  7 d‸eg\n  keep').slice(
      1,
    ),
  ).toEqual([
    '7 deg',
    '1/4 in  7 deg',
    '    1/4 in  7 deg',
    '  trial stop hole -> vacuum advance\n    1/4 in  7 deg',
    'session 2026-05-02\n  trial stop hole -> vacuum advance\n    1/4 in  7 deg\n  keep',
  ]));

test.each(['‸', '; a\n‸\n', 'engine\n   ‸'])('blank: %j', (marked) =>
  expect(selections(marked).at(-1)).toBe(marked.replace('‸', '')),
);
