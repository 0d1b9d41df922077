import type { Carried } from '../model/carry.ts';
import { ON_THE_MOVE } from '../model/due.ts';
import { ofName } from '../model/maps.ts';
import { ROAD_CHECKS } from '../trade/checks.ts';
import { ofDay } from './limits.ts';
import { isRoadRun } from './road-run.ts';
import { NO_PROBLEMS, type Problem, rule } from './rule.ts';
import { lineSpan } from './syntax.ts';

export const roadRunCheckDue = rule({
  code: 'road-run-check-due',
  severity: 'warning',
  title: 'A road run with a check not made',
  why: "Work on the throttle or the fuel makes a look at it due before the next run, and a check that came out bad stays in the way until it is made again and is ok. Which work makes which check due is common practice without a source; the maker's own list overrules it.",
  standing: 'common practice',
  good: 'session 2026-05-02\n  idle screw 1 turn\n  check throttle return ok\n  speed 30 mph\n',
  bad: 'session 2026-05-02\n  idle screw 1 turn\n  speed 30 mph\n',
  on: ['reading'],
  check(entry, { before }) {
    if (!isRoadRun(entry)) return NO_PROBLEMS;
    const span = lineSpan(entry.line);
    return [...dueProblems(before, span), ...badProblems(before, span)];
  },
});

/** Told at the first run of a session, and again only where the work was done between its runs. */
const dueProblems = ({ due, dueSinceRun, checks, readings }: Carried, span: Problem['span']): Problem[] => {
  const told = ofName(readings, ON_THE_MOVE, 1).length > 0;
  return [...due]
    .filter(([name]) => checks.get(name)?.ok !== false && (!told || dueSinceRun.has(name)))
    .map(([name, work]) => ({
      span,
      message: `"${name}" has not been checked since the work${ofDay(work)}: ${whyOf(name)} (common practice, no source). Look, then write "check ${name} ok".`,
      related: [{ origin: work, message: `the work that makes "${name}" due` }],
    }));
};

const badProblems = ({ checks }: Carried, span: Problem['span']): Problem[] =>
  [...checks]
    .filter(([, { ok }]) => !ok)
    .map(([name, { by }]) => ({
      span,
      message: `"${name}" was bad when it was last checked${ofDay(by)}. Put it right and check it again before the run.`,
      related: [{ origin: by, message: `the check of "${name}"` }],
    }));

const whyOf = (name: string): string =>
  ROAD_CHECKS.find((check) => check.name === name)?.why ?? 'work may have left it wrong';
