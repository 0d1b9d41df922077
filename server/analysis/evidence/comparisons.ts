/** Comparisons: each reading with the last comparable one, the difference, and what was changed in between. */

import { latestFew, onceInSteps, oncePerPair } from '../../memo.ts';
import { type Interruptible, runToEnd } from '../../model/snapshot/interruptible.ts';
import { ofAllPages } from '../../model/snapshot/per-page.ts';
import type { Snapshot } from '../../model/snapshot/snapshot.ts';
import { type Interval, isBounded, middle, subtract } from '../../trade/measure/interval.ts';
import { type Noise, noiseOf } from '../../trade/sums/noise.ts';
import { airChange } from '../air/session-air.ts';
import { type Observation, observationsOn } from './observations.ts';
import { type Changed, changesBetween, type Setup } from './setup-changes.ts';

export interface Comparison {
  readonly before: Observation;
  readonly after: Observation;
  /** After minus before, in the quantity's usual unit. */
  readonly difference: Interval;
  readonly changes: readonly Changed[];
  /** Change in air density as a fraction; undefined unless the air of both is written. */
  readonly air: number | undefined;
}

/** Evidence of cause and effect in the whole notebook. */
export interface Evidence {
  readonly comparisons: readonly Comparison[];
  /** By family: from readings repeated with nothing changed and the air not moved. In the quantity's usual unit. */
  readonly noise: ReadonlyMap<string, Noise>;
}

/** Smallest change in air density mentioned beside a reading: about 1000 ft, one small jet step (common practice, no source). */
export const AIR_MOVED = 0.03;

/** Whether air density changed enough to affect readings (3 % or more); false where the weather of either is not written. */
export const airMoved = ({ air }: Comparison): boolean => air !== undefined && Math.abs(air) >= AIR_MOVED;

/** Repeat: nothing was changed and the air did not move, so the two differ by scatter alone. */
const isRepeat = (comparison: Comparison): boolean =>
  comparison.changes.length === 0 && !airMoved(comparison);

/** Evidence of a snapshot, computed once, on first use. */
export const evidenceOf = (snapshot: Snapshot): Evidence => runToEnd(gatherEvidence(snapshot));

/** `evidenceOf` as interruptible steps, some readings each. */
export const gatherEvidence = onceInSteps(function* (snapshot: Snapshot): Interruptible<Evidence> {
  const comparisons = yield* compareAll(ofAllPages(snapshot, observationsOn));
  return { comparisons, noise: noiseIn(comparisons) };
});

const READINGS_A_STEP = 200;

function* compareAll(observations: readonly Observation[]): Interruptible<readonly Comparison[]> {
  const last = new Map<string, Observation>();
  const comparisons: Comparison[] = [];
  for (const [i, after] of observations.entries()) {
    const before = last.get(after.key);
    last.set(after.key, after);
    if (before) comparisons.push(compareReadings(after, before));
    if (i % READINGS_A_STEP === 0) yield;
  }
  return comparisons;
}

/** Comparisons by the later reading. Readings live as long as their page, so a keystroke compares only a few again. */
const compareReadings = oncePerPair(
  (after: Observation, before: Observation): Comparison => ({
    before,
    after,
    difference: subtract(after.value, before.value),
    changes: changesOf([before.setup, after.setup]).filter((change) => mayMove(change, after)),
    air: airChange(before.air, after.air),
  }),
);

/** Facts of the engine may affect any reading. */
function mayMove({ owner }: Changed, { quantity }: Observation): boolean {
  const owners = quantity.traits?.movedBy;
  return !owners || owner === 'fact' || (owner !== undefined && owners.includes(owner));
}

/** Readings of one session share their setups, so the same pair comes up many times in a row. */
const changesOf = latestFew(
  4,
  ([before, after]: readonly [before: Setup, after: Setup]) => changesBetween(before, after),
  (a, b) => sameSetup(a[1], b[1]) && sameSetup(a[0], b[0]),
);

const sameSetup = (a: Setup, b: Setup): boolean =>
  a.settings === b.settings && a.fitted === b.fitted && a.facts === b.facts;

/** Groups of consecutive repeats; all groups of a family are pooled. */
function noiseIn(comparisons: readonly Comparison[]): ReadonlyMap<string, Noise> {
  const open = new Map<string, number[]>();
  const groups = new Map<string, number[][]>();
  for (const comparison of comparisons) {
    const { before, after } = comparison;
    const [from, to] = [numberOf(before.value), numberOf(after.value)];
    if (!isRepeat(comparison) || from === undefined || to === undefined) {
      open.delete(after.key);
      continue;
    }
    let group = open.get(after.key);
    if (!group) {
      group = [from];
      open.set(after.key, group);
      groups.set(after.family, [...(groups.get(after.family) ?? []), group]);
    }
    group.push(to);
  }
  return new Map(
    [...groups].flatMap(([family, each]) => {
      const noise = noiseOf(each);
      // Repeats that agree to the last figure only show that the scatter is finer than what was written down.
      return noise && noise.deviation > 0 ? [[family, noise] as const] : [];
    }),
  );
}

/** The middle of a value known on both sides. */
export const numberOf = (value: Interval): number | undefined =>
  isBounded(value) ? middle(value) : undefined;
