/** The engine's cylinders and banks, and the readings of this session cylinder by cylinder. */

import { amountIn } from '../../model/entry/amount.ts';
import { statementText } from '../../model/entry/as-written.ts';
import type { Origin, Statement } from '../../model/entry/entry.ts';
import { ofName } from '../../model/state/immutable.ts';
import type { State } from '../../model/state/state.ts';
import { type Interval, middle } from '../../trade/measure/interval.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import { type CylinderValue, neighbours } from '../../trade/sums/cylinders.ts';
import { isResponse } from '../../trade/vocabulary/quantity.ts';
import { measuredIn } from '../evidence/conditions.ts';

/** A bank and its cylinders, front to rear. */
interface Bank {
  readonly name: string;
  readonly cylinders: readonly number[];
}

interface CylinderReading {
  readonly cylinder: number;
  readonly value: Interval;
  readonly by: Origin;
}

/** Readings of one quantity under the same conditions, by cylinder. */
export interface CylinderSet {
  readonly name: string;
  readonly under: string;
  /** In `unit`. */
  readonly readings: readonly CylinderReading[];
  /** Id of the unit it was last written in; the quantity's usual one where none was. */
  readonly unit: string | undefined;
}

/** The firing order; empty where it is not written or is none. */
export const firingOrderOf = (state: State): readonly number[] =>
  orderOf(state.facts.get('firing order|')?.statement);

/** Banks as written; one row of cylinders where the layout is inline; else none. */
export function banksOf(state: State): readonly Bank[] {
  const banks = [...state.facts.values()]
    .filter(({ quantity, statement: said }) => quantity.name === 'bank' && said.place)
    .map(({ statement: said }) => ({ name: said.place?.text ?? '', cylinders: orderOf(said) }))
    .filter(({ cylinders }) => cylinders.length > 0);
  if (banks.length > 0) return banks;
  const count = cylinderCount(state) ?? firingOrderOf(state).length;
  const inline = state.facts.get('layout|')?.text?.toLowerCase() === 'inline';
  return inline && count > 1 ? [{ name: '', cylinders: Array.from({ length: count }, (_, i) => i + 1) }] : [];
}

/** Pairs of neighbouring cylinders; empty where neither banks nor an inline layout are written. */
export const neighboursIn = (state: State): readonly (readonly [number, number])[] =>
  neighbours(banksOf(state).map(({ cylinders }) => cylinders));

function cylinderCount(state: State): number | undefined {
  const value = amountIn(state.facts.get('cylinders|')?.statement.values[0], 'number');
  const count = value && middle(value);
  return count !== undefined && Number.isInteger(count) && count >= 1 && count <= MOST_CYLINDERS
    ? count
    : undefined;
}

/** More cylinders than any engine tuned from a notebook; keeps a typing slip from making a list of a million. */
const MOST_CYLINDERS = 48;

function orderOf(said: Statement | undefined): readonly number[] {
  const value = said?.values[0];
  if (value?.form !== 'order') return [];
  const order = value.text.split('-').map(Number);
  return order.every((each) => Number.isInteger(each) && each > 0) ? order : [];
}

interface OfSet extends CylinderReading {
  readonly set: Omit<CylinderSet, 'readings'> & { readonly usual: string | undefined };
}

/**
 * Latest reading of each cylinder in this session so far, split by quantity and conditions. Sets of fewer than two
 * cylinders are left out. Only the last `most` readings of a quantity are considered.
 */
export function cylinderSets(state: State, name?: string, most?: number): readonly CylinderSet[] {
  const sets = new Map<string, Map<number, OfSet>>();
  const readings = name === undefined ? state.readings.values() : ofName(state.readings, name, most);
  for (const { quantity, statement: said, by } of readings) {
    if (!quantity.places?.includes('cylinder')) continue;
    for (const { family, place, under, value, written } of measuredIn(quantity, said, state)) {
      const cylinder = /^#(\d+)$/.exec(place)?.[1];
      if (cylinder === undefined) continue;
      const inSet = sets.get(family) ?? new Map<number, OfSet>();
      inSet.delete(Number(cylinder)); // keeps the set in the order of the lines
      const set = { name: quantity.name, under, unit: written ?? quantity.unit, usual: quantity.unit };
      sets.set(family, inSet.set(Number(cylinder), { cylinder: Number(cylinder), value, by, set }));
    }
  }
  return [...sets.values()].flatMap((readings) => setOf([...readings.values()]));
}

/** Those of `cylinderSets` that the line adds to. */
export const setsOfLine = (state: State, name: string, where: Origin): readonly CylinderSet[] =>
  cylinderSets(state, name, NEAR_LINE).filter(({ readings }) => readings.some(({ by }) => by === where));

const NEAR_LINE = 2 * MOST_CYLINDERS;

/** In the unit of the last line. */
function setOf(each: readonly OfSet[]): readonly CylinderSet[] {
  const last = each.at(-1);
  if (!last || each.length < 2) return [];
  const { usual, ...set } = last.set;
  const told = (value: Interval) =>
    usual === undefined || set.unit === undefined || usual === set.unit
      ? value
      : convertInterval(value, unitById(usual), unitById(set.unit));
  const readings = each
    .map(({ cylinder, value, by }) => ({ cylinder, value: told(value), by }))
    .sort((a, b) => a.cylinder - b.cylinder);
  return [{ ...set, readings }];
}

/**
 * Midpoints of the readings that have both ends, to ten figures, so that a value on a limit stays on it whichever unit
 * it was written in.
 */
export const numbersOf = ({ readings }: Pick<CylinderSet, 'readings'>): readonly CylinderValue[] =>
  readings
    .filter(({ value }) => Number.isFinite(value.low) && Number.isFinite(value.high))
    .map(({ cylinder, value }) => ({ cylinder, value: Number(middle(value).toPrecision(10)) }));

/** A reading in words, by cylinder: how plugs look. */
export function toldByCylinder(
  state: State,
  name: string,
): readonly { readonly cylinder: number; readonly text: string; readonly by: Origin }[] {
  return [...state.readings.values()]
    .filter(
      ({ quantity, statement: said }) =>
        quantity.name === name && !isResponse(quantity) && said.place?.cylinder,
    )
    .map(({ statement: said, by }) => ({
      cylinder: said.place?.cylinder ?? 0,
      text: statementText(said, undefined),
      by,
    }))
    .sort((a, b) => a.cylinder - b.cylinder);
}
