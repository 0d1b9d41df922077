/** Questions about the whole notebook, asked page by page, so that after a keystroke only what was read again is asked again. */

import { once } from '../../memo.ts';
import type { Interruptible } from './interruptible.ts';
import { pageLines } from './locate.ts';
import type { LineState, Page } from './page.ts';
import type { Snapshot } from './snapshot.ts';

type Question = (readings: readonly LineState[]) => readonly unknown[];

type OnPage<T> = (snapshot: Snapshot, page: number) => readonly T[];

/** All questions there are, as the files that ask them are loaded. Reading a page costs far more than asking it. */
const QUESTIONS: Question[] = [];
/** Keeps the answer of each page as long as the page itself is kept. `ask` depends on the page's readings alone. */
export function keptByPage<T>(ask: (readings: readonly LineState[]) => readonly T[]): OnPage<T> {
  const question = QUESTIONS.push(ask) - 1;
  return (snapshot, index) => answersOn(snapshot, index)[question] as readonly T[];
}

/** Asks every page, a page a step: what is asked of the whole notebook afterwards need read none of it. */
export function* preparePages(snapshot: Snapshot): Interruptible<void> {
  for (let page = 0; page < snapshot.pages.length; page++) {
    answersOn(snapshot, page);
    yield;
  }
}

/** In the order of the questions, kept as long as the page itself. It is read once for all of them. */
const answersOnPage = once((_: Page, snapshot: Snapshot, index: number): readonly (readonly unknown[])[] => {
  const lines = pageLines(snapshot, index);
  return QUESTIONS.map((ask) => ask(lines));
});

const answersOn = (snapshot: Snapshot, index: number) =>
  answersOnPage(snapshot.pages[index] as Page, snapshot, index);

/** The answers of all pages, in order. */
export const ofAllPages = <T>(snapshot: Snapshot, on: OnPage<T>): readonly T[] =>
  onPages(snapshot, { from: 0, to: snapshot.pages.length }, on);

/** The answers of the pages from one to before another, in order. */
export const onPages = <T>(
  snapshot: Snapshot,
  { from, to }: { readonly from: number; readonly to: number },
  on: OnPage<T>,
): readonly T[] => snapshot.pages.slice(from, to).flatMap((_, i) => on(snapshot, from + i));
