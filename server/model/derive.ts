/**
 * What follows from the settings in force: the timing totals, each with its formula, its inputs and the lines they
 * came from. A total that lacks an input is not given, and says what it lacks.
 */
import { formatNumber, formatValue } from '../trade/format.ts';
import { allInSpeed, curveOver, greatestOn, steepest } from '../trade/ignition.ts';
import { add, exact, type Interval, least, middle } from '../trade/interval.ts';
import { type Unit, unitById } from '../trade/units.ts';
import { amountIn, firstAmount } from './amounts.ts';
import type { Carried, Taken } from './carry.ts';
import type { Input } from './figures/figure.ts';
import type { Origin } from './notebook.ts';
import { type Curve, NO_ADVANCE, type Timing, timingOf, UNKNOWN_SPEED } from './timing.ts';

export interface Derived {
  readonly name: string;
  readonly value: Interval;
  readonly unit: Unit;
  /** In words: `initial + mechanical at 3200 rpm`. */
  readonly formula: string;
  /** With the numbers in: `9 deg + 22 deg = 31 deg`. Like the inputs put into words only when it is read: rules ask every line for values alone. */
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

/** What the totals depend on, of all that is carried. */
export type TotalsTake = Pick<Carried, 'settings' | 'lastly'>;

export function totalsOf(carried: TotalsTake): Totals {
  const timing = timingOf(carried);
  if (!timing.initial && !timing.mechanical && !timing.vacuum) return { given: [], lacking: [] };
  const all = [
    idleTotal(carried, timing),
    openTotal(timing),
    cruiseTotal(timing),
    allIn(timing),
    slope(timing),
  ];
  return {
    given: all.filter((each): each is Derived => 'value' in each),
    lacking: all.filter((each): each is Lacking => 'lacks' in each && each.lacks.length > 0),
  };
}

/** The wide-open total at one speed; what a measured total is held to. */
export function totalAtSpeed(carried: TotalsTake, rpm: number): Derived | Lacking {
  const timing = timingOf(carried);
  const { initial, mechanical } = timing;
  if (!initial || !mechanical) return lacking('total', { initial, mechanical });
  const advance = advanceOver(timing, mechanical, exact(rpm));
  const at = `${formatNumber(rpm, RPM)} rpm`;
  return sum('total', `initial + mechanical at ${at}`, [
    { name: 'initial', value: initial.value, by: initial.setting.by },
    { name: `mechanical at ${at}`, value: advance, by: mechanical.setting.by },
  ]);
}

/** Initial + mechanical at idle, and vacuum only with the canister on manifold vacuum. Common practice, no source. */
export function idleTotal(carried: TotalsTake, timing: Timing = timingOf(carried)): Derived | Lacking {
  const { initial, mechanical } = timing;
  const idle = readingOf(carried.lastly.get('idle'), 'rpm');
  const lacks = { initial, mechanical, 'an idle reading': idle };
  if (!initial || !mechanical || !idle) return lacking('timing at idle', lacks);
  const at = formatValue(idle.value, RPM);
  const read: Input[] = [{ name: 'idle', value: at, by: idle.by }];
  const terms: Term[] = [
    { name: 'initial', value: initial.value, by: initial.setting.by },
    {
      name: `mechanical at ${at}`,
      value: advanceOver(timing, mechanical, idle.value),
      by: mechanical.setting.by,
    },
  ];
  const { source, vacuum } = timing;
  if (source?.value !== 'manifold') {
    const where = source
      ? `vacuum ${source.value}: adds nothing at idle`
      : 'no vacuum source written: none counted';
    return sum('timing at idle', `initial + mechanical at ${at}; ${where}`, terms, read);
  }
  const depression = readingOf(carried.lastly.get('depression'), 'inHg');
  if (!vacuum || !depression)
    return lacking('timing at idle', { 'vacuum advance': vacuum, 'a depression reading': depression });
  const pulled = formatValue(depression.value, unitById('inHg'));
  read.push({ name: 'depression', value: pulled, by: depression.by });
  terms.push({
    name: `vacuum at ${pulled}`,
    value: vacuumOver(timing, vacuum, depression.value),
    by: vacuum.setting.by,
  });
  return sum('timing at idle', `initial + mechanical at ${at} + vacuum at ${pulled} (manifold)`, terms, read);
}

function openTotal(timing: Timing): Derived | Lacking {
  const { initial, mechanical, mechanicalLimit } = timing;
  if (!initial || !mechanical) return lacking('total', { initial, mechanical });
  const most = greatest(timing, mechanical);
  const reached = onlyMostKnown(mechanical)
    ? undefined
    : allInSpeed(mechanical.points, mechanicalLimit?.value);
  const where = reached === undefined ? '' : ` from ${formatNumber(reached, RPM)} rpm`;
  return sum(
    'total',
    `initial + the most mechanical${where}, no vacuum`,
    [
      { name: 'initial', value: initial.value, by: initial.setting.by },
      { name: 'the most mechanical', value: most, by: mechanical.setting.by },
    ],
    limitInput(mechanicalLimit, mechanical),
  );
}

function cruiseTotal(timing: Timing): Derived | Lacking {
  const { initial, mechanical, vacuum, vacuumLimit, source } = timing;
  if (!initial || !mechanical || (!vacuum && source?.value !== 'plugged')) {
    return vacuum ? lacking('cruise total', { initial, mechanical }) : { name: 'cruise total', lacks: [] };
  }
  if (!vacuum || source?.value === 'plugged') return { name: 'cruise total', lacks: [] };
  const most = greatestOn(vacuum.points) ?? NO_ADVANCE;
  return sum('cruise total', 'initial + the most mechanical + the most vacuum', [
    { name: 'initial', value: initial.value, by: initial.setting.by },
    { name: 'the most mechanical', value: greatest(timing, mechanical), by: mechanical.setting.by },
    {
      name: 'the most vacuum',
      value: vacuumLimit ? least(most, vacuumLimit.value) : most,
      by: vacuum.setting.by,
    },
  ]);
}

function allIn({ mechanical, mechanicalLimit }: Timing): Derived | Lacking {
  const speed =
    mechanical && !onlyMostKnown(mechanical)
      ? allInSpeed(mechanical.points, mechanicalLimit?.value)
      : undefined;
  if (!mechanical || speed === undefined) return { name: 'all in', lacks: [] };
  return {
    name: 'all in',
    value: exact(speed),
    unit: RPM,
    formula: 'lowest speed with all the mechanical advance',
    working: `${formatNumber(speed, RPM)} rpm`,
    inputs: [{ name: 'mechanical', value: curveText(mechanical), by: mechanical.setting.by }],
  };
}

function slope({ mechanical }: Timing): Derived | Lacking {
  const leg = mechanical && !onlyMostKnown(mechanical) ? steepest(mechanical.points) : undefined;
  if (!mechanical || !leg) return { name: 'slope', lacks: [] };
  return {
    name: 'slope',
    value: leg.slope,
    unit: SLOPE,
    formula: 'steepest rise of the mechanical curve',
    working: `${formatValue(leg.slope, SLOPE)}, ${formatNumber(leg.from, RPM)} to ${formatNumber(leg.to, RPM)} rpm`,
    inputs: [{ name: 'mechanical', value: curveText(mechanical), by: mechanical.setting.by }],
  };
}

interface Term {
  readonly name: string;
  readonly value: Interval;
  readonly by: Origin;
}

/** `beside`: what the sum rests on and does not add. */
function sum(name: string, formula: string, terms: readonly Term[], beside: readonly Input[] = []): Derived {
  const value = terms.map((term) => term.value).reduce(add);
  const text = (term: { readonly value: Interval }) => formatValue(term.value, DEG);
  return {
    name,
    value,
    unit: DEG,
    formula,
    get working() {
      return `${terms.map(text).join(' + ')} = ${formatValue(value, DEG)}`;
    },
    get inputs() {
      return [...terms.map((term) => ({ name: term.name, value: text(term), by: term.by })), ...beside];
    },
  };
}

function lacking(name: string, needs: Readonly<Record<string, unknown>>): Lacking {
  return { name, lacks: Object.keys(needs).filter((need) => needs[need] === undefined) };
}

const limitInput = (limit: Timing['mechanicalLimit'], curve: Curve): Input[] =>
  limit && middle(limit.value) < middle(greatestOn(curve.points) ?? NO_ADVANCE)
    ? [{ name: 'mechanical limit', value: formatValue(limit.value, DEG), by: limit.setting.by }]
    : [];

const advanceOver = ({ mechanicalLimit }: Timing, curve: Curve, rpm: Interval): Interval =>
  stopped(allOver(curve, rpm), mechanicalLimit);

const vacuumOver = ({ vacuumLimit }: Timing, curve: Curve, depression: Interval): Interval =>
  stopped(allOver(curve, depression), vacuumLimit);

/** All that the curve gives over a range; at a rough speed it is rough too. */
function allOver({ points }: Curve, at: Interval): Interval {
  const advance = curveOver(points, at.low, at.high) ?? NO_ADVANCE;
  return at.about ? { ...advance, about: true } : advance;
}

const stopped = (advance: Interval, limit: Timing['mechanicalLimit']): Interval =>
  limit ? least(advance, limit.value) : advance;

function greatest({ mechanicalLimit }: Timing, curve: Curve): Interval {
  const most = onlyMostKnown(curve) ? curve.points.at(-1)?.value : greatestOn(curve.points);
  return mechanicalLimit ? least(most ?? NO_ADVANCE, mechanicalLimit.value) : (most ?? NO_ADVANCE);
}

const onlyMostKnown = (curve: Curve): boolean => curve.points.at(-1)?.at === UNKNOWN_SPEED;

const curveText = (curve: Curve): string =>
  curve.points
    .map((point) => `${formatValue(point.value, DEG)} @ ${formatNumber(point.at, RPM)} rpm`)
    .join(', ');

function readingOf(
  taken: Taken | undefined,
  unit: string,
): { readonly value: Interval; readonly by: Origin } | undefined {
  const value = taken ? amountIn(firstAmount(taken.said.values), unit) : undefined;
  return taken && value ? { value, by: taken.by } : undefined;
}
