/** Trial fits: effect of a knob on a response, the setting for a wanted response, and its uncertainty. */
import { linearRegression, max, mean, min, sumSimple } from 'simple-statistics';
import { type CurveKnot, curveAt, knotsOf, monotone } from '../measure/curves.ts';
import { REPEATABILITY } from './noise.ts';
import { studentT } from './student-t.ts';

/** One row of a trial, both numbers in the trial's own units. */
export interface TrialRow {
  readonly knob: number;
  readonly response: number;
}

/** A straight line, or a monotone curve through knots. */
type TrialModel =
  | { readonly kind: 'line'; readonly slope: number; readonly intercept: number }
  | { readonly kind: 'curve'; readonly knots: readonly CurveKnot[] };

/** Why a response counts as not moved by its knob. */
type Flatness = 'does not move' | 'within noise' | 'within the meter' | 'no trend';

/** A fitted trial. */
export interface TrialFit {
  readonly rows: readonly TrialRow[];
  readonly model: TrialModel;
  /** The range of the knob that was tried. */
  readonly low: number;
  readonly high: number;
  /**
   * Spread of the rows about the model, in the response's unit: residual standard deviation for a line, leave-one-out
   * error for a curve (which is drawn to its rows). Absent for two rows, which show no scatter.
   */
  readonly spread?: number;
  /** Leave-one-out errors (root mean square) of both models, from three rows. */
  readonly leaveOneOut?: { readonly line: number; readonly curve: number };
  readonly flat?: Flatness;
}

/** An estimate with its 95 per cent interval; an end is absent where the rows are too few for it, or it has none. */
export interface Estimate {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  /** The knob is outside the range tried. */
  readonly outside: boolean;
}

/** Knob for a wanted response, or why there is none. */
type KnobAnswer =
  | ({ readonly kind: 'found' } & Estimate)
  | { readonly kind: 'none'; readonly reason: 'flat' | 'out of reach' };

/** Past this many rows only the line is fitted: leave-one-out on the curve would be slow while typing. */
const MOST_ROWS_FOR_CURVE = 200;

/**
 * Fits a trial: a straight line from two rows; from three, the line or the monotone curve, whichever predicts left-out
 * rows better (with three rows both predict alike, and the line is used). `noise` is the standard deviation of repeat
 * readings, where known, `meter` the smallest difference the instrument shows. Undefined for fewer than two different knobs or a number that is not finite.
 */
export function fitTrial(rows: readonly TrialRow[], noise?: number, meter?: number): TrialFit | undefined {
  const knobs = rows.map((row) => row.knob);
  if (new Set(knobs).size < 2 || !rows.every(isFiniteRow)) return undefined;
  const leaveOneOut = leaveOneOutErrors(rows);
  const model = betterModel(rows, leaveOneOut);
  const spread = spreadOf(rows, model, leaveOneOut);
  const flat = flatness(rows, noise, meter);
  return {
    rows,
    model,
    low: min(knobs),
    high: max(knobs),
    ...(spread === undefined ? {} : { spread }),
    ...(leaveOneOut === undefined ? {} : { leaveOneOut }),
    ...(flat === undefined ? {} : { flat }),
  };
}

/** The response a setting of the knob should give. */
export function responseAt(fit: TrialFit, knob: number): Estimate {
  const value = modelAt(fit.model, knob);
  const outside = knob < fit.low || knob > fit.high;
  if (fit.spread === undefined) return { value, outside };
  const half = halfWidth(fit, knob, fit.spread);
  return { value, low: value - half, high: value + half, outside };
}

/** The knob that should give a wanted response. Its interval holds every knob whose own interval holds the response. */
export function knobFor(fit: TrialFit, wanted: number): KnobAnswer {
  if (fit.flat !== undefined) return { kind: 'none', reason: 'flat' };
  return fit.model.kind === 'line'
    ? knobOnLine(fit, fit.model, wanted)
    : knobOnCurve(fit, fit.model.knots, wanted);
}

