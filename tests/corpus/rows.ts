/** The corpus as data: notes of three kinds of mechanics, line by line, with what each means. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export type Class = 'read' | 'ask' | 'prose' | 'open' | 'danger';

export interface Row {
  readonly set: 'us' | 'uk' | 'eu';
  readonly day: number;
  readonly machine: string;
  readonly text: string;
  readonly class: Class;
  /** What it means, or what is asked, as the corpus has it. */
  readonly meaning: string;
  readonly isHead: boolean;
}

const table = (name: string): readonly (readonly string[])[] =>
  readFileSync(join(import.meta.dirname, 'lines', `${name}.tsv`), 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => line.split('\t'));

const MACHINES: Readonly<Record<Row['set'], (day: number) => string>> = {
  us: (day) => ([7, 9, 11, 15].includes(day) ? 'boat' : 'truck'),
  uk: (day) => ([3, 9].includes(day) ? 'tractor' : 'six'),
  eu: (day) => (day === 11 ? 'saloon' : 'bike'),
};

const headRow = (set: Row['set'], cells: readonly string[]): Row => ({
  set,
  day: Number(cells[0]),
  machine: MACHINES[set](Number(cells[0])),
  text: cells.at(-2) as string,
  class: 'read',
  meaning: cells.at(-1) as string,
  isHead: true,
});

function lineRow(set: Row['set'], [day, text, kind, meaning]: readonly string[]): Row {
  return {
    set,
    day: Number(day),
    machine: MACHINES[set](Number(day)),
    text: text as string,
    class: kind as Class,
    meaning: meaning as string,
    isHead: (meaning as string).startsWith('session '),
  };
}

/** All rows in the order they were written, heads first in their days. */
export const ROWS: readonly Row[] = (['us', 'uk', 'eu'] as const).flatMap((set) => {
  const heads = set === 'us' ? [] : table(`${set}.heads`).map((cells) => headRow(set, cells));
  const lines = table(set).map((cells) => lineRow(set, cells));
  return [...heads, ...lines].toSorted((a, b) => a.day - b.day || Number(b.isHead) - Number(a.isHead));
});

/** The lines of the notation that a meaning gives; a remark in brackets is none of them. */
export const meantLines = (row: Row): readonly string[] =>
  row.meaning
    .replace(/^NEW: /, '')
    .split(/ \| (?!note cyl)/)
    .map((line) => line.replace(/ \((?:a|a word|work|18|heading)[^)]*\)$/, '').trim())
    .filter((line) => line !== '');
