import { KIND, tokenSpan, tokenText } from '../../../grammar/index.ts';
import { EVERY_KIND } from '../lib/kinds.ts';
import { tokensOf } from '../lib/line-syntax.ts';
import { rule } from '../rule.ts';

export const dividedByNought = rule({
  code: 'divided-by-nought',
  severity: 'error',
  title: 'A fraction over zero',
  why: 'Dividing by zero gives no value, so the number cannot be used.',
  standing: 'notation',
  good: 'session 2026-05-02\n  mixture 1/2 turn\n',
  bad: 'session 2026-05-02\n  mixture 1/0 turn\n',
  on: EVERY_KIND,
  formed: ({ kinds }) => [KIND.Fraction, KIND.Mixed, KIND.Ratio].some((kind) => kinds.includes(kind)),
  check: ({ line }) =>
    [KIND.Fraction, KIND.Mixed, KIND.Ratio]
      .flatMap((kind) => tokensOf(line, kind))
      .filter((token) => /[/:]0+(?:\.0+)?$/.test(tokenText(line, token)))
      .map((token) => ({
        span: tokenSpan(line, token),
        message: `${tokenText(line, token)} divides by zero; the value is ignored.`,
      })),
});