function isFiniteRow(row: TrialRow): boolean {
  return Number.isFinite(row.knob) && Number.isFinite(row.response);
}

function lineThrough(rows: readonly TrialRow[]): TrialModel {
  const { m, b } = linearRegression(rows.map((row) => [row.knob, row.response]));
  return { kind: 'line', slope: m, intercept: b };
}

function curveThrough(rows: readonly TrialRow[]): TrialModel {
  const knots = knotsOf(rows.map((row) => ({ x: row.knob, y: row.response })));
  const line = lineThrough(rows);
  return { kind: 'curve', knots: monotone(knots, line.kind === 'line' && line.slope < 0) };
}

function modelAt(model: TrialModel, knob: number): number {
  return model.kind === 'line' ? model.slope * knob + model.intercept : curveAt(model.knots, knob);
}

function leaveOneOutErrors(rows: readonly TrialRow[]): TrialFit['leaveOneOut'] {
  if (rows.length < 3 || rows.length > MOST_ROWS_FOR_CURVE) return undefined;
  const folds = rows
    .map((left, index) => ({ left, rest: rows.toSpliced(index, 1) }))
    .filter((fold) => new Set(fold.rest.map((row) => row.knob)).size > 1);
  const error = (fitted: (rest: readonly TrialRow[]) => TrialModel): number =>
    rootMeanSquare(folds.map(({ left, rest }) => left.response - modelAt(fitted(rest), left.knob)));
  return { line: error(lineThrough), curve: error(curveThrough) };
}

function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(mean(values.map((value) => value * value)));
}

function betterModel(rows: readonly TrialRow[], errors: TrialFit['leaveOneOut']): TrialModel {
  const rounding = 1e-9 * max(rows.map((row) => Math.abs(row.response)));
  const curved = errors !== undefined && errors.curve + rounding < errors.line;
  return curved ? curveThrough(rows) : lineThrough(rows);
}

function spreadOf(
  rows: readonly TrialRow[],
  model: TrialModel,
  errors: TrialFit['leaveOneOut'],
): number | undefined {
  if (rows.length < 3) return undefined;
  if (model.kind === 'curve') return errors?.curve;
  const squares = rows.map((row) => (row.response - modelAt(model, row.knob)) ** 2);
  return Math.sqrt(sumSimple(squares) / (rows.length - 2));
}

/**
 * A response does not move when its rows are all alike, when they differ by no more than repeats of one setting would, or
 * from three rows by no more than the instrument shows, or,
 * from four rows, when the slope is not different from zero at 95 per cent and the rows are out of order besides.
 */
function flatness(rows: readonly TrialRow[], noise?: number, meter?: number): Flatness | undefined {
  const responses = rows.map((row) => row.response);
  const range = max(responses) - min(responses);
  if (range <= 1e-12 * max(responses.map(Math.abs))) return 'does not move';
  if (noise !== undefined && range <= REPEATABILITY * noise) return 'within noise';
  if (meter !== undefined && rows.length >= 3 && range <= meter) return 'within the meter';
  return rows.length >= 4 && slopeUncertainty(rows) >= 1 && !inOrder(rows) ? 'no trend' : undefined;
}

/** The square of the slope's 95 per cent half-interval over the slope: from 1 up, the slope may as well be zero. */
function slopeUncertainty(rows: readonly TrialRow[]): number {
  const line = lineThrough(rows);
  const spread = spreadOf(rows, line, undefined) ?? 0;
  if (line.kind !== 'line' || line.slope === 0) return Number.POSITIVE_INFINITY;
  return (studentT(rows.length - 2) * spread) ** 2 / (line.slope ** 2 * knobSquares(rows));
}

function inOrder(rows: readonly TrialRow[]): boolean {
  const knots = knotsOf(rows.map((row) => ({ x: row.knob, y: row.response })));
  const steps = knots.slice(1).map((knot, index) => knot.y - (knots[index]?.y ?? knot.y));
  return steps.every((step) => step >= 0) || steps.every((step) => step <= 0);
}

