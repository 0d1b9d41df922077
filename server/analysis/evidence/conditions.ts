/** Which readings are comparable: same quantity, place and conditions, engine equally warm. */

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
  /** Equal for readings that are comparable. */
  readonly key: string;
  /** Equal for all places of one quantity under the same conditions, which share one scatter. */
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
  /** True for one cylinder of a list; the list also counts as a whole. */
  readonly ofList: boolean;
}

/**
 * Observations in one `said` of a reading: a value of its own place, or of a list each cylinder and their mean under no
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

/** Conditions in one order and in base units, so that it does not matter how they were written. */
function underWords(said: Statement, cold: boolean): string {
  const words = wordsBesideWarmth(said);
  const at = said.conditions.flatMap(({ value }) => (value?.interval ? [atText(value)] : []));
  return [...words.sort(), ...at.sort(), ...(cold ? ['cold'] : [])].join(', ');
}

/** Unit in which a condition is shown, by dimension. */
const TOLD_IN: ReadonlyMap<string, string> = new Map(
  Object.entries({ rotation: 'rpm', pressure: 'inHg', temperature: 'F' }),
);

function atText(value: Amount): string {
  const number = value.interval ? middle(value.interval) : 0;
  const unit = value.unit ?? unitById('rpm');
  const shownIn = unitById(TOLD_IN.get(unit.dimension) ?? unit.id);
  return `@ ${Number(convert(number, unit, shownIn).toPrecision(4))} ${shownIn.symbol}`;
}
