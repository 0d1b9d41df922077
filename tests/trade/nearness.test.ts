import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  editDistance,
  letterDifference,
  letterSet,
  maxEdits,
} from '../../server/trade/text/spelling-distance.ts';

/** Worked pairs of the literature on the edit distance: Levenshtein (first two) and Damerau (the swaps). */
it.each([
  ['kitten', 'sitting', 3],
  ['saturday', 'sunday', 3],
  ['ca', 'ac', 1],
  ['ca', 'abc', 3],
  ['idle', 'idle', 0],
  ['', 'idle', 4],
  ['dwell', 'dwel', 1],
])('%s to %s is %d', (a, b, expected) => expect(editDistance(a, b, 9)).toBe(expected));

it('stops counting over the limit', () => expect(editDistance('kitten', 'sitting', 2)).toBe(Infinity));

it('is the same both ways, and 0 for the same word alone', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 8 }), fc.string({ maxLength: 8 }), (a, b) => {
      expect(editDistance(a, b, 99)).toBe(editDistance(b, a, 99));
      expect(editDistance(a, b, 99) === 0).toBe(a === b);
    }),
  );
});

it.each([
  [2, 0],
  [3, 1],
  [6, 2],
  [10, 2],
])('a word of %d letters may hold %d slips', (length, expected) => expect(maxEdits(length)).toBe(expected));

it('never rules out a word by its letters that the slips would let pass', () => {
  const word = fc.string({ unit: fc.constantFrom(...'abcdeé1 '), maxLength: 6 });
  fc.assert(
    fc.property(word, word, (a, b) => {
      expect(letterDifference(letterSet(a), letterSet(b))).toBeLessThanOrEqual(2 * editDistance(a, b, 99));
    }),
  );
});
