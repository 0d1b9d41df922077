/** Data logger's CSV as columns of numbers. What cannot be used is counted and reported, never guessed. */
import Papa from 'papaparse';
import { columnsOf, type LogColumn, type UnreadHeading, unitIn } from './logger.ts';

export interface LogTable {
  readonly columns: readonly LogColumn[];
  /** One list for each of `columns`, all of one length; NaN for a cell without a number. */
  readonly values: readonly (readonly number[])[];
  readonly rows: number;
  readonly unread: readonly UnreadHeading[];
  readonly faults: readonly LogFault[];
}

/** What is wrong with some lines, and the first of them, from one. */
interface LogFault {
  readonly what:
    | 'more or fewer cells than headings'
    | 'a cell that is not a number'
    | 'nothing in any known column';
  readonly count: number;
  readonly firstLine: number;
}

/** Lines searched for the headings: loggers write a few lines about themselves first. */
const HEADING_WITHIN = 60;
const DELIMITERS = [',', ';', '\t', '|'] as const;

/** Reads a whole file's text, or says why it is no log. Time and memory go with its length. Never throws. */
export function readLog(text: string): LogTable | { readonly problem: string } {
  const body = text.replace(/^\uFEFF/, '');
  if (body.trim() === '') return { problem: 'it is empty' };
  if (body.includes('\0')) return { problem: 'it is not text' };
  const head = headOf(body);
  if (!head) return { problem: noHeading(body) };
  const table = collect(body, head);
  return table.rows === 0
    ? { problem: `none of the lines below its headings can be used${faultText(table)}` }
    : table;
}

interface Head {
  readonly delimiter: (typeof DELIMITERS)[number];
  /** Row of the headings, from zero, and how many rows it and a line of units take. */
  readonly row: number;
  readonly height: 1 | 2;
  readonly width: number;
  readonly columns: readonly LogColumn[];
  readonly unread: readonly UnreadHeading[];
}

/** The row with the most known headings, and the delimiter that splits it. */
function headOf(text: string): Head | undefined {
  let best: Head | undefined;
  for (const delimiter of DELIMITERS) {
    const rows = parsedRows(text, delimiter, HEADING_WITHIN + 1);
    for (const [row, cells] of rows.slice(0, HEADING_WITHIN).entries()) {
      const units = unitsBelow(rows[row + 1]);
      const { columns, unread } = columnsOf(cells, units);
      if (!columns.some(({ name }) => name !== 'time') || columns.length <= (best?.columns.length ?? 0))
        continue;
      best = { delimiter, row, height: units ? 2 : 1, width: cells.length, columns, unread };
    }
  }
  return best;
}

const parsedRows = (text: string, delimiter: string, preview: number): readonly (readonly string[])[] =>
  Papa.parse<string[]>(text, { delimiter, preview, skipEmptyLines: false }).data;

/** A line of which no cell is a number and one is a unit. */
function unitsBelow(cells: readonly string[] | undefined): readonly string[] | undefined {
  if (!cells?.some((cell) => unitIn(bare(cell)))) return undefined;
  return cells.some((cell) => numberIn(cell, ',') !== undefined) ? undefined : cells.map(bare);
}

const bare = (cell: string): string => cell.replace(/^[\s([{]+|(?<![\s)\]}])[\s)\]}]+$/g, '');

function noHeading(text: string): string {
  const first =
    text
      .split(/\r\n|\n|\r/, 1)[0]
      ?.trim()
      .slice(0, 80) ?? '';
  return `no heading in its first ${HEADING_WITHIN} lines is a known column with its unit, such as "RPM" or "Speed (mph)"; it begins "${first}"`;
}

function collect(text: string, head: Head): LogTable {
  const { columns, unread } = head;
  const values = columns.map((): number[] => []);
  const faults = new Map<LogFault['what'], LogFault>();
  let line = 0;
  const step = ({ data: cells }: { readonly data: readonly string[] }): void => {
    line++;
    if (line <= head.row + head.height || isEmpty(cells)) return;
    const { numbers, what } = rowIn(cells, head);
    if (what)
      faults.set(what, {
        what,
        firstLine: line,
        ...faults.get(what),
        count: (faults.get(what)?.count ?? 0) + 1,
      });
    if (numbers) for (const [i, list] of values.entries()) list.push(numbers[i] ?? Number.NaN);
  };
  Papa.parse<string[]>(text, { delimiter: head.delimiter, skipEmptyLines: false, step });
  return { columns, values, rows: values[0]?.length ?? 0, unread, faults: [...faults.values()] };
}

interface LogRow {
  /** Undefined where the line is of no use. */
  readonly numbers: readonly (number | undefined)[] | undefined;
  readonly what: LogFault['what'] | undefined;
}

function rowIn(cells: readonly string[], { columns, width, delimiter }: Head): LogRow {
  if (cells.length !== width) return { numbers: undefined, what: 'more or fewer cells than headings' };
  const numbers = columns.map(({ index }) => numberIn(cells[index] ?? '', delimiter));
  if (numbers.every((n) => n === undefined))
    return { numbers: undefined, what: 'nothing in any known column' };
  const isOdd = columns.some(
    ({ index }, i) => numbers[i] === undefined && (cells[index] ?? '').trim() !== '',
  );
  return { numbers, what: isOdd ? 'a cell that is not a number' : undefined };
}

const isEmpty = (cells: readonly string[]): boolean => cells.every((cell) => cell.trim() === '');

/** A decimal comma is accepted where commas do not separate the cells. */
function numberIn(cell: string, delimiter: string): number | undefined {
  const n = Number(cell);
  if (Number.isFinite(n)) return cell.trim() === '' || HEXADECIMAL.test(cell) ? undefined : n;
  const comma = delimiter === ',' ? null : DECIMAL_COMMA.exec(cell);
  const withPoint = comma ? Number(`${comma[1]}.${comma[2]}`) : Number.NaN;
  return Number.isFinite(withPoint) ? withPoint : undefined;
}

const HEXADECIMAL = /[xob]/i;
const DECIMAL_COMMA = /^\s*([+-]?\d+),(\d+)\s*$/;

/** Faults of the file's lines, in words; empty where there are none. */
export function faultText({ faults }: Pick<LogTable, 'faults'>): string {
  return faults
    .map(
      ({ what, count, firstLine }) =>
        `; ${count} ${count === 1 ? 'line' : 'lines'} with ${what}, first at line ${firstLine}`,
    )
    .join('');
}
