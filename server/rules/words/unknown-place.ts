import type { Word } from '../../model/entry/value.ts';
import { PLACE_WORDS } from '../../trade/vocabulary/vocabulary.ts';
import { didYouMean, guessAmong } from '../lib/did-you-mean.ts';
import { knownBeside } from '../lib/known-words.ts';
import { type Problem, problemsIn, replaceWith, rule } from '../rule.ts';

export const unknownPlace = rule({
  code: 'unknown-place',
  severity: 'warning',
  title: 'A place that is not known',
  why: 'The place goes between a word and its value: a cylinder such as #3, a side, a barrel. Anything else there is kept as a remark, and the value applies to the whole engine.',
  standing: 'notation',
  good: 'session 2026-05-02\n  mixture left 1 1/4 turns\n',
  bad: 'session 2026-05-02\n  mixture lefft 1 1/4 turns\n',
  on: ['setting', 'reading', 'limit', 'target'],
  about: ({ form }) => form !== 'text' && form !== 'order',
  check({ quantity, statements: said }) {
    return problemsIn(said, ({ words, values, points }) => {
      const value = values[0]?.span.from ?? points[0]?.span.from ?? 0;
      return words
        .filter((word) => word.span.to <= value && !knownBeside(quantity, word.text))
        .map((word) => problemOf(word, quantity.name));
    });
  },
});

function problemOf({ text, span }: Word, name: string): Problem {
  const guess = guessAmong(text, PLACE_WORDS.keys());
  const nearest = guess.words[0];
  return {
    span,
    message: `"${text}" after ${name} is not a known place.${didYouMean(guess)}`,
    fixes: guess.sure && nearest ? [replaceWith(span, nearest)] : [],
  };
}
