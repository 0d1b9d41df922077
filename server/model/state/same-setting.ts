/** Whether two settings are the same, in whichever unit they were written. */
import type { Interval } from '../../trade/measure/interval.ts';
import { amountIn } from '../entry/amount.ts';
import type { Point } from '../entry/entry.ts';
import type { Amount, Value } from '../entry/value.ts';
import type { SettingInForce } from './state.ts';

/** The same values, points and words, in whichever unit they were written. */
export function sameSetting(a: SettingInForce, b: SettingInForce): boolean {
  const unit = b.quantity.unit;
  return (
    sameValues(a.values, b.values, unit) &&
    samePoints(a.points, b.points, unit) &&
    a.text?.toLowerCase() === b.text?.toLowerCase() &&
    [...a.words].sort().join(' ') === [...b.words].sort().join(' ') &&
    (a.base === undefined) === (b.base === undefined)
  );
}

export const sameValues = (a: readonly Value[], b: readonly Value[], unit: string | undefined): boolean =>
  a.length === b.length && a.every((value, i) => sameValue(value, b[i] as Value, unit));

const samePoints = (a: readonly Point[], b: readonly Point[], unit: string | undefined): boolean =>
  a.length === b.length &&
  a.every(({ value, at }, i) => {
    const other = b[i] as Point;
    return sameValue(value, other.value, unit) && sameValue(at, other.at, other.at.unit?.id);
  });

function sameValue(a: Value, b: Value, bare: string | undefined): boolean {
  if (a.form !== 'amount' || b.form !== 'amount')
    return a.form === b.form && (a as { text?: string }).text === (b as { text?: string }).text;
  const unit = b.unit?.id ?? bare ?? 'number';
  const [one, other] = [amountIn(a, unit, bare), amountIn(b, unit, bare)];
  return one && other ? near(one, other) : sameWritten(a, b);
}

const near = (a: Interval, b: Interval): boolean => close(a.low, b.low) && close(a.high, b.high);

/** Values in other units come back with a rounding in their last places. */
const close = (a: number, b: number): boolean =>
  a === b || Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1);

const sameWritten = (a: Amount, b: Amount): boolean =>
  a.interval === b.interval && a.unit === b.unit && a.relative === b.relative;
