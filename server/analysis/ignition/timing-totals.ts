/**
 * Timing totals from the settings in force, each a figure with its formula, its inputs and the lines they came from. A
 * total that lacks an input has no value, and says what it lacks. Hover and terminal show them apart from the other
 * figures, so they are not in figures.ts.
 */

import { amountIn, firstAmount } from '../../model/entry/amount.ts';
import type { Origin } from '../../model/entry/entry.ts';
import type { SessionReading, State } from '../../model/state/state.ts';
import { formatNumber, formatValue } from '../../trade/measure/format.ts';
import { exact, type Interval, least, middle } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import { allInSpeed, curveOver, greatestOn, steepest } from '../../trade/sums/ignition.ts';
import type { Figure, Input, NumberFigure } from '../figure.ts';
import {
  type Curve,
  mostAdvance,
  NO_ADVANCE,
  onlyMostKnown,
  type Timing,
  timingOf,
} from './timing-settings.ts';
import { lacking, lazyTotal, sum } from './total-figure.ts';

const DEG = unitById('deg');
const RPM = unitById('rpm');
const SLOPE = unitById('deg/1000rpm');
const INHG = unitById('inHg');

/** What the totals depend on, of all that is carried. */
type TotalsTake = Pick<State, 'settings' | 'latest'>;

/** Undefined for a total that the settings leave no room for, such as a cruise total without a canister. */
type WorkTotal = (timing: Timing, state: TotalsTake) => Figure | undefined;

/**
 * All totals of the settings in force that can be worked out or lack something: crank degrees, `all in` in rpm, `slope` in
 * degrees per 1000 rpm. Empty where no setting of the timing is written.
 */
export function totalsOf(state: TotalsTake): readonly Figure[] {
  const timing = timingOf(state);
  if (!timing.initial && !timing.mechanical && !timing.vacuum) return [];
  return [...TOTALS.values()].flatMap((work) => withDoubt(work(timing, state), timing) ?? []);
}

/** One total by its name, as of `totalsOf`; undefined where it cannot be worked out, or none is called so. */
export function totalNamed(state: TotalsTake, name: string): NumberFigure | undefined {
  const timing = timingOf(state);
  return workedOut(withDoubt(TOTALS.get(name)?.(timing, state), timing));
}

/** A total that has its value; undefined for one that lacks something. */
export const workedOut = (total: Figure | undefined): NumberFigure | undefined =>
  total?.value && total.unit ? (total as NumberFigure) : undefined;

/** A total of settings that were moved by an unknown amount is approximate, and says why. */
function withDoubt(total: Figure | undefined, timing: Timing): Figure | undefined {
  const moved = Object.values(timing).flatMap((each) =>
    each?.setting.doubt ? [each.setting.quantity.name] : [],
  );
  const known = workedOut(total);
  if (moved.length === 0 || !known) return total;
  const { name, value, unit, formula, working, inputs } = known;
  const doubted = moved.filter((each) => formula.includes(each) || each.startsWith('mechanical'));
  if (doubted.length === 0) return total;
  const says = `${working}; in doubt: ${doubted.join(' and ')} moved since, nobody knows how far`;
  return lazyTotal(name, { ...value, about: true }, unit, () => ({ formula, working: says, inputs }));
}

/** In the order in which they are shown. */
const TOTALS: ReadonlyMap<string, WorkTotal> = new Map(
  Object.entries({
    'timing at idle': idleTotal,
    total: openTotal,
    'cruise total': cruiseTotal,
    'all in': allIn,
    slope,
  }),
);

export const TOTAL_NAMES: readonly string[] = [...TOTALS.keys()];

/**
 * The wide-open total at one speed, crank degrees: what a measured total is held to.
 *
 * @param rpm of the crank; beyond the ends of the curve its end holds.
 */
export function totalAtSpeed(state: TotalsTake, rpm: number): NumberFigure | undefined {
  const timing = timingOf(state);
  const { initial, mechanical } = timing;
  if (!initial || !mechanical) return undefined;
  const values = [initial.value, advanceOver(timing, mechanical, exact(rpm))];
  return sum('total', values, () => {
    const at = `${formatNumber(rpm, RPM)} rpm`;
    return {
      formula: `initial + mechanical at ${at}`,
      names: ['initial', `mechanical at ${at}`],
      from: [initial.setting, mechanical.setting],
    };
  });
}

/** Initial + mechanical at idle, and vacuum only with the canister on manifold vacuum. Common practice, no source. */
function idleTotal(timing: Timing, state: TotalsTake): Figure {
  const { initial, mechanical, source, vacuum } = timing;
  const idle = readingOf(state.latest.get('idle'), 'rpm');
  const lacks = { initial, mechanical, 'an idle reading': idle };
  if (!initial || !mechanical || !idle) return lacking('timing at idle', lacks);
  const values = [initial.value, advanceOver(timing, mechanical, idle.value)];
  const settings = [initial.setting, mechanical.setting];
  const speed = () => ({ name: 'idle', value: formatValue(idle.value, RPM), by: idle.by });
  if (source?.value !== 'manifold') {
    return sum('timing at idle', values, () => {
      const read = speed();
      const where = source
        ? `vacuum ${source.value}: adds nothing at idle`
        : 'no vacuum source written, so none counted';
      return {
        formula: `initial + mechanical at ${read.value}; ${where}`,
        names: ['initial', `mechanical at ${read.value}`],
        from: settings,
        beside: [read],
      };
    });
  }
  const depression = readingOf(state.latest.get('depression'), 'inHg');
  if (!vacuum || !depression)
    return lacking('timing at idle', { 'vacuum advance': vacuum, 'a depression reading': depression });
  return sum('timing at idle', [...values, vacuumOver(timing, vacuum, depression.value)], () => {
    const read = speed();
    const pulled = formatValue(depression.value, INHG);
    return {
      formula: `initial + mechanical at ${read.value} + vacuum at ${pulled} (manifold)`,
      names: ['initial', `mechanical at ${read.value}`, `vacuum at ${pulled}`],
      from: [...settings, vacuum.setting],
      beside: [read, { name: 'depression', value: pulled, by: depression.by }],
    };
  });
}

