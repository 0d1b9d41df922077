import { NO_PROBLEMS, rule } from './rule.ts';

export const dateBackwards = rule({
  code: 'date-backwards',
  severity: 'warning',
  title: 'A session earlier than one above it',
  why: 'Settings hold from the line that gives them downwards, so sessions stand in the order of their days. A year or month mistyped is the usual reason.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\nsession 2026-05-03\n  initial 10 deg\n',
  bad: 'session 2026-05-02\n  initial 9 deg\nsession 2026-04-03\n  initial 10 deg\n',
  on: ['session'],
  check({ date, dateText }, { before: { lastDate } }) {
    if (!date || !dateText || !lastDate || date >= lastDate.date) return NO_PROBLEMS;
    return [
      {
        span: dateText.span,
        message: `${date} is before ${lastDate.date}, the day of a session above. Sessions stand in the order of their days.`,
        related: [{ origin: lastDate.by, message: `the session of ${lastDate.date}` }],
      },
    ];
  },
});
