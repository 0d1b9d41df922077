/**
 * Snapshot of a notebook: `open` reads a text, `edit` gives the next snapshot and re-reads only what the change can
 * affect. Immutable; every answer to editor and terminal is computed from one.
 */
import {
  comparePositions,
  cutLines,
  endsInBreak,
  type Position,
  type Range,
  replaceIn,
} from '../../../grammar/index.ts';
import { EMPTY_STATE, type State } from '../state/state.ts';
import type { Check } from './finding.ts';
import { EMPTY_LIST, type FindingList, findingListAfter } from './finding-list.ts';
import { type Interruptible, runToEnd } from './interruptible.ts';
import { lookUpIn, type Shared } from './look-up.ts';
import { type Lines, LONGEST_PAGE, type Page, partIntoPages, readPage, stillHolds } from './page.ts';
import { numberedPages, readPages } from './read-pages.ts';

export interface Snapshot extends FindingList {
  /** How many pages looked up other pages or notebooks; usually none, and then nothing below an edit need be checked. */
  readonly asking: number;
  readonly check: Check;
  readonly shared: Shared;
  /** Lines of a page when a text is opened; typing may grow it to twice as many. No answer depends on it. */
  readonly longestPage: number;
  /** The next unused id of a page or a line. */
  readonly nextId: number;
}

const NONE_SHARED: Shared = () => undefined;

/** A piece of text put in the place of a range, as in the protocol. */
export interface Change {
  readonly range: Range;
  readonly text: string;
}

/** Reads a whole text. Any text has an answer; nothing throws. `longestPage` is at least 1. */
export const open = (
  text: string,
  check: Check,
  shared: Shared = NONE_SHARED,
  longestPage = LONGEST_PAGE,
): Snapshot => runToEnd(opening(text, check, shared, longestPage));

/** As `open`, a page a step. */
export function* opening(
  text: string,
  check: Check,
  shared: Shared,
  longestPage = LONGEST_PAGE,
): Interruptible<Snapshot> {
  const lines = cutLines(text);
  const pages: Page[] = [];
  const pieces = numberedPages(lines, longestPage);
  for (const page of readPages(pieces, EMPTY_STATE, check, lookUpIn(pages, shared))) {
    pages.push(page);
    yield;
  }
  const nextId = lines.length + 1;
  const starts = startsOf([0], pages);
  const findings = findingListAfter(EMPTY_LIST, { pages, starts });
  return { pages, starts, findings, asking: askingIn(pages), check, shared, longestPage, nextId };
}

/** The notebook after a change: the same answers as `open` of the changed text. Positions outside the text mean its end. */
export function edit(snapshot: Snapshot, change: Change): Snapshot {
  const { pages } = snapshot;
  const range = clamp(snapshot, change.range);
  const first = firstTouched(snapshot, range.start);
  const last = pageAt(snapshot, range.end.line);
  const ids = counter(snapshot.nextId);
  const rewritten = rewrite(snapshot, { range, text: change.text }, first, last, ids);
  const next: Page[] = pages.slice(0, first);
  const lookUp = lookUpIn(next, snapshot.shared);
  const before = next.at(-1)?.after ?? EMPTY_STATE;
  for (const page of readPages(rewritten, before, snapshot.check, lookUp)) next.push(page);
  const starts = movedStarts(snapshot, first, last, next.slice(first));
  const asking = snapshot.asking - askingIn(pages.slice(first, last + 1)) + askingIn(next.slice(first));
  const read = carryOn({ ...snapshot, asking }, next, last + 1, next.at(-1)?.after ?? EMPTY_STATE);
  return {
    ...snapshot,
    ...read,
    starts,
    findings: findingListAfter(snapshot, { ...read, starts }),
    nextId: ids(),
  };
}

/** The notebook after another one it uses has changed: only the pages that asked for it, and what follows, are read again. */
export function refresh(snapshot: Snapshot, shared: Shared): Snapshot {
  const renewed = { ...snapshot, shared };
  const read = carryOn(renewed, [], 0, EMPTY_STATE);
  return { ...renewed, ...read, findings: findingListAfter(snapshot, { ...renewed, ...read }) };
}

/** Pages below are read again as far as what is carried to them, or what they look up, has changed; the rest are kept as they are. */
function carryOn(
  snapshot: Snapshot,
  next: Page[],
  from: number,
  carriedIn: State,
): Pick<Snapshot, 'pages' | 'asking'> {
  const lookUp = lookUpIn(next, snapshot.shared);
  let { asking } = snapshot;
  let state = carriedIn;
  let changed = true;
  for (let i = from; i < snapshot.pages.length; i++) {
    const page = snapshot.pages[i] as Page;
    const holds: boolean = changed || page.asked.length > 0 ? stillHolds(page, state, lookUp) : true;
    if (holds && asking === 0) return { pages: next.concat(snapshot.pages.slice(i)), asking };
    const after = holds ? page : readPage(linesOf(page), state, snapshot.check, lookUp);
    asking += askingIn([after]) - askingIn([page]);
    next.push(after);
    changed = !holds;
    state = after.after;
  }
  return { pages: next, asking };
}

