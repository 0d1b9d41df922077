/** Compression test judged by the published rules, for whichever cylinders were read. */

import type { State } from '../../model/state/state.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import { type CompressionVerdict, judgeCompression } from '../../trade/sums/compression.ts';
import { type CylinderSet, numbersOf } from './cylinder-readings.ts';
import { neighboursIn } from './engine-facts.ts';

/** In psi, with the engine's own cylinder numbers. */
export interface JudgedCompression {
  readonly highest: number;
  readonly lowest: number;
  /** Lowest over highest. */
  readonly ratio: number;
  readonly verdicts: readonly CompressionVerdict[];
}

/** Applies the rule, which counts list positions, to cylinder numbers. Undefined for fewer than two readings. */
export function judgeSet(state: State, set: CylinderSet): JudgedCompression | undefined {
  const numbers = numbersOf(inPsi(set));
  const placeOf = (cylinder: number) => numbers.findIndex((each) => each.cylinder === cylinder) + 1;
  const cylinderAt = (place: number) => numbers[place - 1]?.cylinder ?? place;
  const pairs = neighboursIn(state)
    .map(([one, other]): [number, number] => [placeOf(one), placeOf(other)])
    .filter(([one, other]) => one > 0 && other > 0);
  const test = judgeCompression(
    numbers.map(({ value }) => value),
    pairs,
  );
  if (!test) return undefined;
  const verdicts = test.verdicts.map((verdict) => {
    // Where the whole engine is under the floor, two low neighbours mean nothing.
    const uneven = (place: number) => (numbers[place - 1]?.value ?? 0) < verdict.rule.fraction * test.highest;
    const lowPairs = verdict.lowPairs.filter(([one, other]) => uneven(one) && uneven(other));
    return {
      ...verdict,
      low: verdict.low.map(cylinderAt),
      lowPairs: lowPairs.map(([one, other]): [number, number] => [cylinderAt(one), cylinderAt(other)]),
    };
  });
  return { ...test, verdicts };
}

/** The readings in psi, the unit of the rules' floor. */
export function inPsi(set: CylinderSet): CylinderSet {
  const [unit, psi] = [unitById(set.unit ?? 'psi'), unitById('psi')];
  return {
    ...set,
    unit: 'psi',
    readings: set.readings.map((each) => ({ ...each, value: convertInterval(each.value, unit, psi) })),
  };
}