function knobSquares(rows: readonly TrialRow[]): number {
  const centre = mean(rows.map((row) => row.knob));
  return sumSimple(rows.map((row) => (row.knob - centre) ** 2));
}

/** Half the 95 per cent prediction interval: the textbook one for a line, spread alone for a curve. */
function halfWidth(fit: TrialFit, knob: number, spread: number): number {
  const t = studentT(fit.rows.length - 2);
  if (fit.model.kind === 'curve') return t * spread;
  const away = (knob - mean(fit.rows.map((row) => row.knob))) ** 2;
  return t * spread * Math.sqrt(1 + 1 / fit.rows.length + away / knobSquares(fit.rows));
}

/** The exact interval: where the wanted response lies inside the prediction band of the line. */
function knobOnLine(fit: TrialFit, line: { slope: number; intercept: number }, wanted: number): KnobAnswer {
  const value = (wanted - line.intercept) / line.slope;
  const found = { kind: 'found' as const, value, outside: value < fit.low || value > fit.high };
  const uncertainty = fit.spread === undefined ? 1 : slopeUncertainty(fit.rows);
  if (uncertainty >= 1 || fit.spread === undefined) return found;
  const centre = mean(fit.rows.map((row) => row.knob));
  const room = (1 + 1 / fit.rows.length) * (1 - uncertainty) + (value - centre) ** 2 / knobSquares(fit.rows);
  const half = Math.abs((studentT(fit.rows.length - 2) * fit.spread) / line.slope) * Math.sqrt(room);
  const middle = value - centre;
  return {
    ...found,
    low: centre + (middle - half) / (1 - uncertainty),
    high: centre + (middle + half) / (1 - uncertainty),
  };
}

/** On a level stretch of the curve the answer is the middle of its tried part, with the stretch inside the interval. */
function knobOnCurve(fit: TrialFit, knots: readonly CurveKnot[], wanted: number): KnobAnswer {
  const reach = fit.high - fit.low;
  const ends = [fit.low - reach, fit.high + reach] as const;
  const sign = curveAt(knots, ends[0]) <= curveAt(knots, ends[1]) ? 1 : -1;
  const over = (target: number) => (knob: number) => sign * (curveAt(knots, knob) - target);
  const stretch = levelStretch(ends, over(wanted));
  if (stretch === undefined) return { kind: 'none', reason: 'out of reach' };
  const value = middleOfTried(stretch, fit);
  const half = sign * halfWidth(fit, fit.low, fit.spread ?? 0);
  const low = crossing(ends, (knob) => over(wanted - half)(knob) >= 0);
  const high = crossing(ends, (knob) => over(wanted + half)(knob) > 0);
  return {
    kind: 'found',
    value,
    ...(low > ends[0] ? { low } : {}),
    ...(high < ends[1] ? { high } : {}),
    outside: value < fit.low || value > fit.high,
  };
}

/** Where a rising function is neither under nor over 0, between two ends; undefined when it is one or the other throughout. */
function levelStretch(
  ends: readonly [number, number],
  over: (knob: number) => number,
): readonly [number, number] | undefined {
  if (over(ends[0]) > 0 || over(ends[1]) < 0) return undefined;
  return [crossing(ends, (knob) => over(knob) >= 0), crossing(ends, (knob) => over(knob) > 0)];
}

function middleOfTried([first, last]: readonly [number, number], fit: TrialFit): number {
  const [from, to] = [Math.max(first, fit.low), Math.min(last, fit.high)];
  return from <= to ? (from + to) / 2 : (first + last) / 2;
}

/** Where a condition that stays true once it is true becomes so, by halving; an end itself where it does so at none between. */
function crossing([first, last]: readonly [number, number], reached: (knob: number) => boolean): number {
  if (reached(first)) return first;
  if (!reached(last)) return last;
  let [low, high] = [first, last];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (reached(middle)) high = middle;
    else low = middle;
  }
  return high;
}
