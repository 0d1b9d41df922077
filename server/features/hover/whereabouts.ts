/** Origin in words, with lines counted from one as editors do. */

import type { Origin } from '../../model/entry/entry.ts';
import { lineOf } from '../../model/snapshot/locate.ts';
import type { HoverQuestion } from './question.ts';

/** `line 12, 2026-05-02`, without the day where it is the day of the hovered line; `this line` for that line. */
export function whereabouts({ snapshot, line: here, reading }: HoverQuestion, { ref, date }: Origin): string {
  const line = lineOf(snapshot, ref);
  if (line === here) return 'this line';
  const day = date === reading.where.date ? undefined : date;
  return [line === undefined ? undefined : `line ${line + 1}`, day].filter(Boolean).join(', ');
}
