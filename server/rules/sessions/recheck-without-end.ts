import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const recheckWithoutEnd = rule({
  code: 'recheck-without-end',
  severity: 'warning',
  title: 'A reminder that never falls due',
  why: 'A reminder falls due after a time, a distance, running hours or heat cycles. Without one of them it never does.',
  standing: 'notation',
  good: 'session 2026-05-02\n  recheck head bolts after 200 mi\n',
  bad: 'session 2026-05-02\n  recheck head bolts\n',
  on: ['recheck'],
  check({ name, after, line }) {
    if (name === '') return NO_PROBLEMS;
    const dimension = after?.interval && after.unit?.dimension;
    if (dimension && COUNTED.has(dimension)) return NO_PROBLEMS;
    const span = after?.span ?? lineSpan(line);
    return [
      {
        span,
        message: `When is it due? Write "recheck ${name} after 200 mi", or give h, days or heat cycles.`,
      },
    ];
  },
});

const COUNTED: ReadonlySet<string> = new Set(['time', 'distance', 'heat cycles']);
