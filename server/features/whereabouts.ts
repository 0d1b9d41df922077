/** Where something was said, in words: lines from one, as editors count them. */
import { lineOf } from '../model/locate.ts';
import type { Origin } from '../model/notebook.ts';
import type { Snapshot } from '../model/snapshot.ts';

/** `line 12, 2026-05-02`, or `this line` where `here` is that line (from zero). */
export function whereabouts(snapshot: Snapshot, { ref, date }: Origin, here: number): string {
  const line = lineOf(snapshot, ref);
  if (line === here) return 'this line';
  return [line === undefined ? undefined : `line ${line + 1}`, date].filter(Boolean).join(', ');
}
