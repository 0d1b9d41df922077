/** Log rows by speed band: mean, lowest and highest of each column, beside the total timing set there. */

import type { State } from '../../model/state/state.ts';
import { formatNumber } from '../../trade/measure/format.ts';
import type { LogTable } from '../../trade/sums/log-table.ts';
import type { LogColumn } from '../../trade/sums/logger.ts';
import { totalAtSpeed } from '../ignition/timing-totals.ts';
import { inWords } from '../inputs.ts';

interface Bands {
  readonly column: LogColumn;
  readonly size: number;
  /** The rows of the table in each band, by the band's low end. */
  readonly rows: ReadonlyMap<number, readonly number[]>;
}

/** Band widths; the finest that gives a table short enough to read at a glance is used. */
const WIDTHS: ReadonlyMap<string, readonly number[]> = new Map(
  Object.entries({
    'engine speed': [250, 500, 1000, 2000, 5000],
    speed: [5, 10, 20, 50, 100],
  }),
);
const MOST_BANDS = 14;

/** By engine speed where it was logged, else by road speed; undefined where neither was. */
export function bandsOf({ columns, values }: LogTable): Bands | undefined {
  for (const [name, widths] of WIDTHS) {
    const i = columns.findIndex((column) => column.name === name);
    const column = columns[i];
    const speeds = values[i] ?? [];
    const { least, most } = extremes(speeds);
    const size = widths.find((each) => Math.floor(most / each) - Math.floor(least / each) < MOST_BANDS);
    if (!column || size === undefined || least > most) continue;
    return { column, size, rows: grouped(speeds, size) };
  }
  return undefined;
}

function grouped(speeds: readonly number[], size: number): ReadonlyMap<number, readonly number[]> {
  const bands = new Map<number, number[]>();
  for (const [row, speed] of speeds.entries()) {
    if (Number.isNaN(speed)) continue;
    const low = Math.floor(speed / size) * size;
    const band = bands.get(low);
    if (band) band.push(row);
    else bands.set(low, [row]);
  }
  return new Map([...bands].sort(([a], [b]) => a - b));
}

/** The means of each column in each band, as cells; the first row names the columns. */
export function bandRows(
  table: LogTable,
  bands: Bands | undefined,
  state: State,
): readonly (readonly string[])[] {
  if (!bands) return [];
  const { column, size } = bands;
  const shown = table.columns
    .map((each, i) => ({ each, i }))
    .filter(({ each }) => each !== column && each.name !== 'time');
  const total = (low: number) => {
    const found = column.name === 'engine speed' ? totalAtSpeed(state, low + size / 2) : undefined;
    return found && inWords(found.value, 'deg');
  };
  const lows = [...bands.rows.keys()];
  const curve = lows.some((low) => total(low) !== undefined);
  const heads = shown.map(({ each }) => headOf(each));
  return [
    [headOf(column), 'lines', ...heads, ...(curve ? ['total as set, mid-band'] : [])],
    ...[...bands.rows].map(([low, rows]) => [
      `${low}..${low + size}`,
      String(rows.length),
      ...shown.map(({ each, i }) =>
        cell(
          rows.map((row) => table.values[i]?.[row] ?? Number.NaN),
          each,
        ),
      ),
      ...(curve ? [total(low) ?? ''] : []),
    ]),
  ];
}

/** A ratio's `:1` belongs to a number. */
export const headOf = ({ name, unit }: Pick<LogColumn, 'name' | 'unit'>): string =>
  unit.symbol.startsWith(':') ? name : `${name} ${unit.symbol}`.trim();

/** Rounding for a mean of log readings. */
const MEAN_FIGURES = 3;

function cell(numbers: readonly number[], { unit }: LogColumn): string {
  const known = numbers.filter((n) => !Number.isNaN(n));
  if (known.length === 0) return '-';
  const { least, most } = extremes(known);
  // Divided before they are added: the sum of what a broken logger writes may be no number.
  const mean = Number(known.reduce((sum, n) => sum + n / known.length, 0).toPrecision(MEAN_FIGURES));
  const said = (n: number) => formatNumber(n, unit);
  return least === most ? said(mean) : `${said(mean)} (${said(least)}..${said(most)})`;
}

/** Without spreading: a log has more lines than a call may have arguments. */
export function extremes(numbers: readonly number[]): { readonly least: number; readonly most: number } {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const n of numbers) {
    if (n < least) least = n;
    if (n > most) most = n;
  }
  return { least, most };
}
