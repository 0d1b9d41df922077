/** Unit look-up by spelling, and conversion between units. */

import { longestPhrase, phraseTree } from '../text/phrase-tree.ts';
import { editDistance, maxEdits } from '../text/spelling-distance.ts';
import { type Interval, monotone } from './interval.ts';
import { normalSpelling, UNITS, type Unit } from './unit-table.ts';

export { type Dimension, UNITS, type Unit } from './unit-table.ts';

const BY_ID = new Map(UNITS.map((each) => [each.id, each]));
const BY_SPELLING = spellingMap();
const PHRASES = phraseTree(BY_SPELLING);
/** `850 in drive` means no inches. */
const GEARS = new Set('drive neutral park gear reverse first second third fourth fifth top'.split(' '));

/** The unit of an id of the table. Throws on any other: only the program itself writes ids. */
export function unitById(id: string): Unit {
  const found = BY_ID.get(id);
  if (!found) throw new Error(`no unit "${id}" in the table`);
  return found;
}

/**
 * The unit that begins at word `from`, by the longest spelling; `length` is in words.
 * Letter case, `.`, `·` and inner hyphens do not count.
 */
export function matchUnit(
  words: readonly string[],
  from: number,
): { readonly unit: Unit; readonly length: number } | undefined {
  const found = longestPhrase(PHRASES, words, from, normalSpelling, (end) => !endsInGear(words, end));
  return found && { unit: found.value, length: found.length };
}

/** From one unit to another of the same dimension. Throws where the dimensions differ. */
export function convert(value: number, from: Unit, to: Unit): number {
  if (from === to) return value;
  return convertDifference(value + (from.offset ?? 0), from, to) - (to.offset ?? 0);
}

/** As `convert`, on both ends. */
export function convertInterval(iv: Interval, from: Unit, to: Unit): Interval {
  return from === to ? iv : monotone(iv, (value) => convert(value, from, to));
}

/** A difference of two values: 9 degrees more in F are 5 more in C. Throws where the dimensions differ. */
export function convertDifference(value: number, from: Unit, to: Unit): number {
  if (from.dimension !== to.dimension) throw new Error(`no way from ${from.id} to ${to.id}`);
  return (value * from.factor) / to.factor;
}

/** Unit whose spelling is nearest to an unknown word, if near enough to have been meant. */
export function nearestUnit(word: string): Unit | undefined {
  const key = normalSpelling(word);
  let fewest = maxEdits(key.length);
  let nearest: Unit | undefined;
  for (const [spelling, candidate] of BY_SPELLING) {
    const distance = editDistance(key, spelling, fewest);
    if (distance > fewest || (nearest && distance === fewest)) continue;
    fewest = distance;
    nearest = candidate;
  }
  return nearest;
}

function endsInGear(words: readonly string[], end: number): boolean {
  return words[end - 1]?.toLowerCase() === 'in' && GEARS.has(words[end]?.toLowerCase() ?? '');
}

function spellingMap(): ReadonlyMap<string, Unit> {
  const map = new Map<string, Unit>();
  for (const each of UNITS) {
    for (const spelling of each.spellings) {
      map.set(spelling, each);
      if (spelling.includes(' ')) map.set(spelling.replaceAll(' ', ''), each);
    }
  }
  return map;
}
