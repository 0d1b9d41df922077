/** The lines that are being typed, and which of their findings are held back: half a word cannot be read, and needs no finding. */
import { cutLines } from '../../grammar/index.ts';
import type { LocatedFinding } from '../model/snapshot/finding.ts';
import { findingsIn } from '../model/snapshot/locate.ts';
import type { Change, Snapshot } from '../model/snapshot/snapshot.ts';

/** A line that the last change touched, with the codes of the findings it had before that typing began. */
export interface TypedLine {
  /** From zero. */
  readonly at: number;
  readonly had: ReadonlySet<string>;
}

/**
 * The lines that `changes` of one notification leave the cursor on. Each change is of the text as the one before left it.
 * @param isFresh true of a line of a new template, which has shown no findings yet.
 */
export function typedLines(
  before: Snapshot,
  wasTyped: readonly TypedLine[],
  changes: readonly Change[],
  isFresh: (line: number) => boolean = () => false,
): readonly TypedLine[] {
  let typed: readonly TypedLine[] = [];
  for (const { range, text } of changes) {
    const { start, end } = range;
    const added = cutLines(text).length - 1;
    const removed = end.line - start.line;
    const moved = typed.map((line) =>
      line.at > start.line ? { ...line, at: line.at + added - removed } : line,
    );
    const had =
      wasTyped.find(({ at }) => at === start.line)?.had ??
      (isFresh(start.line)
        ? new Set()
        : new Set(findingsIn(before, start.line, start.line + 1).map(({ code }) => code)));
    typed = [...moved, { at: start.line + added, had }];
  }
  return typed;
}

/** True of a finding that is new on a line being typed, and of a code that may wait. */
export function isHeldBack(
  typed: readonly TypedLine[],
  mayWait: (code: string) => boolean,
  { at, code }: LocatedFinding,
): boolean {
  const line = typed.find((line) => line.at === at);
  return line !== undefined && !line.had.has(code) && mayWait(code);
}
