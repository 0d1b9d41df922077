import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const checkWithoutAnswer = rule({
  code: 'check-without-answer',
  severity: 'warning',
  title: 'A check without ok or bad',
  why: 'A check is complete only with ok or bad. Without one of them it stays due.',
  standing: 'notation',
  good: 'session 2026-05-02\n  check throttle return ok\n',
  bad: 'session 2026-05-02\n  check throttle return\n',
  on: ['check'],
  check: ({ name, ok, line }) =>
    ok !== undefined || name === ''
      ? NO_PROBLEMS
      : [{ span: lineSpan(line), message: `How did "${name}" come out? End the line with ok or bad.` }],
});
