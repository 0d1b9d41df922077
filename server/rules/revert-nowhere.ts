import { NO_PROBLEMS, rule } from './rule.ts';

export const revertNowhere = rule({
  code: 'revert-nowhere',
  severity: 'warning',
  title: 'Going back to a day without a session',
  why: "The settings at the end of that day's session are to be in force again, so there must be one above. As it is, nothing is changed by this line.",
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\nsession 2026-05-03\n  revert to 2026-05-02\n',
  bad: 'session 2026-05-02\n  initial 9 deg\nsession 2026-05-03\n  revert to 2026-05-01\n',
  on: ['revert'],
  check({ date, dateSpan }, { before, lookUp }) {
    if (date === undefined || lookUp({ of: 'day', date, asking: before.session?.by.ref })) return NO_PROBLEMS;
    const own = date === before.session?.date;
    return [
      {
        span: dateSpan,
        message: own
          ? `${date} is the day of this session; a revert goes back to one above it.`
          : `No session of ${date} stands above, so nothing is changed.`,
      },
    ];
  },
});
