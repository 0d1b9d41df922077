/// <reference types="node" />
import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Check } from './checks/check.ts';
import { SOURCES } from './checks/sources.ts';
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
  const rows = CHECKS.map((row) => [
    row.what,
    titles.get(row.source) ?? '',
    row.standing,
    figure(row.expected),
    figure(row.ours()),
    difference(row),
  ]);
  const count = `Generated from outside-checks.ts: ${CHECKS.length} values, ${titles.size} sources.`;
  const head = ['What', 'Source', 'Standing', 'Value', 'Ours', 'Difference'];
  return ['# Values from outside, and ours', '', count, '', ...aligned(head, rows), ''].join('\n');
}

/** The columns padded as the formatter pads them, so that formatting does not make the table stale. */
function aligned(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  const widths = head.map((_, column) =>
    Math.max(...[head, ...rows].map((cells) => cells[column]?.length ?? 0)),
  );
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join(' | ')} |`;
  return [line(head), line(widths.map((width) => '-'.repeat(width))), ...rows.map(line)];
}

function figure(value: number): string {
  return String(Number(value.toPrecision(7)));
}

/** Differences below a thousandth of the tolerance are rounding of the machine and are not printed, so that the table is stable. */
function difference(row: Check): string {
  const value = row.ours() - row.expected;
  return Math.abs(value) < row.tolerance / 1000 ? '0' : String(Number(value.toPrecision(2)));
}
