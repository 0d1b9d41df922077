/** An origin as a line number and a date, which is what a reader can look up. */

import type { Origin } from '../model/entry/entry.ts';
import { lineOf } from '../model/snapshot/locate.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';

export interface Where {
  /** From zero; undefined where that line is gone. */
  readonly line: number | undefined;
  /** ISO date of its session; undefined outside sessions. */
  readonly date: string | undefined;
}

export const whereOf = (snapshot: Snapshot, { ref, date }: Origin): Where => ({
  line: lineOf(snapshot, ref),
  date,
});
