/** Limits and their days in the words of a message. */
import type { Origin } from '../../model/entry/entry.ts';
import { formatValue } from '../../trade/measure/format.ts';
import type { Interval } from '../../trade/measure/interval.ts';
import type { Unit } from '../../trade/measure/units.ts';

/** A limit or target for a message: `34 deg` where it has one bound only, else `11.8..12.4:1`. */
export function boundText(limit: Interval, unit: Unit): string {
  if (!Number.isFinite(limit.low)) return formatValue({ ...limit, low: limit.high }, unit);
  return formatValue(Number.isFinite(limit.high) ? limit : { ...limit, high: limit.low }, unit);
}

/** `, set 2026-05-02`, with a comma before; empty for a line outside a session. */
export const setOn = ({ date }: Origin): string => (date ? `, set ${date}` : '');

/** ` of 2026-05-02`, with a space before; empty for a line outside a session. */
export const ofDay = ({ date }: Origin): string => (date ? ` of ${date}` : '');
