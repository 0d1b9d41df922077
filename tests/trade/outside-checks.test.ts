/// <reference types="node" />
import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { SOURCES } from '../../server/trade/sources.ts';
import type { Check } from './checks/check.ts';
import { CHECKS } from './outside-checks.ts';

const TABLE = new URL('./CHECKS.md', import.meta.url);

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

  test('the printed table is fresh (write it anew with UPDATE=1)', () => {
    const table = printed();
    if (process.env.UPDATE === '1') writeFileSync(TABLE, table);
    expect(readFileSync(TABLE, 'utf8')).toBe(table);
  });
});

function printed(): string {
  const titles = new Map(SOURCES.map((source) => [source.id, source.title]));
  const rows = CHECKS.map((row) => {
    const cells = [row.what, titles.get(row.source), row.standing, figure(row.expected), figure(row.ours())];
    return `| ${cells.join(' | ')} | ${difference(row)} |`;
  });
  return [
    '# Values from outside, and ours',
    '',
    `Generated from outside-checks.ts: ${CHECKS.length} values, ${titles.size} sources.`,
    '',
    '| What | Source | Standing | Value | Ours | Difference |',
    '|---|---|---|---|---|---|',
    ...rows,
    '',
  ].join('\n');
}

function figure(value: number): string {
  return String(Number(value.toPrecision(7)));
}

/** Differences below a thousandth of the tolerance are rounding of the machine and are not printed, so that the table is stable. */
function difference(row: Check): string {
  const value = row.ours() - row.expected;
  return Math.abs(value) < row.tolerance / 1000 ? '0' : String(Number(value.toPrecision(2)));
}
