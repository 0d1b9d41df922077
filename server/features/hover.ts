/** Hover for the words under the cursor. */
import type { Position, Range } from '../../grammar/index.ts';
import { gatherEvidence } from '../analysis/evidence/comparisons.ts';
import { logsWanted } from '../analysis/road/log.ts';
import type { EntryKind } from '../model/entry/entry.ts';
import type { Interruptible } from '../model/snapshot/interruptible.ts';
import { lineStateAt } from '../model/snapshot/locate.ts';
import type { Files } from '../model/snapshot/named-files.ts';
import { preparePages } from '../model/snapshot/per-page.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { namedHover } from './hover/named.ts';
import { quantityHover } from './hover/quantity.ts';
import type { HoverAnswer, HoverQuestion } from './hover/question.ts';
import { meantHover } from './hover/silenced-rule.ts';
import { askedHover, spokenHover, VOID } from './hover/spoken.ts';
import { blocks } from './markdown.ts';
import { onLine } from './ranges.ts';
import type { UnitChoice } from './units.ts';

/** Precomputes what hovers need of the whole notebook, in steps. */
export function* prepareHover(snapshot: Snapshot): Interruptible<void> {
  yield* preparePages(snapshot);
  yield* gatherEvidence(snapshot);
}

export interface Hover {
  readonly range: Range;
  /** Markdown. */
  readonly text: string;
}

/** Hover builder for each kind of line. */
const TELLERS: Partial<Readonly<Record<EntryKind, (question: HoverQuestion) => HoverAnswer | undefined>>> = {
  spoken: spokenHover,
  asked: askedHover,
  setting: quantityHover,
  reading: quantityHover,
  fact: quantityHover,
  limit: quantityHover,
  target: quantityHover,
  session: namedHover,
  part: namedHover,
  fit: namedHover,
  item: namedHover,
  check: namedHover,
  word: namedHover,
  spec: namedHover,
  port: namedHover,
  recheck: namedHover,
  trial: namedHover,
  row: namedHover,
  want: namedHover,
  file: namedHover,
};

/**
 * Undefined where there is nothing, or nothing known. `files`: those of `filesWanted`, where somebody read them.
 */
export function hoverAt(
  snapshot: Snapshot,
  { line, character }: Position,
  units: UnitChoice,
  files?: Files,
): Hover | undefined {
  const reading = lineStateAt(snapshot, line);
  if (!reading) return undefined;
  const question = { snapshot, line, column: character, reading, units, ...(files && { files }) };
  const answer = meantHover(question) ?? TELLERS[reading.entry.kind]?.(question);
  if (!answer) return undefined;
  const text = reading.entry.isVoid ? blocks([VOID, answer.text]) : answer.text;
  return { range: onLine(line, answer.span), text };
}

/** Paths of the files that a hover at a line needs, as the notebook writes them. */
export function filesWanted(snapshot: Snapshot, line: number): readonly string[] {
  const reading = lineStateAt(snapshot, line);
  const isLog = reading?.entry.kind === 'file' && reading.entry.word === 'log';
  return isLog ? logsWanted({ state: reading.after, snapshot, line }, 'log') : [];
}
