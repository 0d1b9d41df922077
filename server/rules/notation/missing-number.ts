import { runSpan, tokenSpan, tokenText } from '../../../grammar/index.ts';
import { LISTED_KINDS } from '../lib/kinds.ts';
import { amountsIn } from '../lib/line-syntax.ts';
import { type Problem, rule } from '../rule.ts';

export const missingNumber = rule({
  code: 'missing-number',
  severity: 'error',
  title: 'A number is missing',
  why: 'A character such as ~, <, + or .. needs a number with it.',
  standing: 'notation',
  good: 'session 2026-05-02\n  egt 1200..1300 F\n',
  bad: 'session 2026-05-02\n  egt 1200.. F\n',
  outranks: ['unreadable', 'no-value', 'missing-unit', 'unknown-unit'],
  on: LISTED_KINDS,
  formed: ({ syntax }) =>
    [...amountsIn(syntax)].some(
      ({ low, link, high }) => low === undefined || (link !== undefined && high === undefined),
    ),
  check({ line }) {
    const found: Problem[] = [];
    for (const amount of amountsIn(line.syntax)) {
      if (amount.low === undefined && amount.prefix !== undefined) {
        const prefix = tokenText(line, amount.prefix);
        found.push({
          span: tokenSpan(line, amount.prefix),
          message: `A number is missing after "${prefix}".`,
        });
      } else if (amount.link !== undefined && amount.high === undefined) {
        found.push({
          span: runSpan(line, [amount.low ?? amount.link, amount.link + 1]),
          message: `The second number is missing after "${tokenText(line, amount.link)}".`,
        });
      }
    }
    return found;
  },
});
