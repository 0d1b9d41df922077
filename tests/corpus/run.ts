/** Runs the corpus: each line where it stands, after what the lines above it mean. */
import { parseLine } from '../../grammar/index.ts';
import { unaccounted } from '../../server/model/entry/every-word-counts.ts';
import { readEntry } from '../../server/model/entry/read-entry.ts';
import type { Habits, SpokenReading } from '../../server/model/spoken/habits.ts';
import { readSpoken } from '../../server/model/spoken/read.ts';
import { keysOf, placed } from './entries.ts';
import { type Class, meantLines, ROWS, type Row } from './rows.ts';

export type Outcome = 'exact' | 'offered' | 'asked' | 'note' | 'unread' | 'misread';

export interface Result {
  readonly row: Row;
  readonly reading: SpokenReading | { readonly status: 'read'; readonly as: readonly string[] };
  readonly outcome: Outcome;
}

export const results = (): readonly Result[] => {
  const machines = new Map<string, string[]>();
  return ROWS.map((row) => {
    const key = `${row.set} ${row.machine}`;
    const above = machines.get(key) ?? [];
    machines.set(key, above);
    const reading = read(row, above);
    const outcome = outcomeOf(row, reading);
    if (row.class === 'read' || row.class === 'danger') above.push(...meantLines(row));
    if (row.class === 'prose') above.push(`note ${row.text}`);
    return { row, reading, outcome };
  });
};

const ENGINES: Readonly<Record<string, Partial<Habits>>> = {
  'us truck': { cylinders: 8, gearbox: 'automatic' },
  'us boat': { places: ['left', 'right'] },
  'uk six': { cylinders: 6, places: ['front carb', 'rear carb'], gearbox: 'manual', wound: 'jets' },
  'uk tractor': { cylinders: 2, gearbox: 'manual' },
  'eu bike': { cylinders: 4, gearbox: 'manual' },
  'eu saloon': { gearbox: 'manual' },
};

function habitsOf(row: Row, above: readonly string[]): Habits {
  const heads = ROWS.filter((each) => each.set === row.set && each.isHead && each.day < row.day);
  const last = heads.at(-1);
  const date = last && /session (\S+)/.exec(last.meaning)?.[1];
  const start = above.findLastIndex((line) => line.startsWith('session'));
  const used = new Map<string, string>();
  for (const { entry } of placed(above))
    if (entry.kind === 'setting' || entry.kind === 'reading')
      for (const value of entry.statements.flatMap(({ values }) => values))
        if (value.form === 'amount' && value.unit) used.set(entry.quantity.name, value.unit.symbol);
  return {
    units: row.set === 'us' ? 'us' : row.set === 'uk' ? 'imperial' : 'metric',
    dayOrder: row.set === 'us' ? 'month first' : 'day first',
    ...(row.isHead ? { date: date ?? '2026-01-01' } : {}),
    section: 'session',
    lines: above.slice(start + 1),
    used,
    ...ENGINES[`${row.set} ${row.machine}`],
  };
}

const AROUND = { section: 'session', words: new Map(), specs: new Map(), inConflict: false } as const;

function read(row: Row, above: readonly string[]): Result['reading'] {
  const entry = readEntry(parseLine(row.text), AROUND);
  if (entry.kind !== 'unknown' && entry.kind !== 'row' && unaccounted(entry, 'session').length === 0)
    return { status: 'read', as: [row.text] };
  return readSpoken(row.text, AROUND, habitsOf(row, above));
}

const sameKeys = (a: readonly string[], b: readonly string[]): boolean => a.join('\n') === b.join('\n');

const KEEPS = (key: string): boolean => !/^(?:todo|fault|done|check)/.test(key);

function outcomeOf(row: Row, reading: Result['reading']): Outcome {
  const stored = reading.status === 'read' || reading.status === 'spoken' ? keysOf(reading.as) : [];
  const offers = 'offers' in reading ? reading.offers : [];
  const meant = keysOf(meantLines(row));
  const wanted = WANTED[row.class];
  if (row.class === 'read') {
    if (reading.status === 'asked')
      return sameKeys(keysOf(split(offers[0] ?? '')), meant) ? 'offered' : 'asked';
    if (reading.status === 'note') return meant.length === 0 ? 'exact' : 'note';
    if (reading.status === 'unread') return 'unread';
    return sameKeys(stored, meant) ? 'exact' : 'misread';
  }
  const wrong = stored.filter((key) => KEEPS(key) && !(row.class === 'danger' && meant.includes(key)));
  if (wrong.length > 0) return 'misread';
  return wanted(row, reading, offers) ? 'exact' : (reading.status as Outcome);
}

const split = (offer: string): readonly string[] => offer.split(' | ');

type Wanted = (row: Row, reading: Result['reading'], offers: readonly string[]) => boolean;

const WANTED: Readonly<Record<Class, Wanted>> = {
  read: () => false,
  ask: (_, reading) => reading.status === 'asked',
  prose: (_, reading) => reading.status === 'note',
  open: (row, _, offers) => offers.some((offer) => offer.startsWith(row.meaning.split(' ')[0] as string)),
  danger: (_, reading, offers) =>
    ('safety' in reading && reading.safety && offers.some((offer) => offer.includes('[safety]'))) ||
    (reading.status === 'spoken' && /knock|check .* bad/.test(reading.as.join())),
};
