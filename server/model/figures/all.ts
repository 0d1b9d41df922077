/** The one table of what is worked out. Add a row here and it is in the hover and in the terminal. */
import { EFFECTS } from './effects.ts';
import type { Figure, Moment, Working } from './figure.ts';
import { TIMING } from './timing.ts';

export const WORKINGS: readonly Working[] = [TIMING, EFFECTS];

/** The figures about a word of the vocabulary, or about `trial`, `session`, `port`, `spec`, `recheck`. */
export const figuresAbout = (word: string, moment: Moment): readonly Figure[] =>
  WORKINGS.filter(({ about }) => about === 'every word' || about.includes(word)).flatMap((working) =>
    working.work(moment, word),
  );

export const allFigures = (moment: Moment): readonly Figure[] =>
  WORKINGS.flatMap((working) => working.work(moment));
