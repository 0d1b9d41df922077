/** Trials as numbers: each row's knob and response in one unit, and what was fitted to them. */
import { drillNamed } from '../trade/drills.ts';
import { noiseOf } from '../trade/history.ts';
import { type Interval, middle, scale } from '../trade/interval.ts';
import type { Quantity } from '../trade/quantity.ts';
import { fitTrial, type TrialFit, type TrialRow } from '../trade/trials.ts';
import { convertInterval, type Unit, unitById } from '../trade/units.ts';
import { findQuantity } from '../trade/vocabulary.ts';
import type { Carried, Trial } from './carry.ts';
import type { Origin, TrialEntry } from './notebook.ts';
import type { Amount, Value } from './values.ts';

/** One axis of a trial: what it is called, what it is known as, and the unit its numbers are in. */
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

/** A trial without its rows. */
export const trialBegun = ({ knob, response, under }: TrialEntry, by: Origin): Trial => {
  return { knob, response, under, rows: [], by };
};

/** The first unit written on an axis holds for all its rows; a drill by name is its bore in inches. */
export function readTrial(trial: Trial, words: Carried['words']): ReadTrial {
  const pairs = trial.rows.map(({ values, size }) => pairOf(values, size));
  const knob = axisOf(
    trial.knob,
    pairs.map((pair) => pair.knob),
    words,
  );
  const response = axisOf(
    trial.response,
    pairs.map((pair) => pair.response),
    words,
  );
  const read = pairs.flatMap((pair) => {
    const [at, gave] = [inUnit(pair.knob, knob.unit), inUnit(pair.response, response.unit)];
    return at && gave && isBounded(at) && isBounded(gave) ? [{ at, gave }] : [];
  });
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

/** What `want` asks: a response to be had, or a setting of the knob to be judged; in the unit of its axis. */
export function wantIn(
  value: Value | undefined,
  trial: ReadTrial,
): { readonly of: 'response' | 'knob'; readonly value: Interval } | undefined {
  if (value?.form !== 'amount') return undefined;
  const response = inUnit(measured(value), trial.response.unit);
  if (response) return { of: 'response', value: response };
  const knob = inUnit(measured(value), trial.knob.unit);
  return knob && { of: 'knob', value: knob };
}

interface Measured {
  readonly interval: Interval;
  /** Undefined where none was written. */
  readonly unit: Unit | undefined;
}

interface Pair {
  readonly knob: Measured | undefined;
  readonly response: Measured | undefined;
}

const measured = ({ interval, unit, relative }: Amount): Measured | undefined =>
  interval && { interval: relative === 'less' ? scale(interval, -1) : interval, unit };

function pairOf(values: readonly Value[], size: string): Pair {
  const amounts = values
    .filter((value): value is Amount => value.form === 'amount')
    .map((amount) => measured(amount));
  const drill = size === '' ? undefined : drillNamed(size.replace(/drill$/i, ''));
  if (!drill) return { knob: amounts[0], response: amounts[1] };
  const bore = { low: drill.inches, high: drill.inches, about: false };
  return { knob: { interval: bore, unit: unitById('in') }, response: amounts[0] };
}

function axisOf(name: string, given: readonly (Measured | undefined)[], words: Carried['words']): Axis {
  const parts = name.split(' ');
  const found = findQuantity(parts, 0);
  const quantity = words.get(name) ?? (found?.length === parts.length ? found.quantity : undefined);
  const written = given.find((each) => each?.unit)?.unit;
  return { name, quantity, unit: written ?? unitById(quantity?.unit ?? 'number') };
}

function inUnit(value: Measured | undefined, unit: Unit): Interval | undefined {
  if (!value) return undefined;
  const from = value.unit ?? unit;
  return from.dimension === unit.dimension ? convertInterval(value.interval, from, unit) : undefined;
}

const isBounded = ({ low, high }: Interval): boolean => Number.isFinite(low) && Number.isFinite(high);

const isRough = ({ low, high, about }: Interval): boolean => about || low !== high;

/** Of a tachometer: TM 5-4210-230-14&P-1 asks for one accurate to 1 to 2 per cent. */
const TACHOMETER = 0.01;

const meterFor = (unit: Unit, rows: readonly TrialRow[]): number | undefined =>
  unit.dimension === 'rotation' && rows.length > 0
    ? TACHOMETER * Math.max(...rows.map(({ response }) => Math.abs(response)))
    : undefined;

/** Rows that try one setting again tell how far the response strays by itself. */
function noise(rows: readonly TrialRow[]): number | undefined {
  const byKnob = new Map<number, number[]>();
  for (const { knob, response } of rows) byKnob.set(knob, [...(byKnob.get(knob) ?? []), response]);
  return noiseOf([...byKnob.values()])?.deviation;
}
