/** Readings, differences and effects in words. */
import { formatNumber, formatValue } from '../../trade/format.ts';
import type { Interval } from '../../trade/interval.ts';
import { type Unit, unitById } from '../../trade/units.ts';
import type { Observation } from '../observe.ts';

export const repeats = (count: number): string => `${count} ${count === 1 ? 'repeat' : 'repeats'}`;

/** `idle in neutral`, `tube #4 (at idle, infrared)`. */
export function readingName(name: string, place: string, under: string): string {
  const what = place === '' ? name : `${name} ${place}`;
  return under === '' ? what : `${what} (${under})`;
}

export const nameOf = ({ quantity, place, under }: Observation): string =>
  readingName(quantity.name, place, under);

export const unitOf = ({ quantity }: Pick<Observation, 'quantity'>): Unit | undefined =>
  quantity.unit === undefined ? undefined : unitById(quantity.unit);

export function signed(n: number, unit: Unit | undefined): string {
  const text = `${formatNumber(n, unit)} ${unit?.symbol ?? ''}`.trim();
  return n > 0 ? `+${text}` : text;
}

/** `40 rpm more`, `~3 deg less`, `-10..20 F`, `the same`. */
export function differenceText(difference: Interval, unit: Unit | undefined): string {
  const { low, high, about } = difference;
  if (low === 0 && high === 0) return 'the same';
  if (low >= 0) return `${formatValue(difference, unit)} more`;
  if (high <= 0) return `${formatValue({ low: -high, high: -low, about }, unit)} less`;
  return `${formatValue(difference, unit)} different`;
}

/** A unit after `for each`: `turn`, `deg`, `number`. */
export const each = (unit: Unit): string => (unit.id === 'turn' ? 'turn' : unit.symbol || 'one');
