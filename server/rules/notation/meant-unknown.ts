import { didYouMean, guessAmong } from '../lib/did-you-mean.ts';
import { EVERY_KIND } from '../lib/kinds.ts';
import { type Problem, type RuleFamily, replaceWith, rule } from '../rule.ts';
import { type Meant, meantIn } from '../silencing.ts';

/** The rule on `; meant:` comments, given the codes of all other rules. */
export const meantUnknownAmong = (codes: readonly string[]): RuleFamily =>
  rule({
    code: 'meant-unknown',
    severity: 'information',
    title: 'A comment silences a rule that does not exist',
    why: 'A comment "; meant: CODE" says that the line is right as it is, whatever that rule reports. With an unknown code it silences nothing.',
    standing: 'notation',
    good: 'session 2026-05-02\n  idle 2400 rpm ; meant: outside-band\n',
    bad: 'session 2026-05-02\n  idle 900 rpm ; meant: outside-bnad\n',
    on: EVERY_KIND,
    check: ({ line }) =>
      meantIn(line)
        .filter(({ code }) => !codes.includes(code))
        .map((meant) => problemOf(meant, codes)),
  });

function problemOf({ code, span }: Meant, codes: readonly string[]): Problem {
  const guess = guessAmong(code, codes);
  const nearest = guess.words[0];
  return {
    span,
    message: `There is no rule "${code}".${didYouMean(guess)}`,
    fixes: guess.sure && nearest ? [replaceWith(span, nearest)] : [],
  };
}
