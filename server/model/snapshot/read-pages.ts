/**
 * Reads a text page by page. The caller stores the pages, as a snapshot does, or drops each as soon as it has been read, so
 * that the largest notebook takes little more memory than its text.
 */
import { cutLines, withoutBreak } from '../../../grammar/index.ts';
import type { Ref } from '../entry/entry.ts';
import type { LookUp } from '../state/lookup.ts';
import { EMPTY_STATE, type State } from '../state/state.ts';
import type { Check, LocatedFinding } from './finding.ts';
import { locatedOn } from './finding-list.ts';
import { lookUpIn, type Shared } from './look-up.ts';
import { type Lines, type Page, partIntoPages, readPage } from './page.ts';

/** Each page in order, the state after it carried to the next. Read as they are taken: `lookUp` may look at those before. */
export function* readPages(
  pieces: Iterable<Lines>,
  before: State,
  check: Check,
  lookUp: LookUp,
): Generator<Page> {
  let state = before;
  for (const lines of pieces) {
    const page = readPage(lines, state, check, lookUp);
    yield page;
    state = page.after;
  }
}

/** The pages' worth of lines of a new text. Ids of lines are their numbers from one; a page has that of its first line. */
export function* numberedPages(lines: readonly string[], longestPage?: number): Generator<Lines> {
  let first = 1;
  for (const piece of partIntoPages(lines, longestPage)) {
    const id = first;
    yield { id, text: piece.join(''), lines: piece, lineIds: piece.map((_, i) => id + i) };
    first += piece.length;
  }
}

/** A text that is read once and not kept. */
export interface Stream {
  /** What `open` would find, in the order of lines; made as they are taken. */
  readonly findings: Iterable<LocatedFinding>;
  /** Without its break; empty outside the text. `line`: from zero. */
  readonly lineText: (line: number) => string;
  /** The line of a reference, from zero; undefined for what this text does not say. */
  readonly lineOf: (ref: Ref) => number | undefined;
}

/** Any text has an answer; nothing throws. No page is kept. */
export function streamFindings(text: string, check: Check, shared: Shared): Stream {
  const lines = cutLines(text);
  return {
    findings: { [Symbol.iterator]: () => findingsIn(lines, check, shared) },
    lineText: (line) => withoutBreak(lines[line] ?? ''),
    lineOf: ({ line }) => (line > 0 ? line - 1 : undefined),
  };
}

function* findingsIn(lines: readonly string[], check: Check, shared: Shared): Generator<LocatedFinding> {
  const dates = datesGoneBackTo(lines);
  const ends: Pick<Page, 'after'>[] = [];
  let start = 0;
  for (const page of readPages(numberedPages(lines), EMPTY_STATE, check, lookUpIn(ends, shared))) {
    yield* locatedOn(page, start);
    start += page.lineIds.length;
    if (dates.has(page.after.session?.date ?? '')) keepEnd(ends, page.after);
  }
}

/** Every date on a line that may go back: only the states of those days are kept. */
const datesGoneBackTo = (lines: readonly string[]): ReadonlySet<string> =>
  new Set(
    lines.flatMap((line) =>
      /revert/i.test(line) ? [...line.matchAll(/\d{4}-\d\d-\d\d/g)].map(([date]) => date) : [],
    ),
  );

/** One a session: a long one has several pages, and the last of them holds. */
function keepEnd(ends: Pick<Page, 'after'>[], after: State): void {
  if (ends.at(-1)?.after.session?.by.ref.line === after.session?.by.ref.line) ends.pop();
  ends.push({ after });
}
