import { KIND, tokenSpan } from '../../../grammar/index.ts';
import { EVERY_KIND } from '../lib/kinds.ts';
import { tokensOf } from '../lib/line-syntax.ts';
import { rule } from '../rule.ts';

export const unclosedQuote = rule({
  code: 'unclosed-quote',
  severity: 'error',
  title: 'A quote is opened and not closed',
  why: 'Quoted text ends with a second quote on the same line. Without it there is no telling where the text ends.',
  standing: 'notation',
  good: 'session 2026-05-02\n  plug #4 "sooty, wet"\n',
  bad: 'session 2026-05-02\n  plug #4 "sooty, wet\n',
  outranks: ['unreadable', 'no-value', 'nothing-said'],
  on: EVERY_KIND,
  formed: ({ kinds }) => kinds.includes(KIND.OpenText),
  check: ({ line }) =>
    tokensOf(line, KIND.OpenText).map((token) => ({
      span: tokenSpan(line, token),
      message: 'This quote is not closed. Put a " where the text ends.',
    })),
});
