/** The words of the trade: the one table that completion, hover, checks and documentation read. */

import { longestPhrase, phraseTree } from '../text/phrase-tree.ts';
import { editDistance, letterDifference, letterSet, maxEdits } from '../text/spelling-distance.ts';
import { FACTS } from './facts.ts';
import { FUEL_SETTINGS } from './fuel-settings.ts';
import { IGNITION_SETTINGS } from './ignition-settings.ts';
import type { PlaceKind, Quantity, Traits } from './quantity.ts';
import { READINGS } from './readings.ts';

/** Settings, readings and facts. A name is unique among settings and readings, and among the facts of a section. */
export const VOCABULARY: readonly Quantity[] = [
  ...IGNITION_SETTINGS,
  ...FUEL_SETTINGS,
  ...READINGS,
  ...FACTS,
];

/** Names of the words that have the trait, in the order of the table. */
export const namesWith = (trait: keyof Traits): readonly string[] =>
  VOCABULARY.filter(({ traits }) => traits?.[trait]).map(({ name }) => name);

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
  ...places('side', 'l, lh, r, rh, stbd'),
  ...places('barrel', 'pri, prim, sec'),
  ...places('valve', 'ex, inl'),
]);

/** Abbreviations of place words. */
export const PLACE_NAMES: ReadonlyMap<string, string> = new Map([
  ['l', 'left'],
  ['lh', 'left'],
  ['r', 'right'],
  ['rh', 'right'],
  ['stbd', 'starboard'],
  ['pri', 'primary'],
  ['prim', 'primary'],
  ['sec', 'secondary'],
  ['ex', 'exhaust'],
  ['inl', 'inlet'],
]);

type Section = NonNullable<Quantity['section']>;
const WORDS = {
  session: spellings(VOCABULARY.filter((row) => row.kind !== 'fact')),
  engine: spellings(FACTS.filter((row) => row.section === 'engine')),
  vehicle: spellings(FACTS.filter((row) => row.section === 'vehicle')),
};
const TREES = {
  session: phraseTree(WORDS.session),
  engine: phraseTree(WORDS.engine),
  vehicle: phraseTree(WORDS.vehicle),
};
/** Which words come first where: a section's own facts, else settings and readings. */
const ORDER = {
  session: [TREES.session, TREES.engine, TREES.vehicle],
  engine: [TREES.engine, TREES.session, TREES.vehicle],
  vehicle: [TREES.vehicle, TREES.session, TREES.engine],
};
const KNOWN = [...new Set(Object.values(WORDS).flatMap((words) => [...words.keys()]))].map(spellingOf);

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
  let found: { value: Quantity; length: number } | undefined;
  for (const tree of ORDER[section ?? 'session']) {
    const match = longestPhrase(tree, words, from, lowerCase);
    if (match && match.length > (found?.length ?? 0)) found = match;
  }
  return found && { quantity: found.value, length: found.length };
}

/**
 * The known words (and those of `extra`) nearest to one that is unknown, nearest first and otherwise in
 * table order, at most `count`; none if none is near enough to have been meant.
 */
export function nearestWords(word: string, count: number, extra: readonly string[] = []): string[] {
  const { key, letters } = spellingOf(word);
  // Short words are all alike: one letter off is another word.
  const limit = key.length < SHORTEST_GUESSED ? 0 : maxEdits(key.length);
  return [...KNOWN, ...extra.map(spellingOf)]
    .filter((known) => letterDifference(letters, known.letters) <= 2 * limit)
    .map((known) => ({ ...known, distance: editDistance(key, known.key, limit) }))
    .filter(({ distance }) => distance <= limit)
    .sort((a, b) => a.distance - b.distance)
    .map((known) => known.word)
    .filter((known, i, all) => all.indexOf(known) === i)
    .slice(0, count);
}

const SHORTEST_GUESSED = 5;

function spellingOf(word: string): { readonly word: string; readonly key: string; readonly letters: number } {
  const key = lowerCase(word).replaceAll('-', ' ');
  return { word, key, letters: letterSet(key) };
}

/** A word without the full stop of an abbreviation: `vac. advance`. */
function lowerCase(word: string): string {
  const lower = word.toLowerCase();
  return lower.endsWith('.') ? lower.slice(0, -1) : lower;
}

function spellings(rows: readonly Quantity[]): ReadonlyMap<string, Quantity> {
  return new Map(rows.flatMap((row) => [row.name, ...row.aliases].map((word) => [word, row] as const)));
}

function places(kind: PlaceKind, words: string): readonly (readonly [string, PlaceKind])[] {
  return words.split(', ').map((word) => [word, kind] as const);
}
