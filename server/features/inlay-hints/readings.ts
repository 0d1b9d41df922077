/** Inlay hint: difference of a reading from the last one under the same conditions. */

import { type Observation, observationsOn } from '../../analysis/evidence/observations.ts';
import type { LineState, Page } from '../../model/snapshot/page.ts';
import { pageAt, type Snapshot } from '../../model/snapshot/snapshot.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { exact, middle } from '../../trade/measure/interval.ts';
import { convertDifference, unitById } from '../../trade/measure/units.ts';
import type { Remark } from './hint.ts';

/** Lines above that are searched for the reading before: hints must come at once in a notebook of any length. */
const LINES_SEARCHED = 2000;

type Line = LineState & { readonly at: number };

/** By line. Of a list its mean; `lines` follow one another. */
export function readingChanges(snapshot: Snapshot, lines: readonly Line[]): ReadonlyMap<number, Remark> {
  const [first, last] = [lines[0]?.at, lines.at(-1)?.at];
  const changes = new Map<number, Remark>();
  if (first === undefined || last === undefined) return changes;
  const latest = new Map<string, { readonly at: number; readonly was: Observation }>();
  for (let page = pageAt(snapshot, first - LINES_SEARCHED); page <= pageAt(snapshot, last); page++) {
    const observations = observationsOn(snapshot, page);
    const lists = new Set(observations.filter(({ ofList }) => ofList).map(({ by }) => by.ref.line));
    const { lineIds } = snapshot.pages[page] as Page;
    let row = 0;
    for (const now of observations) {
      if (now.ofList) continue;
      while (row < lineIds.length && lineIds[row] !== now.by.ref.line) row++; // both are in the order of lines
      const at = (snapshot.starts[page] as number) + row;
      const before = latest.get(now.key);
      latest.set(now.key, { at, was: now });
      if (at < first || at > last || !before || before.at < at - LINES_SEARCHED) continue;
      const remark = changeSince(before.was, now, lists.has(now.by.ref.line));
      if (remark) changes.set(at, remark);
    }
  }
  return changes;
}

function changeSince(was: Observation, now: Observation, isMean: boolean): Remark | undefined {
  const usual = unitById(now.quantity.unit ?? 'number');
  const unit = now.written === undefined ? usual : unitById(now.written);
  if (unit.dimension !== usual.dimension) return undefined;
  const difference = convertDifference(middle(now.value) - middle(was.value), usual, unit);
  if (!Number.isFinite(difference)) return undefined;
  const size = formatValue(exact(Math.abs(difference)), unit);
  if (/^0(?!\.\d)/.test(size)) return undefined;
  const about = [`since ${was.by.date ?? 'the last one'}`, now.under].filter(Boolean).join(', ');
  const text = `${isMean ? 'mean ' : ''}${size} ${difference > 0 ? 'more' : 'less'}`;
  return { kind: 'change', text, about };
}
