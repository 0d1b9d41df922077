import { type Line, type Span, tokenSpan, tokenText } from '../../grammar/index.ts';
import { EVERY_KIND } from './kinds.ts';
import { didYouMean, guessAmong } from './nearest.ts';
import { type Problem, type Rule, replaceWith, rule } from './rule.ts';

/** The rule on `; meant:` comments; it knows the codes of all others. */
export const meantUnknownAmong = (codes: readonly string[]): Rule =>
  rule({
    code: 'meant-unknown',
    severity: 'information',
    title: 'A comment silences a rule that there is not',
    why: 'A comment "; meant: CODE" tells that the line is as it should be whatever that rule says. With a code that does not exist it silences nothing.',
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

/** The codes in `; meant: outside-band, ten-times ; a word more`: the line is as it should be, whatever those rules say. */
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
    message: `No rule is called "${code}".${didYouMean(guess)}`,
    fixes: guess.sure && nearest ? [replaceWith(span, nearest)] : [],
  };
}
