import { type Line, type Span, tokenSpan, tokenText } from '../../../grammar/index.ts';
import { didYouMean, guessAmong } from '../lib/did-you-mean.ts';
import { EVERY_KIND } from '../lib/kinds.ts';
import { type Problem, type RuleFamily, replaceWith, rule } from '../rule.ts';

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

export interface Meant {
  readonly code: string;
  readonly span: Span;
}

/** The codes in `; meant: outside-band, ten-times ; a remark`: rules whose findings on this line are silenced. */
export function meantIn(line: Line): readonly Meant[] {
  if (line.comment === undefined) return NOTHING_MEANT;
  const comment = tokenText(line, line.comment);
  const head = /^;\s*meant:/i.exec(comment)?.[0];
  if (head === undefined) return NOTHING_MEANT;
  const from = tokenSpan(line, line.comment).from + head.length;
  const [codes = ''] = comment.slice(head.length).split(';');
  return [...codes.matchAll(/[^\s,]+/g)].map(({ 0: text, index }) => ({
    code: text.toLowerCase(),
    span: { from: from + index, to: from + index + text.length },
  }));
}

const NOTHING_MEANT: readonly Meant[] = [];

function problemOf({ code, span }: Meant, codes: readonly string[]): Problem {
  const guess = guessAmong(code, codes);
  const nearest = guess.words[0];
  return {
    span,
    message: `There is no rule "${code}".${didYouMean(guess)}`,
    fixes: guess.sure && nearest ? [replaceWith(span, nearest)] : [],
  };
}
