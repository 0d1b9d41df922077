import { NO_PROBLEMS, rule } from '../rule.ts';

export const revertNowhere = rule({
  code: 'revert-nowhere',
  severity: 'warning',
  title: 'Reverting to a date without a session',
  why: "A revert brings back the settings at the end of that date's session, so there must be such a session above. Without one this line changes nothing.",
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
          ? `${date} is this session's own date. A revert goes back to a session above.`
          : `There is no session of ${date} above, so nothing is changed.`,
      },
    ];
  },
});