function openTotal(timing: Timing): Figure {
  const { initial, mechanical, mechanicalLimit } = timing;
  if (!initial || !mechanical) return lacking('total', { initial, mechanical });
  return sum('total', [initial.value, mostAdvance(mechanical, timing.mechanicalLimit?.value)], () => {
    const reached = allInOf(timing);
    const where = reached === undefined ? '' : ` from ${formatNumber(reached, RPM)} rpm`;
    return {
      formula: `initial + maximum mechanical${where}, no vacuum`,
      names: ['initial', 'maximum mechanical'],
      from: [initial.setting, mechanical.setting],
      beside: limitInput('mechanical limit', mechanicalLimit, mechanical),
    };
  });
}

function cruiseTotal(timing: Timing): Figure | undefined {
  const { initial, mechanical, vacuum, vacuumLimit, source } = timing;
  if (!vacuum || source?.value === 'plugged') return undefined;
  if (!initial || !mechanical) return lacking('cruise total', { initial, mechanical });
  const pulled = mostAdvance(vacuum, vacuumLimit?.value);
  return sum(
    'cruise total',
    [initial.value, mostAdvance(mechanical, timing.mechanicalLimit?.value), pulled],
    () => ({
      formula: 'initial + maximum mechanical + maximum vacuum',
      names: ['initial', 'maximum mechanical', 'maximum vacuum'],
      from: [initial.setting, mechanical.setting, vacuum.setting],
      beside: [
        ...limitInput('mechanical limit', timing.mechanicalLimit, mechanical),
        ...limitInput('vacuum limit', vacuumLimit, vacuum),
      ],
    }),
  );
}

function allIn(timing: Timing): Figure | undefined {
  const { mechanical } = timing;
  const speed = allInOf(timing);
  if (!mechanical || speed === undefined) return undefined;
  return lazyTotal('all in', exact(speed), RPM, () => ({
    formula: 'lowest speed with full mechanical advance',
    working: `${formatNumber(speed, RPM)} rpm`,
    inputs: [curveInput(mechanical)],
  }));
}

function slope({ mechanical }: Timing): Figure | undefined {
  const leg = mechanical && !onlyMostKnown(mechanical) ? steepest(mechanical.points) : undefined;
  if (!mechanical || !leg) return undefined;
  return lazyTotal('slope', leg.slope, SLOPE, () => ({
    formula: 'steepest rise of the mechanical curve',
    working: `${formatValue(leg.slope, SLOPE)}, ${formatNumber(leg.from, RPM)} to ${formatNumber(leg.to, RPM)} rpm`,
    inputs: [curveInput(mechanical)],
  }));
}

/** The stop, where it is what holds the curve. */
const limitInput = (name: string, limit: Timing['mechanicalLimit'], curve: Curve): readonly Input[] =>
  limit && middle(limit.value) < middle(greatestOn(curve.points) ?? NO_ADVANCE)
    ? [{ name, value: formatValue(limit.value, DEG), by: limit.setting.by }]
    : [];

const advanceOver = ({ mechanicalLimit }: Timing, curve: Curve, rpm: Interval): Interval =>
  atMostLimit(allOver(curve, rpm), mechanicalLimit);

const vacuumOver = ({ vacuumLimit }: Timing, curve: Curve, depression: Interval): Interval =>
  atMostLimit(allOver(curve, depression), vacuumLimit);

/** What the curve gives over a range; approximate at an approximate speed. */
function allOver({ points }: Curve, at: Interval): Interval {
  const advance = curveOver(points, at.low, at.high) ?? NO_ADVANCE;
  return at.about ? { ...advance, about: true } : advance;
}

const atMostLimit = (advance: Interval, limit: Timing['mechanicalLimit']): Interval =>
  limit ? least(advance, limit.value) : advance;

const allInOf = ({ mechanical, mechanicalLimit }: Timing): number | undefined =>
  mechanical && !onlyMostKnown(mechanical)
    ? allInSpeed(mechanical.points, mechanicalLimit?.value)
    : undefined;

const curveInput = ({ points, setting }: Curve): Input => ({
  name: 'mechanical',
  value: points
    .map((point) => `${formatValue(point.value, DEG)} @ ${formatNumber(point.at, RPM)} rpm`)
    .join(', '),
  by: setting.by,
});

function readingOf(
  taken: SessionReading | undefined,
  unit: string,
): { readonly value: Interval; readonly by: Origin } | undefined {
  const value = taken ? amountIn(firstAmount(taken.statement.values), unit) : undefined;
  return taken && value ? { value, by: taken.by } : undefined;
}
