/** Limits and targets: which one applies to a value, and whether the value is past it. */
import { amountIn, conditionIn, firstAmount } from '../../model/entry/amount.ts';
import type { Statement } from '../../model/entry/entry.ts';
import type { Declared, State } from '../../model/state/state.ts';
import { keyOf } from '../../model/state/state.ts';
import { atMost, type Interval, isExact } from '../../trade/measure/interval.ts';
import type { Unit } from '../../trade/measure/units.ts';

/** The limit or target for the quantity at this place, else for the whole engine. */
export function statedFor(
  map: State['limits'],
  name: string,
  place: string | undefined,
): Declared | undefined {
  if (map.size === 0) return undefined;
  return map.get(keyOf(name, place)) ?? map.get(keyOf(name, undefined));
}

/** The value of a limit or target in a unit; undefined where it is not a number or of another dimension. */
export function statedIn({ statement: said, quantity }: Declared, unit: Unit): Interval | undefined {
  return amountIn(firstAmount(said.values), unit.id, quantity.unit ?? unit.id);
}

/** A limit in a unit; a single number is a maximum. */
export function limitIn(limit: Declared, unit: Unit): Interval | undefined {
  const stated = statedIn(limit, unit);
  return stated && isExact(stated) ? atMost(stated.low) : stated;
}

/** Whether a value was taken under the conditions of the limit or target: its words are there, and speed and depression agree. */
export function isComparable(stated: Statement, taken: Statement): boolean {
  const sameAt = ['rpm', 'inHg'].every((unit) => {
    const [wanted, at] = [conditionIn(stated, unit), conditionIn(taken, unit)];
    return !wanted || (at !== undefined && at.low <= wanted.high && at.high >= wanted.low);
  });
  return sameAt && stated.qualifiers.every((word) => taken.qualifiers.includes(word));
}

/** Which side of a limit a value is on: all of it, or its known end; undefined within the limit. */
export function pastLimit(value: Interval, limit: Interval): 'over' | 'under' | undefined {
  if (value.low > limit.high || (value.high > limit.high && value.high !== Number.POSITIVE_INFINITY))
    return 'over';
  if (value.high < limit.low || (value.low < limit.low && value.low !== Number.NEGATIVE_INFINITY))
    return 'under';
  return undefined;
}
