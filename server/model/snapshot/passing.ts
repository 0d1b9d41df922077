/**
 * Streams the findings of a text without building a snapshot: each page is dropped as soon as it has been read, so the
 * largest notebook takes little more memory than its text. Finds what `open` would.
 */
import { cutLines, withoutBreak } from '../../../grammar/index.ts';
import type { Ref } from '../entry/entry.ts';
import type { LookUp } from '../state/lookup.ts';
import { EMPTY_STATE, type State } from '../state/state.ts';
import type { Check, LocatedFinding } from './finding.ts';
import { partIntoPages, readPage } from './page.ts';
import type { Shared } from './snapshot.ts';

/** A text to be read once. */
export interface Passing {
  /** In the order of lines; made as they are asked for. */
  readonly findings: Iterable<LocatedFinding>;
  /** Without its break; empty outside the text. */
  readonly lineText: (line: number) => string;
  /** The line of a reference, from zero; undefined for what this text does not say. */
  readonly lineOf: (ref: Ref) => number | undefined;
}

export function inPassing(text: string, check: Check, shared: Shared): Passing {
  const lines = cutLines(text);
  return {
    findings: { [Symbol.iterator]: () => findings(lines, check, shared) },
    lineText: (line) => withoutBreak(lines[line] ?? ''),
    lineOf: ({ line }) => (line > 0 ? line - 1 : undefined),
  };
}

/** Ids are line numbers counted from one: nothing is edited here, and zero is no line of this text. */
function* findings(lines: readonly string[], check: Check, shared: Shared): Generator<LocatedFinding> {
  const days = daysWanted(lines);
  const lookUp = lookUpAmong(days, shared);
  let state = EMPTY_STATE;
  let first = 0;
  for (const piece of partIntoPages(lines)) {
    const lineIds = piece.map((_, i) => first + i + 1);
    const page = readPage({ id: first + 1, text: '', lines: piece, lineIds }, state, check, lookUp);
    for (const { line, ...finding } of page.findings) yield { ...finding, at: first + line };
    state = page.after;
    remember(days, state);
    first += piece.length;
  }
}

/** The states at the ends of the sessions of days that may be gone back to, one a session; no other is kept. */
type Days = ReadonlyMap<string, State[]>;

/** Every date on a line that may go back. */
function daysWanted(lines: readonly string[]): Days {
  const days = new Map<string, State[]>();
  for (const line of lines)
    if (/revert/i.test(line)) for (const [date] of line.matchAll(/\d{4}-\d\d-\d\d/g)) days.set(date, []);
  return days;
}

function remember(days: Days, state: State): void {
  const { session } = state;
  const states = days.get(session?.date ?? '');
  if (!session || !states) return;
  if (states.at(-1)?.session?.by.ref.line === session.by.ref.line) states.pop();
  states.push(state);
}

const lookUpAmong =
  (days: Days, shared: Shared): LookUp =>
  (question) => {
    if (question.of !== 'day') return shared(question.path, question.of);
    const { date, asking } = question;
    return days.get(date)?.findLast(({ session }) => session?.by.ref.line !== asking?.line);
  };
