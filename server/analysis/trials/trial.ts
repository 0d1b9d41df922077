import { oncePerPair } from '../../memo.ts';
import type { Value } from '../../model/entry/value.ts';
import type { Row, State, Trial } from '../../model/state/state.ts';
import { type Measured, measured, type Pair, pairOf } from '../../model/state/trial-rows.ts';
import { type Interval, isBounded, middle } from '../../trade/measure/interval.ts';
import { convertInterval, type Unit, unitById } from '../../trade/measure/units.ts';
import { noiseOf } from '../../trade/sums/noise.ts';
import { fitTrial, type TrialFit, type TrialRow } from '../../trade/sums/trials.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { findQuantity } from '../../trade/vocabulary/vocabulary.ts';

/** Axis of a trial: its name, its quantity where known, and the unit of its numbers. */
export interface Axis {
  readonly name: string;
  readonly quantity: Quantity | undefined;
  readonly unit: Unit;
}

export interface ReadTrial {
  readonly knob: Axis;
  readonly response: Axis;
  readonly rows: readonly TrialRow[];
  /** Rows that give no two numbers in the units of the others. */
  readonly leftOut: number;
  /** Some row was written as rough or as a range: its middle was taken. */
  readonly about: boolean;
  /** Undefined for fewer than two different knobs. */
  readonly fit: TrialFit | undefined;
}

/** Both axes, as the rows so far have them. */
export function axesOf(
  { knob, response, units }: Trial,
  words: State['words'],
): Pick<ReadTrial, 'knob' | 'response'> {
  return { knob: axisOf(knob, units.knob, words), response: axisOf(response, units.response, words) };
}

/** Whether a row gives two numbers in the units of the axes. */
export const isOnAxes = (row: Row, axes: Pick<ReadTrial, 'knob' | 'response'>): boolean =>
  readRow(pairOf(row), axes) !== undefined;

/**
 * The first unit written on an axis holds for all its rows; a drill by name is its bore in inches. Kept with the trial:
 * several rules check each want.
 */
export const readTrial = oncePerPair(
  (trial: Trial, words: State['words']): ReadTrial => fitRows(trial, words),
);

/** A trial at the bench has a dozen. */
const MOST_ROWS = 50;

/** Longest trial that is fitted anew for each line while typing. */
export const shortTrial = ({ trial, words }: State): ReadTrial | undefined =>
  trial && trial.rows.size <= MOST_ROWS ? readTrial(trial, words) : undefined;

function fitRows(trial: Trial, words: State['words']): ReadTrial {
  const { knob, response } = axesOf(trial, words);
  const pairs = [...trial.rows.values()].map(pairOf);
  const read = pairs.flatMap((pair) => readRow(pair, { knob, response }) ?? []);
  const rows = read.map(({ at, gave }) => ({ knob: middle(at), response: middle(gave) }));
  return {
    knob,
    response,
    rows,
    leftOut: pairs.length - rows.length,
    about: read.some(({ at, gave }) => isRough(at) || isRough(gave)),
    fit: fitTrial(rows, noise(rows), meterFor(response.unit, rows)),
  };
}

function readRow(
  pair: Pair,
  { knob, response }: Pick<ReadTrial, 'knob' | 'response'>,
): { readonly at: Interval; readonly gave: Interval } | undefined {
  const [at, gave] = [inUnit(pair.knob, knob.unit), inUnit(pair.response, response.unit)];
  return at && gave && isBounded(at) && isBounded(gave) ? { at, gave } : undefined;
}

/** Wanted value of a `want`: a response to reach or a setting of the knob to judge; in the unit of its axis. */
export function wantIn(
  value: Value | undefined,
  trial: Pick<ReadTrial, 'knob' | 'response'>,
): { readonly of: 'response' | 'knob'; readonly value: Interval } | undefined {
  if (value?.form !== 'amount') return undefined;
  const response = inUnit(measured(value), trial.response.unit);
  if (response) return { of: 'response', value: response };
  const knob = inUnit(measured(value), trial.knob.unit);
  return knob && { of: 'knob', value: knob };
}

function axisOf(name: string, written: string | undefined, words: State['words']): Axis {
  const parts = name.split(' ');
  const found = findQuantity(parts, 0);
  const quantity = words.get(name) ?? (found?.length === parts.length ? found.quantity : undefined);
  return { name, quantity, unit: unitById(written ?? quantity?.unit ?? 'number') };
}

function inUnit(value: Measured | undefined, unit: Unit): Interval | undefined {
  if (!value) return undefined;
  const from = value.unit ?? unit;
  return from.dimension === unit.dimension ? convertInterval(value.interval, from, unit) : undefined;
}

const isRough = ({ low, high, about }: Interval): boolean => about || low !== high;

/** Tachometer resolution: TM 5-4210-230-14&P-1 calls for one accurate to 1 to 2 per cent. */
const TACHOMETER = 0.01;

const meterFor = (unit: Unit, rows: readonly TrialRow[]): number | undefined =>
  unit.dimension === 'rotation' && rows.length > 0
    ? TACHOMETER * rows.reduce((most, { response }) => Math.max(most, Math.abs(response)), 0)
    : undefined;

/** Scatter of the response, from rows that repeat one setting. */
function noise(rows: readonly TrialRow[]): number | undefined {
  const byKnob = new Map<number, number[]>();
  for (const { knob, response } of rows) {
    const same = byKnob.get(knob);
    if (same) same.push(response);
    else byKnob.set(knob, [response]);
  }
  return noiseOf([...byKnob.values()])?.deviation;
}
