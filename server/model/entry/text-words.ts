/** Words that no text of a setting is made of: a line with one says something else. */
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { findQuantity } from '../../trade/vocabulary/vocabulary.ts';
import { CHANGES, COMPARISONS, TROUBLES, WANTS } from '../spoken/lexicon.ts';
import type { Word } from './value.ts';

/** Small words that no text of a setting begins or joins with at the bench. */
const LOOSE: ReadonlySet<string> = new Set('to now is are be do did with one when and it'.split(' '));

/** It tells of a trouble, a change, a comparison or a wish. */
export const isLoaded = (text: string): boolean => {
  const lower = text.toLowerCase();
  return (
    TROUBLES.has(lower) ||
    CHANGES.has(lower) ||
    COMPARISONS.has(lower) ||
    WANTS.has(lower) ||
    LOOSE.has(lower)
  );
};

/** A word of the trade that is measured or told by itself, in the text of another. */
export function namesAnother(
  words: readonly Word[],
  at: number,
  quantity: Quantity,
  hasNumber: boolean,
): boolean {
  const found = findQuantity(
    words.map(({ text }) => text),
    at,
  )?.quantity;
  return (
    found !== undefined &&
    found.kind !== 'fact' &&
    found.name !== quantity.name &&
    (hasNumber || found.form !== 'text' || found.kind === 'reading')
  );
}
