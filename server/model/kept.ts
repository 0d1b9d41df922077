/** Questions about the whole notebook, asked page by page, so that after a keystroke only what was read again is asked again. */
import { pageReadings } from './locate.ts';
import type { Page, Reading } from './page.ts';
import type { Snapshot } from './snapshot.ts';
import type { Steps } from './steps.ts';

type Question = (readings: readonly Reading[]) => readonly unknown[];

/** All questions there are, as the files that ask them are loaded. Reading a page costs far more than asking it. */
const QUESTIONS: Question[] = [];
/** By page, in the order of the questions; kept as long as the page itself. */
const answers = new WeakMap<Page, readonly (readonly unknown[])[]>();

/** Keeps the answer of each page as long as the page itself is kept. `ask` depends on the page's readings alone. */
export function keptByPage<T>(
  ask: (readings: readonly Reading[]) => readonly T[],
): (snapshot: Snapshot, page: number) => readonly T[] {
  const question = QUESTIONS.push(ask) - 1;
  return (snapshot, index) => answersOn(snapshot, index)[question] as readonly T[];
}

/** Asks every page, a page a step: what is asked of the whole notebook afterwards need read none of it. */
export function* readingAhead(snapshot: Snapshot): Steps<void> {
  for (let page = 0; page < snapshot.pages.length; page++) {
    answersOn(snapshot, page);
    yield;
  }
}

/** A page is read once for all questions. */
function answersOn(snapshot: Snapshot, index: number): readonly (readonly unknown[])[] {
  const page = snapshot.pages[index] as Page;
  const known = answers.get(page);
  if (known && known.length === QUESTIONS.length) return known;
  const readings = pageReadings(snapshot, index);
  const fresh = QUESTIONS.map((ask) => ask(readings));
  answers.set(page, fresh);
  return fresh;
}

/** The answers of all pages, in order. */
export function ofAllPages<T>(
  snapshot: Snapshot,
  on: (snapshot: Snapshot, page: number) => readonly T[],
): readonly T[] {
  return snapshot.pages.flatMap((_, page) => on(snapshot, page));
}
