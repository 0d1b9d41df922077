/** A notebook read with other texts in the place of its lines, without making another notebook of it. */
import { EMPTY_STATE } from '../state/state.ts';
import { lookUpAbove, type Shared } from './look-up.ts';
import { type LineState, lineStates, type Page } from './page.ts';
import type { Snapshot } from './snapshot.ts';

/**
 * The lines of each page from `first` on as they would be read with other texts in their places, a page at a time; no
 * line may come or go. The pages above stay as they are.
 */
export function* readAs(
  { pages }: Snapshot,
  first: number,
  linesAt: (page: number) => readonly string[],
  shared: Shared,
): Generator<readonly LineState[]> {
  const above: Pick<Page, 'after'>[] = pages.slice(0, first);
  const lookUp = lookUpAbove({ pages: above, shared }, Number.POSITIVE_INFINITY);
  let state = above.at(-1)?.after ?? EMPTY_STATE;
  for (let index = first; index < pages.length; index++) {
    const { id, lineIds } = pages[index] as Page;
    const lines = linesAt(index);
    const read = lineStates({ id, text: lines.join(''), lines, lineIds }, state, lookUp);
    state = read.at(-1)?.after ?? state;
    above.push({ after: state });
    yield read;
  }
}
