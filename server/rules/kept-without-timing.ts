import type { Carried } from '../model/carry.ts';
import { ofName } from '../model/maps.ts';
import { NO_PROBLEMS, rule } from './rule.ts';
import { lineSpan } from './syntax.ts';

const TIMINGS: ReadonlySet<string> = new Set(['timing', 'total', 'cruise total']);

export const keptWithoutTiming = rule({
  code: 'kept-without-timing',
  severity: 'information',
  title: 'Kept with the points moved and the timing not read',
  why: 'Dwell or gap of the points was changed this session, and the spark moved with them. A setup that is kept should say where the timing is now.',
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
        message: `${now.quantity.name} was set this session and the timing not read since: the spark moves with the points (common practice, no source).`,
        related: [{ origin: now.by, message: `${now.quantity.name} was set here` }],
      },
    ];
  },
});

/** The timing was set on another day, so that it may have moved. */
const timingBefore = ({ settings, session }: Carried): boolean => {
  const initial = settings.get('initial|');
  return initial !== undefined && initial.by.date !== session?.date;
};

const timingNow = ({ readings }: Carried): boolean => ofName(readings, [...TIMINGS], 1).length > 0;
