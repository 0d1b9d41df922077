import { isInGear, isOutOfGear } from '../../analysis/fuel/idle-readings.ts';
import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Context } from '../../model/snapshot/finding.ts';
import { ofName } from '../../model/state/immutable.ts';
import type { SessionReading } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { type Interval, surelyAbove } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import { valueIn } from '../lib/statement-values.ts';
import { type Problem, problemsIn, rule } from '../rule.ts';

export const idleSwapped = rule({
  code: 'idle-swapped',
  severity: 'warning',
  title: 'Idle in gear above idle in neutral',
  why: 'The gearbox loads the engine, so it idles slower in gear. The other way round, with nothing adjusted just before the second reading, the two were most likely swapped.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  idle 850 rpm in neutral\n  idle 720 rpm in drive\n',
  bad: 'session 2026-05-02\n  idle 720 rpm in neutral\n  idle 850 rpm in drive\n',
  on: ['reading'],
  about: ({ name }) => name === 'idle',
  check(entry, context) {
    return problemsIn(entry.statements, (said) => problemsOf(entry, said, context));
  },
});

/** Idles above a line that it is held to: a session has one or two for each gear. */
const MOST_IDLES = 24;

function problemsOf({ quantity }: QuantityEntry, said: Statement, { before }: Context): Problem[] {
  const where = loadOf(said);
  const value = valueIn(said, 'rpm', quantity);
  if (!where || !value || before.changesSinceReading.length > 0) return [];
  for (const other of ofName(before.readings, 'idle', MOST_IDLES)) {
    const otherValue = valueIn(other.statement, 'rpm', quantity);
    if (!otherValue || loadOf(other.statement) !== (where === 'gear' ? 'neutral' : 'gear')) continue;
    const [inGear, inNeutral] = where === 'gear' ? [value, otherValue] : [otherValue, value];
    if (surelyAbove(inGear, inNeutral)) return [problemOf(said, inGear, inNeutral, other)];
  }
  return [];
}

function problemOf(said: Statement, inGear: Interval, inNeutral: Interval, other: SessionReading): Problem {
  const text = (value: Interval) => formatValue(value, unitById('rpm'));
  return {
    span: said.span,
    message: `Idle in gear ${text(inGear)} is above idle in neutral ${text(inNeutral)} in this session. Idle in gear is the lower one: were the two swapped? (common practice, no source)`,
    related: [{ origin: other.by, message: 'Other idle reading' }],
  };
}

function loadOf(said: Statement): 'gear' | 'neutral' | undefined {
  if (isInGear(said)) return 'gear';
  return isOutOfGear(said) ? 'neutral' : undefined;
}
