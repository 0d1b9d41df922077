/** Memo per page: each registered query runs once a page, and again only for pages that were re-read. */

import { once } from '../../memo.ts';
import type { Interruptible } from './interruptible.ts';
import { pageLines } from './locate.ts';
import type { LineState, Page } from './page.ts';
import type { Snapshot } from './snapshot.ts';

type Question = (readings: readonly LineState[]) => readonly unknown[];

type OnPage<T> = (snapshot: Snapshot, page: number) => readonly T[];

/** Registry, filled when the modules that define queries are loaded; a page is read once and all of them are run on it. */
const QUESTIONS: Question[] = [];
/** Registers a query; its result lives as long as the page. `ask` must depend on the page's lines alone. */
export function keptByPage<T>(ask: (readings: readonly LineState[]) => readonly T[]): OnPage<T> {
  const question = QUESTIONS.push(ask) - 1;
  return (snapshot, index) => answersOn(snapshot, index)[question] as readonly T[];
}

/** Runs the queries on every page, one page per step, so that later whole-notebook queries read nothing. */
export function* preparePages(snapshot: Snapshot): Interruptible<void> {
  for (let page = 0; page < snapshot.pages.length; page++) {
    answersOn(snapshot, page);
    yield;
  }
}

/** Results by page, in the order of the registry; the page is read once for all of them, and they live as long as it. */
const answersOnPage = once((_: Page, snapshot: Snapshot, index: number): readonly (readonly unknown[])[] => {
  const lines = pageLines(snapshot, index);
  return QUESTIONS.map((ask) => ask(lines));
});

const answersOn = (snapshot: Snapshot, index: number) =>
  answersOnPage(snapshot.pages[index] as Page, snapshot, index);

/** Results of all pages, in order. */
export const ofAllPages = <T>(snapshot: Snapshot, on: OnPage<T>): readonly T[] =>
  onPages(snapshot, { from: 0, to: snapshot.pages.length }, on);

/** Results of the pages from one to before another, in order. */
export const onPages = <T>(
  snapshot: Snapshot,
  { from, to }: { readonly from: number; readonly to: number },
  on: OnPage<T>,
): readonly T[] => snapshot.pages.slice(from, to).flatMap((_, i) => on(snapshot, from + i));
