/**
 * Page: one section of the notebook, or a piece of a long one. Its lines are read in order from the state before it;
 * of the result a page stores only what later pages and the answers need.
 */
import { withoutBreak } from '../../../grammar/index.ts';
import type { Entry } from '../entry/entry.ts';
import { mayBeDated } from '../spoken/dated-line.ts';
import { entryOfLine } from '../spoken/line-entry.ts';
import { applyEntry, originIn } from '../state/apply-entry.ts';
import { same } from '../state/immutable.ts';
import type { LookUp, LookUpResult, Question } from '../state/lookup.ts';
import type { State } from '../state/state.ts';
import type { Check, Context, Finding } from './finding.ts';

export interface Page {
  readonly id: number;
  /** Raw lines, joined: with their breaks. */
  readonly text: string;
  readonly lineIds: readonly number[];
  readonly before: State;
  readonly after: State;
  /** By line of the page, only lines that have any. */
  readonly findings: readonly LineFinding[];
  /** Look-ups its lines made in other pages and notebooks, with their results. */
  readonly asked: readonly AskedQuestion[];
}

interface AskedQuestion {
  readonly question: Question;
  readonly found: LookUpResult;
}

export interface LineFinding extends Finding {
  /** Line of the page, from zero. */
  readonly line: number;
}

/** One line: its entry, and the state before and after it. */
export interface LineState extends Context {
  readonly entry: Entry;
}

/** A page starts at a section's word; a section longer than this is split, so that a keystroke costs no more. */
export const LONGEST_PAGE = 100;

/** Whatever the parser takes for the head of a section, and a few lines more, which does no harm. */
const SECTION_WORD =
  /^\s*(?:session|notebook|engine|vehicle|parts|limits|targets|specs|ports|words)(?![\p{L}\p{N}])/iu;
const SECTION_LETTERS = 'SNEVPLTWsnevpltw';

/** Quick test by first letter, at a tenth of the pattern's cost. */
function startsPage(line: string): boolean {
  let at = 0;
  while (line.charCodeAt(at) === 32) at++;
  const first = line.charAt(at);
  return (
    ((first > '~' || first < ' ' || SECTION_LETTERS.includes(first)) && SECTION_WORD.test(line)) ||
    mayBeDated(line)
  );
}

/**
 * Splits raw lines into pages. Page borders never change an answer. A page may grow to
 * `most` lines before it is split into pieces of `longest`, so that typing does not move a line to another page at every
 * new line.
 */
export function partIntoPages(
  lines: readonly string[],
  longest = LONGEST_PAGE,
  most = longest,
): (readonly string[])[] {
  const pages: string[][] = [];
  for (const line of lines) {
    if (pages.length === 0 || startsPage(line)) pages.push([]);
    pages.at(-1)?.push(line);
  }
  return pages.flatMap((page) => (page.length > most ? inPieces(page, longest) : [page]));
}

function inPieces(lines: readonly string[], longest: number): (readonly string[])[] {
  const count = Math.ceil(lines.length / longest);
  return Array.from({ length: count }, (_, i) => lines.slice(i * longest, (i + 1) * longest));
}

export interface Lines {
  readonly id: number;
  readonly text: string;
  readonly lines: readonly string[];
  readonly lineIds: readonly number[];
}

/** Reads the lines of a page. `lookUp` answers for the pages above. */
export function readPage(from: Lines, before: State, check: Check, lookUp: LookUp): Page {
  const findings: LineFinding[] = [];
  const asked: AskedQuestion[] = [];
  const ask: LookUp = (question) => {
    const found = lookUp(question);
    asked.push({ question, found });
    return found;
  };
  // First all are read, then all are checked: in turns, each would push the other's code and data out of the processor's caches.
  const read = lineStates(from, before, ask);
  for (const [line, reading] of read.entries())
    for (const finding of check(reading.entry, reading)) findings.push({ ...finding, line });
  const after = read.at(-1)?.after ?? before;
  return { id: from.id, text: from.text, lineIds: from.lineIds, before, after, findings, asked };
}

/** The lines of a page as read. */
export function lineStates(from: Lines, before: State, lookUp: LookUp): readonly LineState[] {
  let state = before;
  return from.lines.map((_, line) => {
    const reading = readLine(from, line, state, lookUp);
    state = reading.after;
    return reading;
  });
}

function readLine({ id, lines, lineIds }: Lines, line: number, before: State, lookUp: LookUp): LineState {
  const entry = entryOfLine(withoutBreak(lines[line] as string), before);
  const ref = { page: id, line: lineIds[line] as number };
  const where = originIn(before, headIn(entry), { ref, date: undefined });
  const after = applyEntry(before, entry, where, lookUp);
  return { entry, before, after, where, lookUp };
}

/** What a spoken line says that may be a day. */
const headIn = (entry: Entry): Entry => (entry.kind === 'spoken' ? (entry.entries[0] ?? entry) : entry);

/** What lines say, one thing after the other: of a line of plain speech all that it means, of one that does not count nothing. */
export const saidBy = (readings: readonly LineState[]): readonly LineState[] =>
  readings.every(({ entry }) => isPlain(entry)) ? readings : readings.flatMap(saidOn);

const isPlain = ({ kind, isVoid }: Entry): boolean => kind !== 'spoken' && kind !== 'asked' && !isVoid;

/** As `saidBy`, of one line. */
export function saidOn<T extends LineState>(reading: T): readonly T[] {
  const { entry, lookUp } = reading;
  if (isPlain(entry)) return [reading];
  if (entry.kind !== 'spoken') return [];
  let { before } = reading;
  return entry.entries.map((each) => {
    const where = originIn(before, each, reading.where);
    const said = { ...reading, entry: each, before, after: applyEntry(before, each, where, lookUp), where };
    before = said.after;
    return said;
  });
}

/** What is carried to a page, without what its first line lets go: the lines of the session that it ends. */
const asLeantOn = ({ text }: Page, before: State): State =>
  before.recentLines.length > 0 && !before.inConflict && /^\s*session\b/i.test(text)
    ? { ...before, recentLines: NO_LINES }
    : before;

const NO_LINES: State['recentLines'] = [];

/** True where reading the page again, from `before`, would give what it gave. */
export function stillHolds(page: Page, before: State, lookUp: LookUp): boolean {
  return (
    same(asLeantOn(page, page.before), asLeantOn(page, before)) &&
    page.asked.every(({ question, found }) => same(found, lookUp(question)))
  );
}
