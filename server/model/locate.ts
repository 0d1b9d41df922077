/** From ids and lines to what stands there, and back. */
import { type Line, parseLine, type Span, withoutBreak } from '../../grammar/index.ts';
import type { Finding } from './findings.ts';
import type { Ref } from './notebook.ts';
import { type Page, type Reading, readings } from './page.ts';
import { linesOf, lookUpAbove, pageAt, type Snapshot } from './snapshot.ts';

export const lineCount = (snapshot: Snapshot): number => snapshot.starts.at(-1) as number;

/** The line of a reference, from zero; undefined where that line is gone. */
export function lineOf(snapshot: Snapshot, ref: Ref): number | undefined {
  const page = pageIndexes(snapshot).get(ref.page);
  if (page === undefined) return undefined;
  const line = (snapshot.pages[page] as Page).lineIds.indexOf(ref.line);
  return line < 0 ? undefined : (snapshot.starts[page] as number) + line;
}

const indexesOf = new WeakMap<Snapshot, ReadonlyMap<number, number>>();

/** Made once for a snapshot, and only for one that is asked. */
function pageIndexes(snapshot: Snapshot): ReadonlyMap<number, number> {
  let indexes = indexesOf.get(snapshot);
  if (!indexes) {
    indexes = new Map(snapshot.pages.map((page, i) => [page.id, i]));
    indexesOf.set(snapshot, indexes);
  }
  return indexes;
}

/** The lines of a page as read. They are not kept: a notebook of 100,000 lines would not fit. */
export function pageReadings(snapshot: Snapshot, index: number): readonly Reading[] {
  const page = snapshot.pages[index] as Page;
  return [...readings(linesOf(page), page.before, lookUpAbove(snapshot, index))];
}

/** One line as read; undefined outside the text. */
export function readingAt(snapshot: Snapshot, line: number): Reading | undefined {
  if (line < 0 || line >= lineCount(snapshot)) return undefined;
  const page = pageAt(snapshot, line);
  return pageReadings(snapshot, page)[line - (snapshot.starts[page] as number)];
}

/** Every line as read, with its number, from one line to before another. */
export function* readingsBetween(
  snapshot: Snapshot,
  from = 0,
  to = lineCount(snapshot),
): Generator<Reading & { readonly at: number }> {
  if (from >= to) return;
  for (let page = pageAt(snapshot, from); page < snapshot.pages.length; page++) {
    const start = snapshot.starts[page] as number;
    if (start >= to) return;
    for (const [i, reading] of pageReadings(snapshot, page).entries()) {
      if (start + i >= from && start + i < to) yield { ...reading, at: start + i };
    }
  }
}

/** The text of a line without its break, parsed; an empty line outside the text. */
export const parsedLine = (snapshot: Snapshot, line: number): Line =>
  parseLine(withoutBreak(rawLine(snapshot, line)));

/** The text of a line with its break; empty outside the text. */
export function rawLine(snapshot: Snapshot, line: number): string {
  const page = pageAt(snapshot, line);
  const lines = linesOf(snapshot.pages[page] as Page).lines;
  return lines[line - (snapshot.starts[page] as number)] ?? '';
}

export interface LocatedFinding extends Finding {
  /** Of the whole text, from zero. */
  readonly at: number;
}

/** All findings, in order of lines. */
export function* findingsIn(
  snapshot: Snapshot,
  from = 0,
  to = lineCount(snapshot),
): Generator<LocatedFinding> {
  if (from >= to) return;
  for (let page = pageAt(snapshot, from); page < snapshot.pages.length; page++) {
    const start = snapshot.starts[page] as number;
    if (start >= to) return;
    for (const finding of (snapshot.pages[page] as Page).findings) {
      const at = start + finding.line;
      if (at >= from && at < to) yield located(finding, at);
    }
  }
}

/** Spelled out: a copy by spread costs ten times as much, and there may be thousands. */
function located({ code, severity, span, message, related, fixes }: Finding, at: number): LocatedFinding {
  return { code, severity, span, message, related, fixes, at };
}

/** The whole text, as opened and edited. */
export const textOf = (snapshot: Snapshot): string => snapshot.pages.map((page) => page.text).join('');

export const touches = (span: Span, column: number): boolean => span.from <= column && column <= span.to;
