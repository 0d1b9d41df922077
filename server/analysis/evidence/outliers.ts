/** Each reading against the notebook's own past under the same conditions. */

import { ofAllPages } from '../../model/snapshot/per-page.ts';
import type { Snapshot } from '../../model/snapshot/snapshot.ts';
import { compareWithPast, type PastComparison } from '../../trade/sums/noise.ts';
import { numberOf } from './comparisons.ts';
import { type Observation, observationsOn } from './observations.ts';

/** Further back a reading is compared with none. */
const MOST_PAST = 100;

export interface AgainstPast extends PastComparison {
  readonly reading: Observation;
  readonly number: number;
  readonly past: readonly number[];
}

/**
 * The readings of the given lines against the latest comparable ones above them; those with too short a past, or one without
 * scatter, are left out, and none is odd that lies between two that were read before. `lines` are ids of lines.
 */
export function againstPast(snapshot: Snapshot, lines: ReadonlySet<number>): readonly AgainstPast[] {
  const past = new Map<string, number[]>();
  return ofAllPages(snapshot, observationsOn).flatMap((reading): AgainstPast[] => {
    const number = numberOf(reading.value);
    if (number === undefined) return [];
    const before = past.get(reading.key) ?? [];
    past.set(reading.key, before);
    const found = lines.has(reading.by.ref.line) ? compareWithPast(before, number) : undefined;
    const odd = found?.odd === true && (number < Math.min(...before) || number > Math.max(...before));
    const known = found ? [{ ...found, odd, reading, number, past: [...before] }] : [];
    before.push(number);
    if (before.length > MOST_PAST) before.shift();
    return known;
  });
}
