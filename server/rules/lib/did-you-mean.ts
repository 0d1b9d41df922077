/** Guesses at what an unknown word was meant to be. */

import { FIRST_WORDS } from '../../../grammar/index.ts';
import { lastKeys } from '../../model/state/immutable.ts';
import type { State } from '../../model/state/state.ts';
import { editDistance, maxEdits } from '../../trade/text/spelling-distance.ts';
import { nearestWords } from '../../trade/vocabulary/vocabulary.ts';

export interface Guess {
  /** Nearest first; empty where nothing is near enough. */
  readonly words: readonly string[];
  /** Whether one is nearer than all others. */
  readonly sure: boolean;
}

/** Guesses among the words of the trade, of the notation and of the notebook. */
export function guessWord(word: string, state: State): Guess {
  return guessAmong(
    word,
    nearestWords(word, 3, [...Object.keys(FIRST_WORDS), ...lastKeys(state.words, MOST_GUESSED)]),
  );
}

/** Own words of a notebook that are compared, the latest. */
const MOST_GUESSED = 200;

/** Guesses among the given words. */
export function guessAmong(word: string, known: Iterable<string>): Guess {
  const key = spellingKey(word);
  const near = [...new Set(known)]
    .map((text) => ({ text, distance: editDistance(key, spellingKey(text), maxEdits(key.length)) }))
    .filter(({ distance }) => distance !== Number.POSITIVE_INFINITY)
    .sort((a, b) => a.distance - b.distance);
  const [first, second] = near;
  return {
    words: near.slice(0, 3).map(({ text }) => text),
    sure: first !== undefined && first.distance < (second?.distance ?? Number.POSITIVE_INFINITY),
  };
}

/** ` Did you mean idle or idle jet?`, with a space before; empty where nothing is near. */
export function didYouMean({ words }: Guess): string {
  if (words.length === 0) return '';
  const last = words.at(-1) as string;
  return ` Did you mean ${words.length === 1 ? last : `${words.slice(0, -1).join(', ')} or ${last}`}?`;
}

const spellingKey = (word: string): string => word.toLowerCase().replaceAll('-', ' ');
