import type { State } from '../../model/state/state.ts';
import { NO_PROBLEMS, type Problem, rule } from '../rule.ts';

export const dateBackwards = rule({
  code: 'date-backwards',
  severity: 'warning',
  title: 'A session earlier than one above it',
  why: 'Settings hold from their line downwards, so sessions go in date order. A mistyped year or month is the usual reason.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\nsession 2026-05-03\n  initial 10 deg\n',
  bad: 'session 2026-05-02\n  initial 9 deg\nsession 2026-04-03\n  initial 10 deg\n',
  on: ['session'],
  check({ date, dateText, clock }, { before: { lastDate } }) {
    if (!date || !dateText || !lastDate || date > lastDate.date) return NO_PROBLEMS;
    if (date === lastDate.date) return sameDay(dateText.span, clock, lastDate);
    return [
      {
        span: dateText.span,
        message: `${date} is before ${lastDate.date}, the date of a session above. Sessions go in date order. Is the year or month mistyped?`,
        related: [{ origin: lastDate.by, message: `Session of ${lastDate.date}` }],
      },
    ];
  },
});

/** Sessions of one day that are not in order of time; the same time twice is most likely a copied session line. */
function sameDay(
  span: Problem['span'],
  clock: string | undefined,
  { clock: before, by }: NonNullable<State['lastDate']>,
): readonly Problem[] {
  if (!clock || !before || minutes(clock) > minutes(before)) return NO_PROBLEMS;
  const message = `${clock} is not after ${before}, the time of a session above on the same day. Is the date right?`;
  return [{ span, message, related: [{ origin: by, message: 'Session above' }] }];
}

function minutes(clock: string): number {
  const [hours = 0, past = 0] = clock.split(':').map(Number);
  return 60 * hours + past;
}
