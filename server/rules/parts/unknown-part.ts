import { kindOfPart } from '../../model/state/fitted-parts.ts';
import { lastKeys } from '../../model/state/immutable.ts';
import { didYouMean, guessAmong } from '../lib/did-you-mean.ts';
import { NO_PROBLEMS, replaceWith, rule } from '../rule.ts';

/** Parts that a name is compared with, the latest. */
const MOST_GUESSED = 100;

export const unknownPart = rule({
  code: 'unknown-part',
  severity: 'warning',
  title: 'A part that is not known',
  why: 'Settings belong to a part: fit another one and the settings of the first are put aside. A part is known from the section "parts", or by a word in its name such as carb, distributor or plugs.',
  standing: 'notation',
  good: 'parts\n  carb single "one-barrel downdraught"\nsession 2026-05-02\n  fit carb single\n',
  bad: 'parts\n  carb single "one-barrel downdraught"\nsession 2026-05-02\n  fit carb sinlge\n',
  on: ['fit'],
  check({ name, nameSpan }, { before }) {
    if (name === '' || before.parts.has(name)) return NO_PROBLEMS;
    const guess = guessAmong(name, lastKeys(before.parts, MOST_GUESSED));
    const nearest = guess.words[0];
    if (!nearest && kindOfPart(before, name)) return NO_PROBLEMS;
    return [
      {
        span: nameSpan,
        message: nearest
          ? `There is no part "${name}".${didYouMean(guess)}`
          : `"${name}" is not a known part, so it is not clear which settings go with it. List it under "parts" with a word such as carb or distributor in its name.`,
        fixes: guess.sure && nearest ? [replaceWith(nameSpan, nearest)] : [],
      },
    ];
  },
});
