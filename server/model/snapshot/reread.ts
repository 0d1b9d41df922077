/** A notebook read with other texts in the place of its lines, without making another notebook of it. */
import { NOTHING_CARRIED } from '../state/state.ts';
import { type Page, type Reading, readings } from './page.ts';
import { lookUpAbove, type Shared, type Snapshot } from './snapshot.ts';

/**
 * The lines of each page from `first` on as they would be read with other texts in their places, a page at a time; no
 * line may come or go. The pages above stay as they are.
 */
export function* readAs(
  { pages }: Snapshot,
  first: number,
  linesAt: (page: number) => readonly string[],
  shared: Shared,
): Generator<readonly Reading[]> {
  const above: Pick<Page, 'after'>[] = pages.slice(0, first);
  const lookUp = lookUpAbove({ pages: above, shared }, Number.POSITIVE_INFINITY);
  let carried = above.at(-1)?.after ?? NOTHING_CARRIED;
  for (let index = first; index < pages.length; index++) {
    const { id, lineIds } = pages[index] as Page;
    const lines = linesAt(index);
    const read = readings({ id, text: lines.join(''), lines, lineIds }, carried, lookUp);
    carried = read.at(-1)?.after ?? carried;
    above.push({ after: carried });
    yield read;
  }
}
