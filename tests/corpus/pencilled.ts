/** Lines of our own invention, each word of the trade in the ways it is pencilled, with what they mean; none means that they are asked. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseLine } from '../../grammar/index.ts';
import { unaccounted } from '../../server/model/entry/every-word-counts.ts';
import { readEntry } from '../../server/model/entry/read-entry.ts';
import type { Habits } from '../../server/model/spoken/habits.ts';
import { readSpoken } from '../../server/model/spoken/read.ts';
import { keysOf } from './entries.ts';

interface Pencilled {
  readonly units: 'us' | 'imperial' | 'metric';
  readonly text: string;
  readonly lines: readonly string[];
}

export const PENCILLED: readonly Pencilled[] = readFileSync(
  join(import.meta.dirname, 'lines/pencilled.tsv'),
  'utf8',
)
  .split('\n')
  .filter((line) => line !== '')
  .map((line) => {
    const [units, text = '', meaning = ''] = line.split('\t');
    return { units: units as Pencilled['units'], text, lines: meaning.split(' | ').filter(Boolean) };
  });

const AROUND = { section: 'session', words: new Map(), specs: new Map(), inConflict: false } as const;
const HABITS: Readonly<Record<Pencilled['units'], Habits>> = {
  us: { units: 'us', cylinders: 4, date: '2026-05-01' },
  imperial: { units: 'imperial', cylinders: 4, places: ['left carb', 'right carb'], wound: 'jets' },
  metric: { units: 'metric', cylinders: 4 },
};

/** What a line would leave in force, by the strict reading or as plain speech; `undefined` where it is asked. */
export function storedBy({ text, units }: Pick<Pencilled, 'text' | 'units'>): readonly string[] | undefined {
  const entry = readEntry(parseLine(text), AROUND);
  const isRead =
    entry.kind !== 'unknown' && entry.kind !== 'row' && unaccounted(entry, 'session').length === 0;
  if (isRead) return keysOf([text]);
  const spoken = readSpoken(text, AROUND, HABITS[units]);
  return spoken.status === 'spoken' ? keysOf(spoken.as) : undefined;
}
