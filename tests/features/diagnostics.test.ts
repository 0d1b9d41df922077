import { expect, test } from 'vitest';
import { MOST_DIAGNOSTICS } from '../../server/features/diagnostics.ts';
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
  const errors = '  initial 9,5 deg\n'.repeat(20);
  const text = `session 2026-05-02\n${warnings}${errors}`;
  const all = diagnosticsIn(text, { 'comma-number': 'error', overridden: 'off' });
  expect(all).toHaveLength(MOST_DIAGNOSTICS + 1);
  expect(all.filter(({ code }) => code === 'comma-number')).toHaveLength(20);
  expect(all.at(-1)?.message).toMatch(/^20 more findings are left out/);
  const lines = all.slice(0, -1).map(({ range }) => range.start.line);
  expect(lines).toEqual(lines.toSorted((a, b) => a - b));
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
