/** CHECKS.md: the values from outside, printed. */
import type { Check } from './checks/check.ts';
import { SOURCES } from './checks/sources.ts';
import { CHECKS } from './outside-checks.ts';

/** The table as Markdown, each value with ours beside it. */
export function printedChecks(): string {
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
