/** Amounts in the unit a sum needs. */
import { type Interval, scale } from '../../trade/measure/interval.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import type { Statement } from './entry.ts';
import type { Amount, Value } from './value.ts';

/**
 * The amount in a unit of the table; a bare number is taken to be in `bare`. `-5 C` is five below zero: whether it
 * is a change is for the caller to know. Undefined where it is no number or of another dimension.
 */
export function amountIn(value: Value | undefined, unit: string, bare: string = unit): Interval | undefined {
  if (value?.form !== 'amount' || !value.interval) return undefined;
  const from = value.unit ?? unitById(bare);
  const to = unitById(unit);
  const signed = value.relative === 'less' ? scale(value.interval, -1) : value.interval;
  return from.dimension === to.dimension ? convertInterval(signed, from, to) : undefined;
}

/** First amount among values, if there is one. */
export const firstAmount = (values: readonly Value[]): Amount | undefined =>
  values.find((value): value is Amount => value.form === 'amount');

export const isAmount = (value: Value): value is Amount => value.form === 'amount';

/** Engine speed a value was taken at, in rpm. */
export const speedOf = (said: Statement): Interval | undefined => conditionIn(said, 'rpm');

/** The first condition that is an amount of the unit's dimension, in that unit. */
export function conditionIn(said: Statement, unit: string): Interval | undefined {
  for (const { value } of said.conditions) {
    const amount = value && amountIn(value, unit);
    if (amount) return amount;
  }
  return undefined;
}
