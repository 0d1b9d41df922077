/** Questions about the whole notebook, asked page by page, so that after a keystroke only what was read again is asked again. */
import { pageReadings } from './locate.ts';
import type { Page, Reading } from './page.ts';
import type { Snapshot } from './snapshot.ts';

/** Keeps the answer of each page as long as the page itself is kept. `ask` depends on the page's readings alone. */
export function keptByPage<T>(
  ask: (readings: readonly Reading[]) => readonly T[],
): (snapshot: Snapshot, page: number) => readonly T[] {
  const answers = new WeakMap<Page, readonly T[]>();
  return (snapshot, index) => {
    const page = snapshot.pages[index] as Page;
    let answer = answers.get(page);
    if (!answer) {
      answer = ask(pageReadings(snapshot, index));
      answers.set(page, answer);
    }
    return answer;
  };
}

/** The answers of all pages, in order. */
export function ofAllPages<T>(
  snapshot: Snapshot,
  on: (snapshot: Snapshot, page: number) => readonly T[],
): readonly T[] {
  return snapshot.pages.flatMap((_, page) => on(snapshot, page));
}
