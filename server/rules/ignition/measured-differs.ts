import type { NumberFigure } from '../../analysis/figure.ts';
import { totalAtSpeed, totalNamed } from '../../analysis/ignition/timing-totals.ts';
import { isWithoutVacuum } from '../../analysis/limits/vacuum-off.ts';
import { speedOf } from '../../model/entry/amount.ts';
import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Context } from '../../model/snapshot/finding.ts';
import type { State } from '../../model/state/state.ts';
import { formatNumber, formatValue } from '../../trade/measure/format.ts';
import { type Interval, middle, subtract } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import { inputLines } from '../lib/changed-totals.ts';
import { valueIn } from '../lib/statement-values.ts';
import { type Problem, problemsIn, rule } from '../rule.ts';

/** deg, largest accepted difference between measured and computed timing. Common practice, no source. */
const MEASURED_WITHIN = 2;

export const measuredDiffers = rule({
  code: 'measured-differs',
  severity: 'warning',
  title: 'Measured timing does not match the settings',
  why: 'More than about 2 deg between the timing light and the sum of the settings means a slipped mark, a changed curve or a reading error. One of the two is wrong: find out which, and never write a value halfway between.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  initial 9 deg\n  mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm\n  total 32 deg @ 3200 rpm, vacuum plugged\n',
  bad: 'session 2026-05-02\n  initial 9 deg\n  mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm\n  total 37 deg @ 3200 rpm, vacuum plugged\n',
  on: ['reading'],
  about: ({ name }) => name === 'total' || name === 'timing',
  check(entry, context) {
    return problemsIn(entry.statements, (said) => problemsOf(entry, said, context));
  },
});

function problemsOf({ quantity }: QuantityEntry, said: Statement, context: Context): Problem[] {
  const measured = valueIn(said, 'deg', quantity);
  const speed = speedOf(said);
  if (!measured || !speed) return [];
  const computed = totalAtSpeed(context.before, middle(speed));
  if (!computed) return [];
  if (!isWithoutVacuum(quantity.name, said, context.before))
    return vacuumProblems(measured, computed, said, context);
  if (apart(measured, computed.value) <= MEASURED_WITHIN + 1e-9) return [];
  const span = said.values[0]?.span ?? said.span;
  return [
    {
      span,
      message: `Measured ${formatValue(measured, DEG)}, but the settings give ${computed.working} at ${formatNumber(middle(speed), RPM)} rpm. More than ${MEASURED_WITHIN} deg apart: a slipped mark, a changed curve or a reading error (common practice, no source).`,
      related: inputLines(computed, context),
    },
  ];
}

/** Problems with the canister connected: the timing light must show at least initial plus mechanical, and at most what the canister adds to that. */
function vacuumProblems(
  measured: Interval,
  computed: NumberFigure,
  said: Statement,
  context: Context,
): Problem[] {
  if (said.qualifiers.includes('static')) return [];
  const most = mostVacuum(context.before);
  const range = { low: computed.value.low, high: computed.value.high + most, about: computed.value.about };
  if (apart(measured, range) <= MEASURED_WITHIN + 1e-9) return [];
  const possible = Number.isFinite(most)
    ? formatValue(range, DEG)
    : `${formatValue(computed.value, DEG)} or more`;
  return [
    {
      span: said.values[0]?.span ?? said.span,
      message: `Measured ${formatValue(measured, DEG)}, but the settings give ${possible} there, from no vacuum advance to all of it. More than ${MEASURED_WITHIN} deg outside: a slipped mark, a changed curve or a reading error (common practice, no source).`,
      related: inputLines(computed, context),
    },
  ];
}

/** The most the canister can add, in degrees; infinite where no canister is written. */
function mostVacuum(before: State): number {
  const [cruise, total] = [totalNamed(before, 'cruise total'), totalNamed(before, 'total')];
  return cruise && total ? cruise.value.high - total.value.low : Number.POSITIVE_INFINITY;
}

/** The smallest possible difference between the two intervals. */
function apart(a: Interval, b: Interval): number {
  const { low, high } = subtract(a, b);
  return low > 0 ? low : high < 0 ? -high : 0;
}

const DEG = unitById('deg');
const RPM = unitById('rpm');
