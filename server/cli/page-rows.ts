/** Layout of a page of facts: titled sections, rows with line and day in a margin, names and values in columns. */

import { widthOf } from '../../grammar/index.ts';
import type { Where } from '../report/where.ts';
import { padded, visible, wrap } from './layout.ts';
import type { Paint } from './paint.ts';

export interface TextPage {
  readonly paint: Paint;
  readonly columns: number | undefined;
}

/** A fact and the line it is from; `name` has a column of its own. */
export interface PageRow {
  readonly where: Where | undefined;
  readonly name: string;
  readonly value: string;
}

export function section(title: string, lines: readonly string[], { paint }: TextPage): readonly string[] {
  return lines.length > 0 ? [paint('title', title), ...lines] : [];
}

/** Line and day in a margin, then name and value in columns; a value that is too long continues below itself. */
export function rowLines(rows: readonly PageRow[], { paint, columns }: TextPage): readonly string[] {
  const margins = aligned(rows.map(({ where }) => marginParts(where)));
  const names = rows.map(({ name }) => visible(name));
  const before = 2 + Math.max(...margins.map(widthOf));
  const width = Math.max(...names.map(widthOf));
  return rows.flatMap(({ value }, i) => {
    const head = `  ${margins[i]}  ${padded(names[i] as string, width)}`;
    const [first = '', ...more] = besideOrBelow(head, visible(value), columns);
    return [paint('faint', first.slice(0, before)) + first.slice(before), ...more];
  });
}

/** The value in its column; below the name where it does not fit and its column would be too narrow to read. */
function besideOrBelow(head: string, value: string, columns: number | undefined): readonly string[] {
  const whole = `${head}  ${value}`;
  const column = widthOf(head) + 2;
  if (columns === undefined || widthOf(whole) <= columns) return [whole];
  if (columns - column >= LEAST_VALUE) return wrap(whole, columns, column);
  return [...wrap(head.trimEnd(), columns, BELOW.length), ...wrap(BELOW + value, columns, BELOW.length)];
}

/** A column of values narrower than this is harder to read than lines that begin further left. */
const LEAST_VALUE = 24;
const BELOW = '    ';

const marginParts = (where: Where | undefined): readonly [line: string, date: string] => [
  where?.line === undefined ? '' : `line ${where.line + 1}`,
  where?.date ?? '',
];

function aligned(pairs: readonly (readonly [string, string])[]): readonly string[] {
  const [first, second] = [0, 1].map((i) => Math.max(...pairs.map((pair) => widthOf(pair[i] as string))));
  return pairs.map(([a, b]) =>
    second === 0
      ? padded(a, first as number)
      : `${padded(a, first as number)}  ${padded(b, second as number)}`,
  );
}

export const narrower = ({ paint, columns }: TextPage): TextPage => ({
  paint,
  columns: columns && columns - 2,
});
