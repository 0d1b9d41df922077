/** Cautions for a line or a session. */

import type { Entry } from '../../model/entry/entry.ts';
import { lineStateAt } from '../../model/snapshot/locate.ts';
import { saidBy } from '../../model/snapshot/page.ts';
import { keptByPage, onPages } from '../../model/snapshot/per-page.ts';
import { pagesOfSession } from '../../model/snapshot/section-ranges.ts';
import type { Snapshot } from '../../model/snapshot/snapshot.ts';
import { CAUTIONS, type Caution, cautionsFor } from '../../trade/practice/cautions.ts';

/** Cautions for one line, in the table's order; none for lines that are no work. */
export function cautionsOf(entry: Entry): readonly Caution[] {
  if (entry.kind !== 'setting' && entry.kind !== 'reading') return [];
  const words = entry.statements.flatMap((said) =>
    [...said.words, ...said.conditions.flatMap((condition) => condition.words)].map(({ text }) => text),
  );
  return cautionsFor(entry.quantity.name, words);
}

const idsOn = keptByPage((readings): readonly string[] => [
  ...new Set(saidBy(readings).flatMap(({ entry }) => cautionsOf(entry).map(({ id }) => id))),
]);

/** Cautions for the whole session of a line, each once, in the table's order; none outside sessions. */
export function cautionsOfSession(snapshot: Snapshot, line: number): readonly Caution[] {
  if (!lineStateAt(snapshot, line)?.after.session) return [];
  const ids = new Set(onPages(snapshot, pagesOfSession(snapshot, line), idsOn));
  return CAUTIONS.filter(({ id }) => ids.has(id));
}
