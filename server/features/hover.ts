/** What there is to say about the words under the cursor. */
import type { Position, Range } from '../../grammar/index.ts';
import { readingAt } from '../model/locate.ts';
import type { EntryKind } from '../model/notebook.ts';
import type { Snapshot } from '../model/snapshot.ts';
import { quantityHover } from './hover/quantity.ts';
import type { HoverAnswer, HoverQuestion } from './hover/question.ts';
import { onLine } from './ranges.ts';
import type { UnitChoice } from './units.ts';

export interface Hover {
  readonly range: Range;
  /** Markdown. */
  readonly text: string;
}

/** Who answers for which kind of line. */
const TELLERS: Partial<Readonly<Record<EntryKind, (question: HoverQuestion) => HoverAnswer | undefined>>> = {
  setting: quantityHover,
  reading: quantityHover,
  fact: quantityHover,
  limit: quantityHover,
  target: quantityHover,
};

/** Undefined where nothing stands, or nothing that is known. */
export function hoverAt(
  snapshot: Snapshot,
  { line, character }: Position,
  units: UnitChoice,
): Hover | undefined {
  const reading = readingAt(snapshot, line);
  if (!reading) return undefined;
  const answer = TELLERS[reading.entry.kind]?.({ snapshot, line, column: character, reading, units });
  return answer && { range: onLine(line, answer.span), text: answer.text };
}
