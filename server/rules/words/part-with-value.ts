import { amountsIn, lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const partWithValue = rule({
  code: 'part-with-value',
  severity: 'warning',
  title: 'A value under "parts"',
  why: 'Under "parts" a line names a part that may be fitted; apart from a text in quotes the rest is not kept. What was set or read goes under a session, and is lost when a stray "parts" comes before it.',
  standing: 'notation',
  good: 'parts\n  carb twin "pair of side-draughts, 38 mm"\n',
  bad: 'session 2026-05-02\nparts\n  initial 9 deg\n',
  on: ['part'],
  check({ line, name }) {
    if (amountsIn(line.syntax).next().done) return NO_PROBLEMS;
    return [
      {
        span: lineSpan(line),
        message: `This only names a part, "${name}"; the number is not kept. Write what was set or read under a session, or a description in quotes.`,
      },
    ];
  },
});
