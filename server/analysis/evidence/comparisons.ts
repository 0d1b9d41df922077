/** Each reading against the last comparable one: by how much it differs, and what was changed in between. */

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
  /** In the quantity's usual unit: after less before. */
  readonly difference: Interval;
  readonly changes: readonly Changed[];
  /** Change of the air's density as a fraction; undefined where the notebook does not tell the air of both. */
  readonly air: number | undefined;
}

/** What the whole notebook says of cause and effect. */
export interface Evidence {
  readonly comparisons: readonly Comparison[];
  /** By family: from readings repeated with nothing changed and the air not moved. In the quantity's usual unit. */
  readonly noise: ReadonlyMap<string, Noise>;
}

/** From this change of the air's density on it is told beside a reading: about 1000 ft, one small jet step. Common practice, no source. */
export const AIR_MOVED = 0.03;

/** Whether density changed by more than readings bear; false where the weather of one of the two is not written. */
export const airMoved = ({ air }: Comparison): boolean => air !== undefined && Math.abs(air) >= AIR_MOVED;

/** Nothing was changed and the air did not move: the two differ by noise alone. */
const isRepeat = (comparison: Comparison): boolean =>
  comparison.changes.length === 0 && !airMoved(comparison);

/** Worked out once for a snapshot, when first asked. */
export const evidenceOf = (snapshot: Snapshot): Evidence => runToEnd(gatherEvidence(snapshot));

/** As `evidenceOf`, some readings a step. */
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

/** Kept with the later reading. Readings stay as long as their page: after a keystroke nearly all are compared already. */
const compareReadings = oncePerPair(
  (after: Observation, before: Observation): Comparison => ({
    before,
    after,
    difference: subtract(after.value, before.value),
    changes: changesOf([before.setup, after.setup]).filter((change) => mayMove(change, after)),
    air: airChange(before.air, after.air),
  }),
);

/** Whatever the engine itself is may. */
function mayMove({ owner }: Changed, { quantity }: Observation): boolean {
  const owners = quantity.traits?.movedBy;
  return !owners || owner === 'fact' || (owner !== undefined && owners.includes(owner));
}

/** Readings of one session share their setups, so that the same pair is asked about many times in a row. */
const changesOf = latestFew(
  4,
  ([before, after]: readonly [before: Setup, after: Setup]) => changesBetween(before, after),
  (a, b) => sameSetup(a[1], b[1]) && sameSetup(a[0], b[0]),
);

const sameSetup = (a: Setup, b: Setup): boolean =>
  a.settings === b.settings && a.fitted === b.fitted && a.facts === b.facts;

/** Readings in a row that are repeats of each other make a group; all groups of a family are pooled. */
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
      // Repeats that agree to the last figure only say that the noise is under what was written down.
      return noise && noise.deviation > 0 ? [[family, noise] as const] : [];
    }),
  );
}

/** The middle of a value known on both sides. */
export const numberOf = (value: Interval): number | undefined =>
  isBounded(value) ? middle(value) : undefined;
