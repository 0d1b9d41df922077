import { KIND, tokenSpan, tokenText } from '../../../grammar/index.ts';
import { EVERY_KIND } from '../lib/kinds.ts';
import { tokensOf } from '../lib/line-syntax.ts';
import { rule } from '../rule.ts';

export const notATime = rule({
  code: 'not-a-time',
  severity: 'error',
  title: 'Not a time of day',
  why: 'Times run from 00:00 to 23:59, as ISO 8601 writes them.',
  standing: 'published',
  source: 'ISO 8601',
  good: 'session 2026-05-02 09:30\n  09:45 idle 800 rpm\n',
  bad: 'session 2026-05-02 09:30\n  09:75 idle 800 rpm\n',
  on: EVERY_KIND,
  formed: ({ kinds }) => kinds.includes(KIND.Clock),
  check: ({ line }) =>
    tokensOf(line, KIND.Clock)
      .filter((token) => !isTime(tokenText(line, token)))
      .map((token) => ({
        span: tokenSpan(line, token),
        message: `${tokenText(line, token)} is not a time of day: hours go to 23, minutes and seconds to 59.`,
      })),
});

const isTime = (text: string): boolean => /^(?:[01]?\d|2[0-3])(?::[0-5]\d){1,2}$/.test(text);
