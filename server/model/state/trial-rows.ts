/** The rows of a trial as they are written, and the units of its two axes. */

import { type Interval, scale } from '../../trade/measure/interval.ts';
import { type Unit, unitById } from '../../trade/measure/units.ts';
import { drillNamed } from '../../trade/sums/drills.ts';
import type { Origin, RowEntry, TrialEntry } from '../entry/entry.ts';
import type { Amount } from '../entry/value.ts';
import { put } from './immutable.ts';
import type { Row, Trial } from './state.ts';

/** A trial without its rows. */
export const newTrial = ({ knob, response, under }: TrialEntry, by: Origin): Trial => {
  return { knob, response, under, rows: NO_ROWS, units: { knob: undefined, response: undefined }, by };
};

const NO_ROWS: Trial['rows'] = new Map();

export const rowOf = ({ values, size }: Pick<RowEntry, 'values' | 'size'>, by: Origin): Row => {
  return { values, size: size.map((word) => word.text).join(' '), by };
};

export function trialWith(trial: Trial, row: Row): Trial {
  const { knob, response } = pairOf(row);
  const units = {
    knob: trial.units.knob ?? knob?.unit?.id,
    response: trial.units.response ?? response?.unit?.id,
  };
  return { ...trial, rows: put(trial.rows, String(trial.rows.size), row), units };
}

export interface Measured {
  readonly interval: Interval;
  /** Undefined where none was written. */
  readonly unit: Unit | undefined;
}

export interface Pair {
  readonly knob: Measured | undefined;
  readonly response: Measured | undefined;
}

export const measured = ({ interval, unit, relative }: Amount): Measured | undefined =>
  interval && { interval: relative === 'less' ? scale(interval, -1) : interval, unit };

export function pairOf({ values, size }: Pick<Row, 'values' | 'size'>): Pair {
  const amounts = values
    .filter((value): value is Amount => value.form === 'amount')
    .map((amount) => measured(amount));
  const drill = size === '' ? undefined : drillNamed(size.replace(/drill$/i, ''));
  if (!drill) return { knob: amounts[0], response: amounts[1] };
  const bore = { low: drill.inches, high: drill.inches, about: false };
  return { knob: { interval: bore, unit: unitById('in') }, response: amounts[0] };
}
