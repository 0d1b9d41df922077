import { expect, test } from 'vitest';
import { selections } from '../harness/checks.ts';

const NOTEBOOK = (line: string) => `session 2026-05-02\n${line}\n  keep\n\nsession 2026-05-03`;
const SESSION = (line: string) => `session 2026-05-02\n${line}\n  keep`;

test.each<[marked: string, ...texts: string[]]>([
  ['  idle 850 r‸pm in neutral ; hot', 'rpm', '850 rpm', '850 rpm in neutral', 'idle 850 rpm in neutral'],
  ['  mixture left 1 turn, ri‸ght 2 turns', 'right', 'right 2 turns', 'mixture left 1 turn, right 2 turns'],
  ['  todo stra‸iner: clean it out', 'strainer', 'todo strainer: clean it out'],
])('%s', (marked, ...texts) => {
  const line = marked.replace('‸', '');
  expect(selections(NOTEBOOK(marked))).toEqual([
    ...new Set([...texts, line, SESSION(line), `${SESSION(line)}\n`, NOTEBOOK(line)]),
  ]);
});

test('a row, its trial, its session', () =>
  expect(
    selections(
      'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in  12 p‸si\n  keep',
    ).slice(1),
  ).toEqual([
    '12 psi',
    '1/8 in  12 psi',
    '    1/8 in  12 psi',
    '  trial feed restrictor -> oil pressure\n    1/8 in  12 psi',
    'session 2026-05-02\n  trial feed restrictor -> oil pressure\n    1/8 in  12 psi\n  keep',
  ]));

test.each(['‸', '; a\n‸\n', 'engine\n   ‸'])('blank: %j', (marked) =>
  expect(selections(marked).at(-1)).toBe(marked.replace('‸', '')),
);
