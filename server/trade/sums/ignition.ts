/**
 * Spark timing of a four-stroke engine with a distributor. Everything is in crankshaft degrees before top dead
 * centre, engine rpm and inHg of manifold depression unless a name says otherwise; advance is positive.
 */
import {
  add,
  exact,
  greatest,
  hull,
  type Interval,
  least,
  middle,
  multiply,
  scale,
  subtract,
} from '../measure/interval.ts';
import type { CurvePoint } from '../vocabulary/quantity.ts';

/** Where the vacuum canister takes its vacuum. Ported vacuum is zero with the throttle closed. */
export type VacuumSource = 'manifold' | 'ported' | 'plugged';

export interface Slope {
  readonly from: number;
  readonly to: number;
  /** Degrees per 1000 rpm. */
  readonly slope: Interval;
}

interface TotalAtSpeed {
  readonly rpm: number;
  readonly mechanical: Interval;
  readonly total: Interval;
}

export interface TotalsBySpeed {
  readonly rows: readonly TotalAtSpeed[];
  readonly maximum: Interval;
  /** Lowest speed of the range at which the total is at its maximum; rough values are taken at their middle. */
  readonly at: number;
}

/**
 * The curve's value at a speed or depression: straight between two points, flat before the first and after the last.
 * Undefined for a curve without points. Points may come in any order.
 */
export function curveAt(points: readonly CurvePoint[], at: number): Interval | undefined {
  const sorted = inOrder(points);
  const next = sorted.findIndex((point) => point.at >= at);
  const above = sorted[next];
  if (!above) return sorted.at(-1)?.value;
  const below = sorted[next - 1];
  return below ? straightBetween(below, above, at) : above.value;
}

/** Every value the curve takes from one speed or depression to another; undefined for a curve without points. */
export function curveOver(points: readonly CurvePoint[], from: number, to: number): Interval | undefined {
  const [low, high] = from <= to ? [from, to] : [to, from];
  const inside = points.filter((point) => point.at > low && point.at < high).map((point) => point.value);
  const values = [curveAt(points, low), ...inside, curveAt(points, high)].filter(
    (value) => value !== undefined,
  );
  return values.length ? values.reduce(hull) : undefined;
}

/** The most the curve gives anywhere; undefined for a curve without points. */
export function greatestOn(points: readonly CurvePoint[]): Interval | undefined {
  return points.length ? points.map((point) => point.value).reduce(greatest) : undefined;
}

/**
 * Lowest speed at which the curve has reached its most, or `limit` degrees where its stop comes first; undefined for a
 * curve without points. Rough values are taken at their middle.
 */
export function allInSpeed(points: readonly CurvePoint[], limit?: Interval): number | undefined {
  const sorted = inOrder(points);
  const most = Math.max(...sorted.map((point) => middle(point.value)));
  const stop = limit ? Math.min(most, middle(limit)) : most;
  const reached = sorted.findIndex((point) => middle(point.value) >= stop);
  const above = sorted[reached];
  const below = sorted[reached - 1];
  if (!above || !below) return above?.at;
  const share = (stop - middle(below.value)) / (middle(above.value) - middle(below.value));
  return below.at + share * (above.at - below.at);
}

/** Degrees per 1000 rpm of each leg of a curve, in order of speed. Two points at one speed make no leg. */
export function slopes(points: readonly CurvePoint[]): readonly Slope[] {
  const sorted = inOrder(points);
  return sorted.slice(1).flatMap((point, i) => {
    const before = sorted[i];
    if (!before || before.at === point.at) return [];
    const slope = scale(subtract(point.value, before.value), 1000 / (point.at - before.at));
    return [{ from: before.at, to: point.at, slope }];
  });
}

/** The leg that rises fastest, by the middle of its slope; undefined for fewer than two points. */
export function steepest(points: readonly CurvePoint[]): Slope | undefined {
  const legs = slopes(points);
  return legs.length ? legs.reduce((a, b) => (middle(b.slope) > middle(a.slope) ? b : a)) : undefined;
}

/**
 * Wide-open totals at each full `step` rpm of a range (no more than 1000 of them), and the greatest total anywhere in
 * it, the curve's own points included: initial + mechanical(rpm), no vacuum, and the weights no further than `limit`.
 * Undefined for a curve without points, an empty range, or no step.
 * Source: TM 10-3930-623-12 par. 4-21 and the factory table in the tests.
 */
