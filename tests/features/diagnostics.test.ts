import { expect, test } from 'vitest';
import { MOST_DIAGNOSTICS } from '../../server/features/diagnostics.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { diagnosticsIn } from '../harness/checks.ts';

const WRONG_UNIT = 'session 2026-05-02\n  initial 9 F\n';

test('a finding has its code, its columns and its words', () => {
  const [found] = diagnosticsIn(WRONG_UNIT);
  expect(found).toMatchObject({
    code: 'wrong-unit',
    severity: 'warning',
    range: { start: { line: 1 }, end: { line: 1 } },
    related: [],
  });
});

test.each([
  ['error', ['error']],
  ['hint', ['hint']],
  ['off', []],
] as const)('the reader may make it %s', (level, severities) => {
  const found = diagnosticsIn(WRONG_UNIT, { 'wrong-unit': level });
  expect(found.map(({ severity }) => severity)).toEqual(severities);
});

test('a line that belongs to a finding is a range inside the text', () => {
  const text = 'session 2026-05-02\n  todo strainer: clean it out\n  todo strainer: clean it out again\n';
  const found = diagnosticsIn(text).find(({ code }) => code === 'same-name-twice');
  expect(found?.related).toEqual([
    expect.objectContaining({ range: { start: { line: 1, character: 0 }, end: { line: 1, character: 29 } } }),
  ]);
});

test('beyond the most that are shown the least severe are left out, and it is said how many', () => {
  const warnings = '  initial 9 F\n'.repeat(MOST_DIAGNOSTICS);
  const errors = '  egt 1,200.5 F\n'.repeat(20);
  const text = `session 2026-05-02\n${warnings}${errors}`;
  const all = diagnosticsIn(text, { 'comma-number': 'error', overridden: 'off' });
  expect(all).toHaveLength(MOST_DIAGNOSTICS + 1);
  expect(all.filter(({ code }) => code === 'comma-number')).toHaveLength(20);
  expect(all.at(-1)?.message).toMatch(/^20 more findings are not shown/);
  const lines = all.slice(0, -1).map(({ range }) => range.start.line);
  expect(lines).toEqual(lines.toSorted((a, b) => a - b));
});

/** Sessions with more errors than are shown, and a last one with a warning and a hint. */
const CROWDED = `session 2026-05-02
${'  egt 1,200.5 F\n'.repeat(MOST_DIAGNOSTICS)}session 2026-05-03
${'  egt 1,200.5 F\n'.repeat(200)}  dwell 49 F
${'  note rest\n'.repeat(200)}session 2026-05-04
  dwell 50 F
  egt 1250
`;
const QUIET = { overridden: 'off', 'comma-number': 'error', 'missing-unit': 'hint' } as const;
const linesShown = (edited?: number) =>
  diagnosticsIn(CROWDED, QUIET, edited)
    .slice(0, -1)
    .map(({ range }) => range.start.line);
const [LAST, OLD_WARNING] = [MOST_DIAGNOSTICS + 403, MOST_DIAGNOSTICS + 202];

test('of too many the last session comes first, then the severest, and of equal ones the newest', () => {
  const lines = linesShown();
  expect(lines).toHaveLength(MOST_DIAGNOSTICS);
  expect(lines.slice(-2)).toEqual([LAST + 1, LAST + 2]);
  expect(lines).not.toContain(OLD_WARNING);
  expect(lines[0]).toBe(1 + 2 + 200);
  expect(lines).toEqual(lines.toSorted((a, b) => a - b));
  const all = openNotebook(CROWDED).findings.filter(({ code }) => code !== 'overridden');
  expect(diagnosticsIn(CROWDED, QUIET).at(-1)?.message).toContain(
    `${all.length - MOST_DIAGNOSTICS} more findings`,
  );
});

test.each([
  [OLD_WARNING, [OLD_WARNING]],
  [OLD_WARNING + 50, [OLD_WARNING]],
  [OLD_WARNING + 51, []],
  [10, [1, 10, 60]],
])('and what is near line %d, changed last', (edited, near) => {
  const lines = linesShown(edited);
  expect(lines).toHaveLength(MOST_DIAGNOSTICS);
  expect(lines).toEqual(expect.arrayContaining([...near, LAST + 1, LAST + 2]));
  if (near.length === 0) expect(lines).not.toContain(OLD_WARNING);
});

test('what was never in use is told where it stands, with the line that overrides it', () => {
  const [found, ...more] = diagnosticsIn('session 2026-05-02\n  initial 9 deg\n  initial 11 deg\n');
  expect(more).toEqual([]);
  expect(found).toMatchObject({
    code: 'overridden',
    isUnnecessary: true,
    range: { start: { line: 1, character: 0 }, end: { line: 1, character: 15 } },
    related: [{ range: { start: { line: 2, character: 2 } } }],
  });
});
