/** History of every carburettor screw through the notebook. */

import { valueText } from '../../model/entry/as-written.ts';
import type { Origin } from '../../model/entry/entry.ts';
import { type LineState, saidOn } from '../../model/snapshot/page.ts';
import { keptByPage } from '../../model/snapshot/per-page.ts';
import { pageAt, type Snapshot } from '../../model/snapshot/snapshot.ts';
import { settingText } from '../../model/state/setting-text.ts';
import { keyOf } from '../../model/state/state.ts';

export interface Turn {
  readonly name: string;
  readonly place: string;
  /** As written: `1 1/2 turns`, `in 1/4 turns`. */
  readonly written: string;
  /** Setting after it. */
  readonly stands: string;
  readonly by: Origin;
  /** Line of its page, from zero. */
  readonly row: number;
}

const turnsOn = keptByPage(turnsIn);

/** All lines up to and including `line` that set or turned a screw. */
export function turnsUpTo(snapshot: Snapshot, line: number): readonly Turn[] {
  const last = pageAt(snapshot, line);
  const row = line - (snapshot.starts[last] ?? 0);
  return snapshot.pages
    .slice(0, last + 1)
    .flatMap((_, page) => turnsOn(snapshot, page).filter((turn) => page < last || turn.row <= row));
}

function turnsIn(readings: readonly LineState[]): readonly Turn[] {
  return readings.flatMap((reading, row) => saidOn(reading).flatMap((said) => turnsBy(said, row)));
}

function turnsBy({ entry, after, where }: LineState, row: number): readonly Turn[] {
  if (entry.kind !== 'setting' || !isScrew(entry.quantity)) return [];
  const { name, unit } = entry.quantity;
  return entry.statements.flatMap(({ place, values }): Turn[] => {
    const setting = after.settings.get(keyOf(name, place?.text));
    const value = values[0];
    if (!setting || !value) return [];
    const written = valueText(value, unit);
    return [{ name, place: place?.text ?? '', written, stands: settingText(setting), by: where, row }];
  });
}

const isScrew = ({ owner, unit }: { readonly owner?: string; readonly unit?: string }): boolean =>
  owner === 'carburettor' && unit === 'turn';
