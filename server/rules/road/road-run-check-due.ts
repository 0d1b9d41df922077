import { ofName } from '../../model/state/immutable.ts';
import type { State } from '../../model/state/state.ts';
import { ROAD_CHECKS } from '../../trade/practice/road-checks.ts';
import { namesWith } from '../../trade/vocabulary/vocabulary.ts';
import { ofDay } from '../lib/limit-text.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { isRoadRun } from '../lib/road-run.ts';
import { NO_PROBLEMS, type Problem, rule } from '../rule.ts';

export const roadRunCheckDue = rule({
  code: 'road-run-check-due',
  severity: 'warning',
  title: 'A road run with a check still due',
  why: "After work on the throttle or the fuel system a check is due before the next run, and a check that came out bad stays open until it is made again and is ok. Which work makes which check due is common practice without a source; the maker's own list overrules it.",
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

/** Checks due at the first run of a session; at later runs only those due since the run before. */
const dueProblems = (
  { checksDue: due, checksDueSinceRun: dueSinceRun, checks, readings }: State,
  span: Problem['span'],
): Problem[] => {
  const hadRun = ofName(readings, UNDER_WAY, 1).length > 0;
  return [...due]
    .filter(([name]) => checks.get(name)?.ok !== false && (!hadRun || dueSinceRun.has(name)))
    .map(([name, work]) => ({
      span,
      message: `"${name}" has not been checked since the work${ofDay(work)}: ${whyOf(name)}. Check it, then write "check ${name} ok" (common practice, no source).`,
      related: [{ origin: work, message: `Work that makes "${name}" due` }],
    }));
};

const UNDER_WAY = namesWith('underWay');

const badProblems = ({ checks }: State, span: Problem['span']): Problem[] =>
  [...checks]
    .filter(([, { ok }]) => !ok)
    .map(([name, { by }]) => ({
      span,
      message: `"${name}" was bad at the last check${ofDay(by)}. Fix it and check it again before driving.`,
      related: [{ origin: by, message: `Check of "${name}"` }],
    }));

const whyOf = (name: string): string =>
  ROAD_CHECKS.find((check) => check.name === name)?.why ?? 'work may have left it wrong';
