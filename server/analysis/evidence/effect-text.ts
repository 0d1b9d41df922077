/** Readings, differences and effects in words. */
import { formatValue } from '../../trade/measure/format.ts';
import { exact, type Interval, monotone } from '../../trade/measure/interval.ts';
import { convertDifference, convertInterval, type Unit, unitById } from '../../trade/measure/units.ts';
import type { Observation } from './observations.ts';

export const repeats = (count: number): string => `${count} ${count === 1 ? 'repeat' : 'repeats'}`;

/** `idle in neutral`, `tube #4 (at idle, probe)`. */
export function readingName(name: string, place: string, under: string): string {
  const what = place === '' ? name : `${name} ${place}`;
  return under === '' ? what : `${what} (${under})`;
}

export const nameOf = ({ quantity, place, under }: Observation): string =>
  readingName(quantity.name, place, under);

/** A reading's numbers, which come in the quantity's usual unit, in the unit its line was written in. */
interface Teller {
  readonly unit: Unit | undefined;
  /** The value itself, and a difference of two, in `unit`. */
  readonly own: (value: Interval) => Interval;
  readonly ownDifference: (difference: Interval) => Interval;
  readonly value: (value: Interval) => string;
  readonly number: (value: number) => string;
  /** A size without a sign: scatter, spread. */
  readonly size: (difference: number) => string;
  /** A size known only roughly: to two figures. */
  readonly rough: (difference: number) => string;
  /** `+20 rpm` */
  readonly signed: (difference: number) => string;
  /** `40 rpm more`, `~3 deg less`, `-10..20 F different`, `the same`. */
  readonly difference: (difference: Interval) => string;
}

export function tellerOf({ quantity, written }: Pick<Observation, 'quantity' | 'written'>): Teller {
  const usual = quantity.unit === undefined ? undefined : unitById(quantity.unit);
  const unit = usual && written !== undefined ? unitById(written) : usual;
  const step = (n: number) => (usual && unit ? convertDifference(n, usual, unit) : n);
  const own = (value: Interval) => (usual && unit ? convertInterval(value, usual, unit) : value);
  const ownDifference = (difference: Interval) => monotone(difference, step);
  const size = (difference: number) => sizeText(step(difference), unit);
  return {
    unit,
    own,
    ownDifference,
    value: (value) => formatValue(own(value), unit),
    number: (value) => formatValue(own(exact(value)), unit),
    size,
    rough: (difference) => sizeText(Number(step(difference).toPrecision(2)), unit),
    signed: (difference) => (difference > 0 ? `+${size(difference)}` : size(difference)),
    difference: (difference) => differenceText(ownDifference(difference), unit),
  };
}

/** Temperatures are read to whole degrees, but an effect per degree of timing is finer. */
const sizeText = (size: number, unit: Unit | undefined): string =>
  unit?.dimension === 'temperature'
    ? `${Number(size.toPrecision(3))} ${unit.symbol}`
    : formatValue(exact(size), unit);

function differenceText(difference: Interval, unit: Unit | undefined): string {
  const { low, high, about } = difference;
  if (low === 0 && high === 0) return 'the same';
  if (low >= 0) return `${formatValue(difference, unit)} more`;
  if (high <= 0) return `${formatValue({ low: -high, high: -low, about }, unit)} less`;
  return `${formatValue(difference, unit)} different`;
}

/** A unit after `per`: `turn`, `deg`, `number`. */
export const each = (unit: Unit): string => {
  if (unit.id === 'turn') return 'turn';
  return unit.symbol.startsWith(':') ? `1${unit.symbol}` : unit.symbol || 'number';
};

/** A table with its column heads; empty where there are no rows. */
export const withHead = (
  head: readonly string[],
  rows: readonly (readonly string[])[],
): readonly (readonly string[])[] => (rows.length === 0 ? [] : [head, ...rows]);
