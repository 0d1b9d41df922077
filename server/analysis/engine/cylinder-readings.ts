/** Readings of this session cylinder by cylinder. */

import { statementText } from '../../model/entry/as-written.ts';
import type { Origin } from '../../model/entry/entry.ts';
import type { Context } from '../../model/snapshot/finding.ts';
import { ofName } from '../../model/state/immutable.ts';
import type { State } from '../../model/state/state.ts';
import { type Interval, isBounded, middle } from '../../trade/measure/interval.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import type { CylinderValue } from '../../trade/sums/cylinders.ts';
import { isResponse } from '../../trade/vocabulary/quantity.ts';
import { measuredIn } from '../evidence/conditions.ts';
import { MOST_CYLINDERS } from './engine-facts.ts';

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

/** A set that a line has written in. */
interface LineSet {
  readonly set: CylinderSet;
  /** As it was above the line; undefined where the line wrote all of it. */
  readonly above: CylinderSet | undefined;
  /** What the line itself wrote. */
  readonly cylinders: ReadonlySet<number>;
}

/** As `cylinderSets`, those that a line has written in: what it is held to lies not far above it. */
export function setsOfLine(
  { before, after, where }: Pick<Context, 'before' | 'after' | 'where'>,
  name: string,
): readonly LineSet[] {
  return cylinderSets(after, name, NEAR_LINE).flatMap((set): LineSet[] => {
    const own = set.readings.filter(({ by }) => by === where).map(({ cylinder }) => cylinder);
    if (own.length === 0) return [];
    const isWhole = own.length === set.readings.length;
    const above = isWhole
      ? undefined
      : cylinderSets(before, name, NEAR_LINE).find(({ under }) => under === set.under);
    return [{ set, above, cylinders: new Set(own) }];
  });
}

/**
 * What a line shows: of what is odd in its set, what it wrote itself and what was not odd above it. One list and a line for
 * each cylinder so show the same.
 */
export function shownByLine<T>(
  { set, above, cylinders }: LineSet,
  oddIn: (set: CylinderSet) => readonly T[],
  cylindersIn: (odd: T) => readonly number[],
): readonly T[] {
  const keyOf = (odd: T) => cylindersIn(odd).join('|');
  const known = new Set(above ? oddIn(above).map(keyOf) : []);
  return oddIn(set).filter(
    (odd) => cylindersIn(odd).some((each) => cylinders.has(each)) || !known.has(keyOf(odd)),
  );
}

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
    .filter(({ value }) => isBounded(value))
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
