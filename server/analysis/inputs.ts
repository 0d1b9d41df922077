/** Inputs of a figure: values in the unit it needs, each with the line that says so. */

import { amountIn, firstAmount } from '../model/entry/amount.ts';
import { valueText } from '../model/entry/as-written.ts';
import type { Origin } from '../model/entry/entry.ts';
import type { Value } from '../model/entry/value.ts';
import { ofName } from '../model/state/immutable.ts';
import { settingText } from '../model/state/setting-text.ts';
import type { State } from '../model/state/state.ts';
import { formatValue } from '../trade/measure/format.ts';
import { type Interval, middle, monotone } from '../trade/measure/interval.ts';
import { type Unit, unitById } from '../trade/measure/units.ts';
import type { Input } from './figure.ts';

export interface KnownInput {
  /** In the requested unit. */
  readonly value: Interval;
  readonly input: Input;
  readonly by: Origin;
}

/** A fact of engine or vehicle, in a unit of the table. Undefined where it is not written or is of another dimension. */
export function factOf(state: State, name: string, unit: string): KnownInput | undefined {
  const stated = state.facts.get(`${name}|`);
  return stated && inputIn(name, stated.statement.values, unit, stated.quantity.unit, stated.by);
}

/** Text of a fact, lower case: `fuel`, `aspiration`, `layout`. */
export function factText(state: State, name: string): string | undefined {
  return state.facts.get(`${name}|`)?.text?.toLowerCase();
}

/** A target or a limit, in a unit of the table. */
export function statedIn(
  map: State['targets'],
  name: string,
  unit: string,
  label: string,
): KnownInput | undefined {
  const stated = map.get(`${name}|`);
  return stated && inputIn(label, stated.statement.values, unit, stated.quantity.unit, stated.by);
}

/** A setting in force with one value, in a unit of the table; undefined where only changes were written. */
export function settingOf(state: State, name: string, unit: string): KnownInput | undefined {
  const setting = state.settings.get(`${name}|`);
  if (!setting?.base || setting.values.length !== 1) return undefined;
  const found = inputIn(name, setting.values, unit, setting.quantity.unit, setting.by);
  return found && { ...found, input: { ...found.input, value: settingText(setting) } };
}

/** The last reading of this session of that name, whatever its place and conditions, in a unit of the table. */
export function readingOf(state: State, name: string, unit: string): KnownInput | undefined {
  const [taken] = ofName(state.readings, name, 1);
  return taken && inputIn(name, taken.statement.values, unit, taken.quantity.unit, taken.by);
}

function inputIn(
  name: string,
  values: readonly Value[],
  unit: string,
  bare: string | undefined,
  by: Origin,
): KnownInput | undefined {
  const amount = firstAmount(values);
  const value = amountIn(amount, unit, bare ?? unit);
  if (!amount || !value) return undefined;
  return { value, by, input: { name, value: valueText(amount, bare), by } };
}

/** A number as text in a unit of the table, to the nearest `step` where one is given; an unbounded one is `any`. */
export const inWords = (value: Interval, unit: string, step?: number): string =>
  formatValue(
    step === undefined ? value : monotone(value, (n) => Math.round(n / step) * step),
    unitById(unit),
  );

/** Jet sizes at hand, in a unit; those given in another form are left out. */
export function jetSizes({ facts }: State, unit: Unit): readonly number[] {
  const values = facts.get('jet sizes|')?.statement.values ?? [];
  return values.flatMap((value) => amountIn(value, unit.id, 'number') ?? []).map(middle);
}