const askingIn = (pages: readonly Page[]): number => pages.filter((page) => page.asked.length > 0).length;

/** The touched pages' lines with the change in them, split into pages anew. Unchanged lines keep their ids. */
function rewrite(
  snapshot: Snapshot,
  change: Change,
  first: number,
  last: number,
  ids: () => number,
): readonly Lines[] {
  const { longestPage } = snapshot;
  const touched = snapshot.pages.slice(first, last + 1);
  const offset = snapshot.starts[first] as number;
  const lines = touched.flatMap((page) => linesOf(page).lines);
  const oldIds = touched.flatMap((page) => page.lineIds);
  const range = { start: up(change.range.start, offset), end: up(change.range.end, offset) };
  const text = replaceIn(lines, range, change.text);
  const isLast = last === snapshot.pages.length - 1;
  const after = isLast ? cutLines(text) : withoutLast(cutLines(text));
  const lineIds = carriedIds(oldIds, after.length, { range, text: change.text }, ids);
  return renumber(partIntoPages(after, longestPage, 2 * longestPage), lineIds, touched, ids);
}

function renumber(
  pieces: readonly (readonly string[])[],
  lineIds: readonly number[],
  touched: readonly Page[],
  ids: () => number,
): Lines[] {
  let at = 0;
  return pieces.map((piece, i) => {
    const page = {
      id: touched[i]?.id ?? ids(),
      text: piece.join(''),
      lines: piece,
      lineIds: lineIds.slice(at, at + piece.length),
    };
    at += piece.length;
    return page;
  });
}

/**
 * Lines above and below the change keep their ids. So does the line it begins in, or, where whole lines are put in or
 * taken out, the line that comes after them.
 */
function carriedIds(old: readonly number[], count: number, change: Change, ids: () => number): number[] {
  const { start, end } = change.range;
  const begun = isWholeLines(change) ? 0 : 1;
  const above = Math.min(start.line + begun, count);
  const below = Math.max(0, Math.min(old.length - end.line - begun, count - above));
  const fresh = Array.from({ length: count - above - below }, () => ids());
  return [...old.slice(0, above), ...fresh, ...old.slice(old.length - below)];
}

const isWholeLines = ({ range: { start, end }, text }: Change): boolean =>
  start.character === 0 && end.character === 0 && (text === '' || endsInBreak(text));

const up = (position: Position, lines: number): Position => ({
  line: position.line - lines,
  character: position.character,
});

/** A change right after a lone `\r` may make it one break with the text that comes, so the page before is read too. */
function firstTouched(snapshot: Snapshot, start: Position): number {
  const at = pageAt(snapshot, start.line);
  const opens = start.character === 0 && start.line === snapshot.starts[at];
  return opens && at > 0 && snapshot.pages[at - 1]?.text.endsWith('\r') ? at - 1 : at;
}

/** Inside the text and in its order, whichever way round the range was given. */
function clamp(snapshot: Snapshot, range: Range): Range {
  const end = snapshot.starts.at(-1) as number;
  const inside = (position: Position): Position => {
    if (position.line < 0) return { line: 0, character: 0 };
    return position.line < end ? position : { line: end - 1, character: Number.MAX_SAFE_INTEGER };
  };
  const [start, stop] = [inside(range.start), inside(range.end)];
  return comparePositions(start, stop) <= 0 ? { start, end: stop } : { start: stop, end: start };
}

/** The page that holds a line, by halving. */
export function pageAt(snapshot: Snapshot, line: number): number {
  let low = 0;
  let high = snapshot.pages.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((snapshot.starts[middle] as number) <= line) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Text that goes on below ends in a break: the empty line after it is not its own. */
const withoutLast = (lines: readonly string[]): readonly string[] => lines.slice(0, -1);

export const linesOf = (page: Page): Lines => ({
  id: page.id,
  text: page.text,
  lines: cutLines(page.text).slice(0, page.lineIds.length),
  lineIds: page.lineIds,
});

/** `starts` up to where the pages begin, and on over their lines. */
function startsOf(starts: readonly number[], pages: readonly Page[]): number[] {
  const all = [...starts];
  for (const page of pages) all.push((all.at(-1) as number) + page.lineIds.length);
  return all;
}

/** After new pages in the place of those from `first` to `last`. Mostly no line is added or taken, and all stay where they are. */
function movedStarts(
  { starts }: Snapshot,
  first: number,
  last: number,
  pages: readonly Page[],
): readonly number[] {
  const upTo = startsOf(starts.slice(0, first + 1), pages);
  if (upTo.length === last + 2 && upTo.every((start, i) => start === starts[i])) return starts;
  const moved = (upTo.at(-1) as number) - (starts[last + 1] as number);
  return upTo.concat(starts.slice(last + 2).map((start) => start + moved));
}

function counter(from: number): () => number {
  let next = from;
  return () => next++;
}
