/** Which readings may be held against each other: same quantity, same place, same conditions, engine warm or not. */

import { amountIn, firstAmount } from '../../model/entry/amount.ts';
import type { Statement } from '../../model/entry/entry.ts';
import type { Amount } from '../../model/entry/value.ts';
import type { State } from '../../model/state/state.ts';
import { isCold, wordsBesideWarmth } from '../../model/state/warm-engine.ts';
import { type Interval, middle } from '../../trade/measure/interval.ts';
import { convert, unitById } from '../../trade/measure/units.ts';
import { isResponse, type Quantity } from '../../trade/vocabulary/quantity.ts';

/** A reading as a number, and what it was read under. */
export interface Measured {
  /** The same for readings that may be held against each other. */
  readonly key: string;
  /** The same for all places of one quantity under the same conditions: what they have one noise for. */
  readonly family: string;
  readonly quantity: Quantity;
  /** `#3`, `left`; empty for none. */
  readonly place: string;
  /** `in neutral, cold`; empty for none. */
  readonly under: string;
  /** In the quantity's usual unit. */
  readonly value: Interval;
  /** Id of the unit it was written in, where it was written with one. */
  readonly written: string | undefined;
  /** One cylinder of a list, which also stands as a whole. */
  readonly ofList: boolean;
}

/**
 * What one `said` of a reading measured: a value of its own place, or of a list each cylinder and their mean under no
 * place. Empty where there is no number of the quantity's own dimension.
 */
export function measuredIn(quantity: Quantity, said: Statement, state: State): readonly Measured[] {
  if (!isResponse(quantity)) return [];
  const values = said.values.map((value) => amountIn(value, quantity.unit ?? 'number'));
  const known = values.filter((value) => value !== undefined);
  if (known.length === 0 || known.length !== values.length) return [];
  const under = underWords(said, isCold(quantity, said, state));
  const family = `${quantity.name}|${under}`;
  const written = firstAmount(said.values)?.unit?.id;
  const at = (place: string, value: Interval, ofList: boolean): Measured => {
    return { key: `${family}|${place}`, family, quantity, place, under, value, written, ofList };
  };
  const [only] = known;
  if (only && known.length === 1) return [at(said.place?.text ?? '', only, false)];
  return [
    at(said.place?.text ?? '', meanOf(known), false),
    ...known.map((value, i) => at(`#${i + 1}`, value, true)),
  ];
}

/** The mean of intervals: any value it can have. */
export function meanOf(values: readonly Interval[]): Interval {
  const count = values.length;
  return {
    low: values.reduce((sum, { low }) => sum + low, 0) / count,
    high: values.reduce((sum, { high }) => sum + high, 0) / count,
    about: values.some((value) => value.about),
  };
}

/** In one order and in base units, so that it does not matter how the conditions were written. */
function underWords(said: Statement, cold: boolean): string {
  const words = wordsBesideWarmth(said);
  const at = said.conditions.flatMap(({ value }) => (value?.interval ? [atText(value)] : []));
  return [...words.sort(), ...at.sort(), ...(cold ? ['cold'] : [])].join(', ');
}

/** The unit that a condition of a dimension is told in. */
const TOLD_IN: ReadonlyMap<string, string> = new Map(
  Object.entries({ rotation: 'rpm', pressure: 'inHg', temperature: 'F' }),
);

function atText(value: Amount): string {
  const number = value.interval ? middle(value.interval) : 0;
  const unit = value.unit ?? unitById('rpm');
  const told = unitById(TOLD_IN.get(unit.dimension) ?? unit.id);
  return `@ ${Number(convert(number, unit, told).toPrecision(4))} ${told.symbol}`;
}
