import type { Origin } from '../../model/entry/entry.ts';
import { ofName } from '../../model/state/immutable.ts';
import type { State } from '../../model/state/state.ts';
import { namesWith } from '../../trade/vocabulary/vocabulary.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const timingAfterDwell = rule({
  code: 'timing-after-dwell',
  severity: 'information',
  title: 'Dwell or points gap changed after the timing was set',
  why: 'Changing the gap or the dwell makes the points open earlier or later, and the spark with them. Set dwell first and timing after, or check the timing again.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  points gap 0.016 in\n  initial 9 deg\n',
  bad: 'session 2026-05-02\n  initial 9 deg\n  points gap 0.016 in\n',
  on: ['setting'],
  about: ({ name }) => name === 'dwell' || name === 'points gap',
  check({ line, quantity }, { before }) {
    if (isOneAct(before, quantity.name)) return NO_PROBLEMS;
    const timing = timingInSession(before);
    if (!timing) return NO_PROBLEMS;
    return [
      {
        span: lineSpan(line),
        message:
          'This changes the timing set earlier in the session. Check it again (common practice, no source).',
        related: [{ origin: timing, message: 'Timing before' }],
      },
    ];
  },
});

/** Whether gap and dwell are set one right after the other: one adjustment, which moves the timing once. */
const isOneAct = ({ notYetUsed: untried }: State, name: string): boolean =>
  [...untried.keys()].at(-1) === (name === 'dwell' ? 'points gap|' : 'dwell|');

function timingInSession({ settings, readings, session }: State): Origin | undefined {
  const initial = settings.get('initial|')?.by;
  if (session && initial && initial.date === session.date) return initial;
  return ofName(readings, TIMINGS)[0]?.by;
}

const TIMINGS = namesWith('sparkTiming');
