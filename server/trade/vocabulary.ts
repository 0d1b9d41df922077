/** The words of the trade: the one table that completion, hover, checks and documentation read. */
import { FACTS } from './facts.ts';
import { FUEL_SETTINGS } from './fuel-settings.ts';
import { IGNITION_SETTINGS } from './ignition-settings.ts';
import { plausibleSlips, slips } from './nearness.ts';
import type { PlaceKind, Quantity } from './quantity.ts';
import { READINGS } from './readings.ts';

/** Settings, readings and facts. A name is unique among settings and readings, and among the facts of a section. */
export const VOCABULARY: readonly Quantity[] = [
  ...IGNITION_SETTINGS,
  ...FUEL_SETTINGS,
  ...READINGS,
  ...FACTS,
];

/** What each place word is a place of. Cylinders are written `#3` and are not here. */
export const PLACE_WORDS: ReadonlyMap<string, PlaceKind> = new Map([
  ...places(
    'side',
    'left, right, front, rear, centre, center, middle, port, starboard, inner, outer, upper, lower, all',
  ),
  ...places('barrel', 'primary, secondary, primaries, secondaries'),
  ...places(
    'carburettor',
    'front carb, rear carb, left carb, right carb, centre carb, center carb, middle carb',
  ),
  ...places('valve', 'intake, inlet, exhaust'),
  ...places('bank', 'bank a, bank b, bank 1, bank 2, left bank, right bank'),
]);

type Section = NonNullable<Quantity['section']>;
const LONGEST_NAME = 4;
const SESSION_WORDS = spellings(VOCABULARY.filter((row) => row.kind !== 'fact'));
const FACT_WORDS: Readonly<Record<Section, ReadonlyMap<string, Quantity>>> = {
  engine: spellings(FACTS.filter((row) => row.section === 'engine')),
  vehicle: spellings(FACTS.filter((row) => row.section === 'vehicle')),
};
const KNOWN_WORDS: readonly string[] = [
  ...new Set([SESSION_WORDS, FACT_WORDS.engine, FACT_WORDS.vehicle].flatMap((words) => [...words.keys()])),
];

/**
 * The quantity whose name begins at word `from`, by the longest name; `length` is in words. Letter case does not
 * count, and a hyphen is as good as a space. Within a section its own facts come first (`compression` of the engine
 * is a ratio, of a session a pressure); elsewhere settings and readings do.
 */
export function findQuantity(
  words: readonly string[],
  from = 0,
  section?: Section,
): { readonly quantity: Quantity; readonly length: number } | undefined {
  for (let length = Math.min(LONGEST_NAME, words.length - from); length > 0; length--) {
    const quantity = lookUp(nameKey(words, from, length), section);
    if (quantity) return { quantity, length };
  }
  return undefined;
}

/**
 * The known words (and those of `extra`) nearest to one that is unknown, nearest first, at most `count`; none if
 * none is near enough to have been meant.
 */
export function nearestWords(word: string, count: number, extra: readonly string[] = []): string[] {
  const key = nameKey([word], 0, 1);
  const limit = plausibleSlips(key.length);
  return [...new Set([...KNOWN_WORDS, ...extra])]
    .map((known) => ({ known, distance: slips(key, nameKey([known], 0, 1), limit) }))
    .filter(({ distance }) => distance <= limit)
    .sort((a, b) => a.distance - b.distance || a.known.localeCompare(b.known, 'en'))
    .slice(0, count)
    .map(({ known }) => known);
}

function lookUp(key: string, section: Section | undefined): Quantity | undefined {
  const own = section && FACT_WORDS[section].get(key);
  return own ?? SESSION_WORDS.get(key) ?? FACT_WORDS.engine.get(key) ?? FACT_WORDS.vehicle.get(key);
}

function nameKey(words: readonly string[], from: number, length: number): string {
  const joined = length === 1 ? (words[from] ?? '') : words.slice(from, from + length).join(' ');
  return joined.toLowerCase().replaceAll('-', ' ');
}

function spellings(rows: readonly Quantity[]): ReadonlyMap<string, Quantity> {
  return new Map(rows.flatMap((row) => [row.name, ...row.aliases].map((word) => [word, row] as const)));
}

function places(kind: PlaceKind, words: string): readonly (readonly [string, PlaceKind])[] {
  return words.split(', ').map((word) => [word, kind] as const);
}
