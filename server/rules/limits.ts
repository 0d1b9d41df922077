/** Limits and targets as they were stated, and values held to them. */
import { amountIn, firstAmount } from '../model/amounts.ts';
import type { Carried, Stated } from '../model/carry.ts';
import { keyOf } from '../model/carry.ts';
import type { Origin, Said } from '../model/notebook.ts';
import { atMost, type Interval, isExact } from '../trade/interval.ts';
import type { Unit } from '../trade/units.ts';
import { conditionIn } from './said.ts';

/** What was stated for the quantity at this place, else for the whole engine. */
export function statedFor(
  map: Carried['limits'],
  name: string,
  place: string | undefined,
): Stated | undefined {
  if (map.size === 0) return undefined;
  return map.get(keyOf(name, place)) ?? map.get(keyOf(name, undefined));
}

/** What was stated, in a unit; undefined where it is no number or of another kind. */
export function statedIn({ said, quantity }: Stated, unit: Unit): Interval | undefined {
  return amountIn(firstAmount(said.values), unit.id, quantity.unit ?? unit.id);
}

/** A limit in a unit; one number alone is the most. */
export function limitIn(limit: Stated, unit: Unit): Interval | undefined {
  const stated = statedIn(limit, unit);
  return stated && isExact(stated) ? atMost(stated.low) : stated;
}

/** Taken under what the limit or target asks for: its words are said, and its speed or depression is the same. */
export function isComparable(stated: Said, taken: Said): boolean {
  const sameAt = ['rpm', 'inHg'].every((unit) => {
    const [wanted, at] = [conditionIn(stated, unit), conditionIn(taken, unit)];
    return !wanted || (at !== undefined && at.low <= wanted.high && at.high >= wanted.low);
  });
  return sameAt && stated.heard.every((word) => taken.heard.includes(word));
}

/** Which way a value goes past a limit: all of it, or the end of it that is known. */
export function pastLimit(value: Interval, limit: Interval): 'over' | 'under' | undefined {
  if (value.low > limit.high || (value.high > limit.high && value.high !== Number.POSITIVE_INFINITY))
    return 'over';
  if (value.high < limit.low || (value.low < limit.low && value.low !== Number.NEGATIVE_INFINITY))
    return 'under';
  return undefined;
}

/** ` of 2026-05-02`, with a space before; empty for a line outside a session. */
export const ofDay = ({ date }: Origin): string => (date ? ` of ${date}` : '');
