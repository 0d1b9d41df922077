/** Locating: from ids to line numbers, pages and texts, and back. */
import { type Line, parseLine, type Span, withoutBreak } from '../../../grammar/index.ts';
import { once } from '../../memo.ts';
import type { Ref } from '../entry/entry.ts';
import type { LocatedFinding } from './finding.ts';
import { firstFrom } from './finding-list.ts';
import { lookUpAbove } from './look-up.ts';
import { type LineState, lineStates, type Page, saidOn } from './page.ts';
import { linesOf, pageAt, type Snapshot } from './snapshot.ts';

/** At least one: an empty text is one empty line. */
export const lineCount = (snapshot: Snapshot): number => snapshot.starts.at(-1) as number;

/** The line of a reference, from zero; undefined where that line is gone. */
export function lineOf(snapshot: Snapshot, ref: Ref): number | undefined {
  const page = pageIndexes(snapshot.starts, snapshot.pages).get(ref.page);
  if (page === undefined) return undefined;
  const line = (snapshot.pages[page] as Page).lineIds.indexOf(ref.line);
  return line < 0 ? undefined : (snapshot.starts[page] as number) + line;
}

/** Page numbers by id. Kept by the list of first lines: it stays the same one as long as no line is added or removed, and so do the ids. */
const pageIndexes = once(
  (_: Snapshot['starts'], pages: readonly Page[]): ReadonlyMap<number, number> =>
    new Map(pages.map((page, i) => [page.id, i])),
);

/** Lines of a page with their states, read anew: stored for 100,000 lines they would not fit in memory. */
export function pageLines(snapshot: Snapshot, index: number): readonly LineState[] {
  const page = snapshot.pages[index] as Page;
  return lineStates(linesOf(page), page.before, lookUpAbove(snapshot, index));
}

/** One line as read; undefined outside the text. */
export function lineStateAt(snapshot: Snapshot, line: number): LineState | undefined {
  if (line < 0 || line >= lineCount(snapshot)) return undefined;
  const page = pageAt(snapshot, line);
  return pageLines(snapshot, page)[line - (snapshot.starts[page] as number)];
}

/** Every line as read, with its number, from one line to before another. */
export function* linesBetween(
  snapshot: Snapshot,
  from = 0,
  to = lineCount(snapshot),
): Generator<LineState & { readonly at: number }> {
  if (from >= to) return;
  for (let page = pageAt(snapshot, from); page < snapshot.pages.length; page++) {
    const start = snapshot.starts[page] as number;
    if (start >= to) return;
    for (const [i, reading] of pageLines(snapshot, page).entries()) {
      if (start + i >= from && start + i < to) yield { ...reading, at: start + i };
    }
  }
}

/** What one line says, as `saidBy`. */
export function saidAt(snapshot: Snapshot, line: number): readonly LineState[] {
  const reading = lineStateAt(snapshot, line);
  return reading ? saidOn(reading) : [];
}

/** What the lines from one to before another say, one thing after the other, each with the number of its line. */
export function* saidBetween(
  snapshot: Snapshot,
  from = 0,
  to = lineCount(snapshot),
): Generator<LineState & { readonly at: number }> {
  for (const reading of linesBetween(snapshot, from, to)) yield* saidOn(reading);
}

/** The text of a line without its break, parsed; an empty line outside the text. */
export const parsedLine = (snapshot: Snapshot, line: number): Line => parseLine(lineText(snapshot, line));

/** The text of a line without its break; empty outside the text. */
export const lineText = (snapshot: Snapshot, line: number): string => withoutBreak(rawLine(snapshot, line));

/** The text of a line with its break; empty outside the text. */
export function rawLine(snapshot: Snapshot, line: number): string {
  const page = pageAt(snapshot, line);
  const lines = linesOf(snapshot.pages[page] as Page).lines;
  return lines[line - (snapshot.starts[page] as number)] ?? '';
}

/** The findings from one line to before another, in order of lines. */
export const findingsIn = ({ findings }: Snapshot, from: number, to: number): readonly LocatedFinding[] =>
  findings.slice(firstFrom(findings, from), firstFrom(findings, to));

/** The whole text, as opened and edited. */
export const textOf = (snapshot: Snapshot): string => snapshot.pages.map((page) => page.text).join('');

/** Both ends included: a cursor is between two characters. */
export const touches = (span: Span, column: number): boolean => span.from <= column && column <= span.to;
