/** Cautions for a line or a session. */

import type { Entry } from '../../model/entry/entry.ts';
import { lineOf, lineStateAt } from '../../model/snapshot/locate.ts';
import { keptByPage } from '../../model/snapshot/per-page.ts';
import { pageAt, type Snapshot } from '../../model/snapshot/snapshot.ts';
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
  ...new Set(readings.flatMap(({ entry }) => cautionsOf(entry).map(({ id }) => id))),
]);

/** Cautions for the whole session of a line, each once, in the table's order; none outside sessions. */
export function cautionsOfSession(snapshot: Snapshot, line: number): readonly Caution[] {
  const head = lineStateAt(snapshot, line)?.after.session?.by.ref;
  const from = head && lineOf(snapshot, head);
  if (!head || from === undefined) return [];
  const ids = new Set<string>();
  for (let page = pageAt(snapshot, from); page < snapshot.pages.length; page++) {
    if (snapshot.pages[page]?.after.session?.by.ref.line !== head.line) break;
    for (const id of idsOn(snapshot, page)) ids.add(id);
  }
  return CAUTIONS.filter(({ id }) => ids.has(id));
}
