/** The corpus as data: notes of three kinds of mechanics, line by line, with what each means. */
import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';

export type Class = 'read' | 'ask' | 'prose' | 'open' | 'danger';

export interface Row {
  /** `us`, `uk` or `eu`, with a figure for another writer. */
  readonly set: string;
  readonly day: number;
  readonly machine: string;
  readonly text: string;
  readonly class: Class;
  /** What it means, or what is asked, as the corpus has it. */
  readonly meaning: string;
  readonly isHead: boolean;
}

const LINES = join(import.meta.dirname, 'lines');

const table = (file: string): readonly (readonly string[])[] =>
  readFileSync(file, 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => line.split('\t'));

/** Whose notes those of a day are, where a writer keeps several. */
const MACHINES: Readonly<Record<string, (day: number) => string>> = {
  us: (day) => ([7, 9, 11, 15].includes(day) ? 'boat' : 'truck'),
  uk: (day) => ([3, 9].includes(day) ? 'tractor' : 'six'),
  eu: (day) => (day === 11 ? 'saloon' : 'bike'),
  us2: (day) => ([1, 7].includes(day) ? 'truck' : day === 5 ? 'tractor' : 'boat'),
  uk2: (day) => (day < 5 ? 'saloon' : 'stationary'),
};

const rowOf = (set: string, day: string | undefined): Pick<Row, 'set' | 'day' | 'machine'> => ({
  set,
  day: Number(day),
  machine: MACHINES[set]?.(Number(day)) ?? 'car',
});

const headRow = (set: string, cells: readonly string[]): Row => ({
  ...rowOf(set, cells[0]),
  text: cells.at(-2) as string,
  class: 'read',
  meaning: cells.at(-1) as string,
  isHead: true,
});

const lineRow = (set: string, [day, text, kind, meaning]: readonly string[]): Row => ({
  ...rowOf(set, day),
  text: text as string,
  class: kind as Class,
  meaning: meaning as string,
  isHead: (meaning as string).startsWith('session '),
});

/** Rows of these files in the order they were written, heads first in their days; a file's name begins with its set. */
export function rowsIn(files: readonly string[]): readonly Row[] {
  const rows = files.flatMap((file) => {
    const set = /^[a-z]+\d?/.exec(basename(file))?.[0] ?? '';
    const row = basename(file).includes('.heads') ? headRow : lineRow;
    return table(file).map((cells) => row(set, cells));
  });
  const sets = [...new Set(rows.map(({ set }) => set))];
  return sets.flatMap((set) =>
    rows
      .filter((row) => row.set === set)
      .toSorted((a, b) => a.day - b.day || Number(b.isHead) - Number(a.isHead)),
  );
}

export const ROWS = rowsIn(
  ['us', 'uk.heads', 'uk', 'eu.heads', 'eu'].map((name) => join(LINES, `${name}.tsv`)),
);

/** The lines of the notation that a meaning gives; a remark in brackets is none of them. */
export const meantLines = (row: Row): readonly string[] =>
  row.meaning
    .replace(/^NEW: /, '')
    .split(/ \| (?!note cyl)/)
    .map((line) => line.replace(/ \((?:a|a word|work|18|heading)[^)]*\)$/, '').trim())
    .filter((line) => line !== '');
