import { isEmpty, runSpan, runText } from '../../../grammar/index.ts';
import { matchUnit } from '../../trade/measure/units.ts';
import { EVERY_KIND } from '../lib/kinds.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const elapsedWithoutUnit = rule({
  code: 'elapsed-without-unit',
  severity: 'error',
  title: 'Elapsed time without its unit',
  why: 'A plus sign at the start of a line gives the time since the last one, as a number and a unit of time.',
  standing: 'notation',
  good: 'session 2026-05-02\n  +20 min idle 800 rpm\n',
  bad: 'session 2026-05-02\n  +20 idle 800 rpm\n',
  outranks: ['row-outside-trial', 'row-incomplete', 'no-value', 'unreadable'],
  on: EVERY_KIND,
  formed: ({ syntax }) => !isEmpty(syntax.time),
  check({ time, line }) {
    if (!time?.startsWith('+')) return NO_PROBLEMS;
    const words = runText(line, line.syntax.time).replace(/^\+[\d./\s]*/, '');
    if (matchUnit([words], 0)?.unit.dimension === 'time') return NO_PROBLEMS;
    return [
      {
        span: { from: runSpan(line, line.syntax.time).from, to: lineSpan(line).to },
        message: `"${time}" is not a time. Write a number and s, min or h, such as +20 min.`,
      },
    ];
  },
});
