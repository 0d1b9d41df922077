/**
 * Timing totals from the settings in force, each with its formula, its inputs and the lines they came from. A total
 * that lacks an input is not given, and says what it lacks.
 */

import { amountIn, firstAmount } from '../../model/entry/amount.ts';
import type { Origin } from '../../model/entry/entry.ts';
import type { SessionReading, SettingInForce, State } from '../../model/state/state.ts';
import { formatNumber, formatValue } from '../../trade/measure/format.ts';
import { add, exact, type Interval, least, middle } from '../../trade/measure/interval.ts';
import { type Unit, unitById } from '../../trade/measure/units.ts';
import { allInSpeed, curveOver, greatestOn, steepest } from '../../trade/sums/ignition.ts';
import type { Input } from '../figure.ts';
import {
  type Curve,
  mostAdvance,
  NO_ADVANCE,
  onlyMostKnown,
  type Timing,
  timingOf,
} from './timing-settings.ts';

export interface Derived {
  readonly name: string;
  readonly value: Interval;
  readonly unit: Unit;
  /** In words: `initial + mechanical at 3200 rpm`. */
  readonly formula: string;
  /** With the numbers in: `9 deg + 22 deg = 31 deg`. */
  readonly working: string;
  readonly inputs: readonly Input[];
}

/** A total that cannot be given, and what is missing for it. */
export interface Lacking {
  readonly name: string;
  readonly lacks: readonly string[];
}

export interface Totals {
  readonly given: readonly Derived[];
  readonly lacking: readonly Lacking[];
}

const DEG = unitById('deg');
const RPM = unitById('rpm');
const SLOPE = unitById('deg/1000rpm');
const INHG = unitById('inHg');

/** What the totals depend on, of all that is carried. */
type TotalsTake = Pick<State, 'settings' | 'latest'>;

/** All totals of the settings in force, crank degrees; nothing at all where no setting of the timing is written. */
export function totalsOf(state: TotalsTake): Totals {
  const timing = timingOf(state);
  if (!timing.initial && !timing.mechanical && !timing.vacuum) return { given: [], lacking: [] };
  const all = [...TOTALS.values()].map((work) => work(timing, state));
  return {
    given: all.filter((each): each is Derived => 'value' in each),
    lacking: all.filter((each): each is Lacking => 'lacks' in each && each.lacks.length > 0),
  };
}

/** One total by its name; undefined where it cannot be given, or none is called so. */
export function totalNamed(state: TotalsTake, name: string): Derived | undefined {
  const total = TOTALS.get(name)?.(timingOf(state), state);
  return total && 'value' in total ? total : undefined;
}

/** In the order in which they are shown. */
const TOTALS: ReadonlyMap<string, (timing: Timing, state: TotalsTake) => Derived | Lacking> = new Map(
  Object.entries({
    'timing at idle': (timing, state) => idleTotal(state, timing),
    total: openTotal,
    'cruise total': cruiseTotal,
    'all in': allIn,
    slope,
  }),
);

export const TOTAL_NAMES: readonly string[] = [...TOTALS.keys()];

/** The wide-open total at one speed; what a measured total is held to. */
export function totalAtSpeed(state: TotalsTake, rpm: number): Derived | Lacking {
  const timing = timingOf(state);
  const { initial, mechanical } = timing;
  if (!initial || !mechanical) return lacking('total', { initial, mechanical });
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
function idleTotal(state: TotalsTake, timing: Timing = timingOf(state)): Derived | Lacking {
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

function openTotal(timing: Timing): Derived | Lacking {
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

function cruiseTotal(timing: Timing): Derived | Lacking {
  const { initial, mechanical, vacuum, vacuumLimit, source } = timing;
  if (!vacuum || source?.value === 'plugged') return { name: 'cruise total', lacks: [] };
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

function allIn(timing: Timing): Derived | Lacking {
  const { mechanical } = timing;
  const speed = allInOf(timing);
  if (!mechanical || speed === undefined) return { name: 'all in', lacks: [] };
  return lazyTotal('all in', exact(speed), RPM, () => ({
    formula: 'lowest speed with full mechanical advance',
    working: `${formatNumber(speed, RPM)} rpm`,
    inputs: [curveInput(mechanical)],
  }));
}

function slope({ mechanical }: Timing): Derived | Lacking {
  const leg = mechanical && !onlyMostKnown(mechanical) ? steepest(mechanical.points) : undefined;
  if (!mechanical || !leg) return { name: 'slope', lacks: [] };
  return lazyTotal('slope', leg.slope, SLOPE, () => ({
    formula: 'steepest rise of the mechanical curve',
    working: `${formatValue(leg.slope, SLOPE)}, ${formatNumber(leg.from, RPM)} to ${formatNumber(leg.to, RPM)} rpm`,
    inputs: [curveInput(mechanical)],
  }));
}

interface Telling {
  readonly formula: string;
  readonly working: string;
  readonly inputs: readonly Input[];
}

/** Totals whose texts are built only when read: rules need the values alone, on every line. */
function lazyTotal(name: string, value: Interval, unit: Unit, tell: () => Telling): Derived {
  return {
    name,
    value,
    unit,
    get formula() {
      return tell().formula;
    },
    get working() {
      return tell().working;
    },
    get inputs() {
      return tell().inputs;
    },
  };
}

interface SumTerms {
  readonly formula: string;
  /** Of each value of the sum, in order. */
  readonly names: readonly string[];
  readonly from: readonly SettingInForce[];
  /** Inputs the sum depends on but does not add. */
  readonly beside?: readonly Input[];
}

function sum(name: string, values: readonly Interval[], terms: () => SumTerms): Derived {
  const value = values.reduce(add);
  return lazyTotal(name, value, DEG, () => {
    const { formula, names, from, beside = [] } = terms();
    const texts = values.map((each) => formatValue(each, DEG));
    const added = names.map((each, i) => ({ name: each, value: texts[i] ?? '', by: from[i]?.by }));
    return {
      formula,
      working: `${texts.join(' + ')} = ${formatValue(value, DEG)}`,
      inputs: [...added, ...beside],
    };
  });
}

function lacking(name: string, needs: Readonly<Record<string, unknown>>): Lacking {
  return { name, lacks: Object.entries(needs).flatMap(([need, has]) => (has === undefined ? [need] : [])) };
}

/** The stop, where it is what holds the curve. */
const limitInput = (name: string, limit: Timing['mechanicalLimit'], curve: Curve): readonly Input[] =>
  limit && middle(limit.value) < middle(greatestOn(curve.points) ?? NO_ADVANCE)
    ? [{ name, value: formatValue(limit.value, DEG), by: limit.setting.by }]
    : [];

const advanceOver = ({ mechanicalLimit }: Timing, curve: Curve, rpm: Interval): Interval =>
  stopped(allOver(curve, rpm), mechanicalLimit);

const vacuumOver = ({ vacuumLimit }: Timing, curve: Curve, depression: Interval): Interval =>
  stopped(allOver(curve, depression), vacuumLimit);

/** What the curve gives over a range; approximate at an approximate speed. */
function allOver({ points }: Curve, at: Interval): Interval {
  const advance = curveOver(points, at.low, at.high) ?? NO_ADVANCE;
  return at.about ? { ...advance, about: true } : advance;
}

const stopped = (advance: Interval, limit: Timing['mechanicalLimit']): Interval =>
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
