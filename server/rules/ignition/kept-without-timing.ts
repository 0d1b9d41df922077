import { ofName } from '../../model/state/immutable.ts';
import type { State } from '../../model/state/state.ts';
import { namesWith } from '../../trade/vocabulary/vocabulary.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

const TIMINGS = namesWith('sparkTiming');

export const keptWithoutTiming = rule({
  code: 'kept-without-timing',
  severity: 'information',
  title: 'Kept after the points were moved, without checking the timing',
  why: 'Dwell or points gap was changed this session, and the timing moved with it. A setup worth keeping should say where the timing is now.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  initial 9 deg\nsession 2026-05-09\n  points gap 0.016 in\n  timing 9 deg at idle\n  keep\n',
  bad: 'session 2026-05-02\n  initial 9 deg\nsession 2026-05-09\n  points gap 0.016 in\n  keep\n',
  on: ['keep'],
  check({ line }, { before }) {
    const { settings, session } = before;
    const moved = ['dwell', 'points gap'].flatMap((name) => settings.get(`${name}|`) ?? []);
    const now = moved.find(({ by }) => by.date !== undefined && by.date === session?.date);
    if (!now || !timingBefore(before) || timingNow(before)) return NO_PROBLEMS;
    return [
      {
        span: lineSpan(line),
        message: `The ${now.quantity.name} was changed this session and the timing has not been checked since; changing the ${now.quantity.name === 'dwell' ? 'dwell' : 'gap'} moves the timing (common practice, no source).`,
        related: [{ origin: now.by, message: `${now.quantity.name} set here` }],
      },
    ];
  },
});

/** Whether the timing was set on an earlier day, so that it may have moved. */
const timingBefore = ({ settings, session }: State): boolean => {
  const initial = settings.get('initial|');
  return initial !== undefined && initial.by.date !== session?.date;
};

const timingNow = ({ readings }: State): boolean => ofName(readings, TIMINGS, 1).length > 0;
