/** A logger's file summarised by bands of speed, beside what the engine was set to as it was taken. */
import { formatNumber } from '../../trade/format.ts';
import { range } from '../../trade/interval.ts';
import { faultText, type LogTable, readLog } from '../../trade/log-table.ts';
import type { LogColumn } from '../../trade/logger.ts';
import type { InForce } from '../carry.ts';
import { totalAtSpeed } from '../derive.ts';
import { settingText } from '../describe.ts';
import type { FileProblem, FileText } from '../files.ts';
import { type LogLine, logLinesAt } from '../logs.ts';
import { type Figure, figure, type Input, type Moment, type Working } from './figure.ts';
import { inWords } from './known.ts';

export const LOGS: Working = { topic: 'road', about: ['log'], work: logs };

/** The paths of the logs that figures of this moment tell of, as the notebook writes them. */
export const logsWanted = (moment: Moment, word?: string): readonly string[] =>
  word === undefined || word === 'log'
    ? [...new Set(logLinesAt(moment.snapshot, moment.line, word).map(({ path }) => path))]
    : [];

/** On a log's own line that log, else those of the latest session that has any. Nothing of files that were not read. */
function logs(moment: Moment, word?: string): readonly Figure[] {
  const { files, snapshot, line } = moment;
  if (!files) return [];
  return logLinesAt(snapshot, line, word).flatMap((log) => {
    const file = files.get(log.path);
    return file ? [logFigure(log, file)] : [];
  });
}

/** Kept as long as the door keeps the text: a log of twenty megabytes is read once, not at every look. */
const tables = new WeakMap<FileText, ReturnType<typeof readLog>>();

function tableOf(file: FileText): ReturnType<typeof readLog> {
  if ('problem' in file) return { problem: PROBLEMS[file.problem] };
  const table = tables.get(file) ?? readLog(file.text);
  tables.set(file, table);
  return table;
}

const PROBLEMS: Readonly<Record<FileProblem, string>> = {
  missing: 'there is no such file',
  'too large': 'it is larger than 20 MB: cut out the runs that matter',
  outside: 'it lies outside the folder that may be read; put it beside the notebook',
  'not text': 'it is no text in UTF-8',
  'not readable': 'it could not be read',
};

const BANDS = {
  topic: 'road',
  standing: 'published',
  source: "the logger's own file; the mean of what fell into each band",
} as const;

function logFigure(log: LogLine, file: FileText): Figure {
  const table = tableOf(file);
  const name = `log ${log.path}`;
  const input: Input = { name: 'log', value: log.path, by: log.by };
  if ('problem' in table)
    return figure({
      ...BANDS,
      name,
      text: `cannot be summarised: ${table.problem}`,
      formula: 'mean in each band of speed',
      working: table.problem,
      inputs: [input],
    });
  const bands = bandsOf(table);
  return figure({
    ...BANDS,
    name,
    text: `${summary(table)}${faultText(table)}${unreadText(table)}`,
    formula: bands ? `mean (least..most) in each band of ${bands.column.name}` : 'mean (least..most)',
    working: `${table.rows} lines, ${table.columns.map(({ heading, name: known, unit }) => `"${heading.trim()}" as ${headOf({ name: known, unit })}`).join(', ')}`,
    inputs: [input, ...settingInputs(log)],
    caution: 'Read a log at home, or let a passenger watch it: never while driving.',
    rows: rowsOf(table, bands, log),
  });
}

/** What an engine runs by; the rest of the settings says nothing of a run. */
const OWNERS: ReadonlySet<InForce['quantity']['owner']> = new Set([
  'carburettor',
  'distributor',
  'fuel system',
  'blower',
  'plugs',
]);

const settingInputs = ({ carried }: LogLine): readonly Input[] =>
  [...carried.settings.values()]
    .filter(({ quantity }) => OWNERS.has(quantity.owner))
    .map((setting) => ({
      name: [setting.quantity.name, setting.place].filter(Boolean).join(' '),
      value: settingText(setting),
      by: setting.by,
    }));

function summary({ columns, values, rows }: LogTable): string {
  const spans = columns.flatMap((column, i) => {
    const known = (values[i] ?? []).filter((n) => !Number.isNaN(n));
    return known.length > 0 ? [`${column.name} ${spanText(known, column)}`] : [];
  });
  return [`${rows} ${rows === 1 ? 'line' : 'lines'}`, ...spans].join(', ');
}

function spanText(numbers: readonly number[], { unit }: LogColumn): string {
  const { least, most } = extremes(numbers);
  return inWords(range(least, most), unit.id);
}

/** Without spreading: a log has more lines than a call may have arguments. */
function extremes(numbers: readonly number[]): { readonly least: number; readonly most: number } {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const n of numbers) {
    if (n < least) least = n;
    if (n > most) most = n;
  }
  return { least, most };
}

function unreadText({ unread }: LogTable): string {
  if (unread.length === 0) return '';
  const told = unread.slice(0, 6).map(({ heading, why }) => `"${heading.trim()}" (${why})`);
  return `; not used: ${told.join(', ')}${unread.length > 6 ? ` and ${unread.length - 6} more` : ''}`;
}

interface Bands {
  readonly column: LogColumn;
  readonly size: number;
  /** The rows of the table in each band, by the band's low end. */
  readonly rows: ReadonlyMap<number, readonly number[]>;
}

/** Round widths, the finest that gives no more bands than are read at a glance. */
const WIDTHS: Readonly<Record<string, readonly number[]>> = {
  'engine speed': [250, 500, 1000, 2000, 5000],
  speed: [5, 10, 20, 50, 100],
};
const MOST_BANDS = 14;

function bandsOf({ columns, values }: LogTable): Bands | undefined {
  for (const [name, widths] of Object.entries(WIDTHS)) {
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

function rowsOf(table: LogTable, bands: Bands | undefined, { carried }: LogLine): Figure['rows'] {
  if (!bands) return [];
  const { column, size } = bands;
  const told = table.columns
    .map((each, i) => ({ each, i }))
    .filter(({ each }) => each !== column && each.name !== 'time');
  const total = (low: number) => {
    const found = column.name === 'engine speed' ? totalAtSpeed(carried, low + size / 2) : undefined;
    return found && 'value' in found ? inWords(found.value, 'deg') : undefined;
  };
  const lows = [...bands.rows.keys()];
  const curve = lows.some((low) => total(low) !== undefined);
  const heads = told.map(({ each }) => headOf(each));
  return [
    [headOf(column), 'lines', ...heads, ...(curve ? ['total set, mid-band'] : [])],
    ...[...bands.rows].map(([low, rows]) => [
      `${low}..${low + size}`,
      String(rows.length),
      ...told.map(({ each, i }) =>
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
const headOf = ({ name, unit }: Pick<LogColumn, 'name' | 'unit'>): string =>
  unit.symbol.startsWith(':') ? name : `${name} ${unit.symbol}`.trim();

/** A mean of a logger's readings is worth no more. */
const MEAN_FIGURES = 3;

function cell(numbers: readonly number[], { unit }: LogColumn): string {
  const known = numbers.filter((n) => !Number.isNaN(n));
  if (known.length === 0) return '-';
  const { least, most } = extremes(known);
  const mean = Number((known.reduce((sum, n) => sum + n, 0) / known.length).toPrecision(MEAN_FIGURES));
  const said = (n: number) => formatNumber(n, unit);
  return least === most ? said(mean) : `${said(mean)} (${said(least)}..${said(most)})`;
}