export function totalOver(
  initial: Interval,
  mechanical: readonly CurvePoint[],
  from: number,
  to: number,
  limit?: Interval,
  step = 250,
): TotalsBySpeed | undefined {
  const rowAt = (rpm: number): TotalAtSpeed[] => {
    const advance = mechanicalAt(mechanical, rpm, limit);
    return advance ? [{ rpm, mechanical: advance, total: add(initial, advance) }] : [];
  };
  const bends = bendsOf(mechanical, limit).filter((rpm) => rpm > from && rpm < to);
  const peak = highest([from, ...bends, to].flatMap(rowAt));
  return peak && from <= to && step > 0 ? { rows: steps(from, to, step).flatMap(rowAt), ...peak } : undefined;
}

/** The initial that gives a wanted total once the weights are at their stop. */
export function initialFor(total: Interval, mechanicalLimit: Interval): Interval {
  return subtract(total, mechanicalLimit);
}

/** The stop at which a wanted total is reached from a given initial. */
export function mechanicalLimitFor(total: Interval, initial: Interval): Interval {
  return subtract(total, initial);
}

/**
 * Total under boost: `perPsi` degrees taken out for each psi. About 1 deg per psi is common practice without a source;
 * knock is the judge, and the maker's figure overrules.
 */
export function boostRetard(total: Interval, boostPsi: Interval, perPsi: Interval = exact(1)): Interval {
  return subtract(total, multiply(boostPsi, perPsi));
}

/** Length of tape along a damper's rim for an angle, in the unit of the diameter: pi x D x deg / 360. */
export function damperDistance(diameter: number, degrees: number): number {
  return (Math.PI * diameter * degrees) / 360;
}

/**
 * Crank degrees the advance moves when a stop pin at `radius` from the shaft may travel `travel` along its arc; both in
 * one unit of length. The cam turns travel / radius radians, the crank twice that. NaN for no radius and no travel.
 */
export function crankDegreesForStopTravel(radius: number, travel: number): number {
  return 2 * (travel / radius) * (180 / Math.PI);
}

/** The travel along the arc, in the unit of `radius`, that lets the advance move by so many crank degrees. */
export function stopTravelForCrankDegrees(radius: number, degrees: number): number {
  return (degrees / 2) * (Math.PI / 180) * radius;
}

/** Mechanical advance at a speed, no more than the stop allows. */
function mechanicalAt(
  points: readonly CurvePoint[],
  rpm: number,
  limit: Interval | undefined,
): Interval | undefined {
  const advance = curveAt(points, rpm);
  return advance && limit ? least(advance, limit) : advance;
}

function inOrder(points: readonly CurvePoint[]): readonly CurvePoint[] {
  if (points.every((point, i) => i === 0 || (points[i - 1] as CurvePoint).at <= point.at)) return points;
  return points.toSorted((a, b) => a.at - b.at);
}

function straightBetween(below: CurvePoint, above: CurvePoint, at: number): Interval {
  const share = (at - below.at) / (above.at - below.at);
  return add(scale(below.value, 1 - share), scale(above.value, share));
}

const MOST_ROWS = 1000;

function steps(from: number, to: number, step: number): number[] {
  const first = Math.ceil(from / step);
  const count = Math.min(MOST_ROWS, Math.floor(to / step) - first + 1);
  return Array.from({ length: Math.max(0, count) }, (_, i) => (first + i) * step);
}

/** Speeds between which the total is linear, so its maximum is at one of them. */
function bendsOf(points: readonly CurvePoint[], limit: Interval | undefined): number[] {
  const allIn = allInSpeed(points, limit);
  const bends = points.map((point) => point.at);
  return (allIn === undefined ? bends : [...bends, allIn]).sort((a, b) => a - b);
}

function highest(rows: readonly TotalAtSpeed[]): Pick<TotalsBySpeed, 'maximum' | 'at'> | undefined {
  const first = rows[0];
  if (!first) return undefined;
  const top = rows.reduce((a, b) => (middle(b.total) > middle(a.total) ? b : a), first);
  return { maximum: rows.map((row) => row.total).reduce(greatest), at: top.rpm };
}
