/** What a line looks up beyond what is carried to it: the end of another day, another notebook, a file. */
import { once } from '../../memo.ts';
import type { LookUp, LookUpResult } from '../state/lookup.ts';
import type { State } from '../state/state.ts';
import type { Page } from './page.ts';

/**
 * By a path as the notebook writes it: of a notebook, the state at its end; of any other file, that it is missing.
 * Undefined where nobody looked, and of a file that is there.
 */
export type Shared = (path: string, of: 'notebook' | 'file') => LookUpResult;

type Ends = readonly Pick<Page, 'after'>[];

/** Before the page of that number; of all pages where none is given. */
export function lookUpIn(pages: Ends, shared: Shared, end = Number.POSITIVE_INFINITY): LookUp {
  return (question) =>
    question.of === 'day' ? endOfDay(pages, question, end) : shared(question.path, question.of);
}

/** What a line of the page may look up. */
export const lookUpAbove = (
  { pages, shared }: { readonly pages: Ends; readonly shared: Shared },
  page: number,
): LookUp => lookUpIn(pages, shared, page);

interface Asked {
  readonly date: string;
  readonly asking: { readonly line: number } | undefined;
}

/** Of the last session of that date before `end` that is not the line's own. */
function endOfDay(pages: Ends, { date, asking }: Asked, end: number): State | undefined {
  const sessions = daysOf(pages).get(date) ?? [];
  for (let i = lastBefore(sessions, end); i >= 0; i--) {
    const { line, page } = sessions[i] as Session;
    if (line !== asking?.line) return pages[page]?.after;
  }
  return undefined;
}

interface Session {
  /** Its head. */
  readonly line: number;
  /** Its last page, by its number. */
  readonly page: number;
}

interface Days {
  readonly byDate: Map<string, Session[]>;
  /** Pages that are in it. */
  pages: number;
}

const daysSoFar = once((_: Ends): Days => ({ byDate: new Map(), pages: 0 }));

/** By date, in their order; goes on from where it was as pages are read. */
function daysOf(pages: Ends): ReadonlyMap<string, readonly Session[]> {
  const days = daysSoFar(pages);
  if (days.pages === pages.length) return days.byDate;
  for (const { after } of pages.slice(days.pages)) {
    addTo(days.byDate, after, days.pages);
    days.pages++;
  }
  return days.byDate;
}

function addTo(days: Map<string, Session[]>, { session }: State, page: number): void {
  if (session?.date === undefined) return;
  const sessions = days.get(session.date) ?? [];
  const { line } = session.by.ref;
  if (sessions.at(-1)?.line === line) sessions.pop();
  sessions.push({ line, page });
  days.set(session.date, sessions);
}

/** By halving. */
function lastBefore(sessions: readonly Session[], end: number): number {
  let [low, high] = [-1, sessions.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((sessions[middle] as Session).page < end) low = middle;
    else high = middle - 1;
  }
  return low;
}
