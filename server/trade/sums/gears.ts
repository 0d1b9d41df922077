/** Gear names. */

/** First to eighth; the last one fitted is also `top`. */
const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth'] as const;

export const TOP = 'top';
export const OVERDRIVE = 'overdrive';

/** What the gear at an index, from zero, is called. */
export const gearName = (index: number): string => ORDINALS[index] ?? `gear ${index + 1}`;

/** The index from zero of the gear that a word names, of `count`; undefined for a word that names none. */
export function gearIndex(word: string, count: number): number | undefined {
  const lower = word.toLowerCase();
  if (lower === TOP) return count - 1;
  const index: number = (ORDINALS as readonly string[]).indexOf(lower);
  return index >= 0 ? index : undefined;
}

/** Largest plausible slip: a reading with negative slip or more than this is wrong, or in another gear (common practice, no source). */
export const PLAUSIBLE_SLIP = { low: -0.05, high: 0.2 } as const;
