import { describe, expect, test } from 'vitest';
import { SOURCES } from './checks/sources.ts';
import { CHECKS } from './outside-checks.ts';

describe('values from outside the project', () => {
  test.each(CHECKS.map((row) => [`${row.source}: ${row.what}`, row] as const))('%s', (_, row) => {
    expect(Math.abs(row.ours() - row.expected)).toBeLessThanOrEqual(row.tolerance);
  });

  test('at least 60 values from at least 12 sources', () => {
    expect(CHECKS.length).toBeGreaterThanOrEqual(60);
    expect(new Set(CHECKS.map((row) => row.source)).size).toBeGreaterThanOrEqual(12);
  });

  test('no row is told twice, and every one is tight enough to fail', () => {
    expect(new Set(CHECKS.map((row) => row.what)).size).toBe(CHECKS.length);
    const loose = CHECKS.filter((row) => row.expected !== 0 && row.tolerance > 0.02 * Math.abs(row.expected));
    expect(loose.map((row) => row.what)).toEqual([]);
  });

  test('every source named is listed, and every source listed is used', () => {
    const used = new Set(CHECKS.map((row) => row.source));
    expect([...used].toSorted()).toEqual(SOURCES.map((source) => source.id).toSorted());
  });
});
