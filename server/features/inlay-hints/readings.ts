/** How far a reading is from the last one under the same conditions. */

import { type Observation, observationsOn } from '../../model/observe.ts';
import type { Reading } from '../../model/page.ts';
import { pageAt, type Snapshot } from '../../model/snapshot.ts';
import { formatValue } from '../../trade/format.ts';
import { exact, middle } from '../../trade/interval.ts';
import { convertDifference, unitById } from '../../trade/units.ts';
import type { Remark } from './hint.ts';

/** Pages above that are searched for the reading before: hints must come at once in a notebook of any length. */
const PAGES_SEARCHED = 200;

type Line = Reading & { readonly at: number };

/** By line. Of a list its mean; `lines` follow one another. */
export function readingChanges(snapshot: Snapshot, lines: readonly Line[]): ReadonlyMap<number, Remark> {
  const asked = new Map(lines.map(({ where, at }) => [where.ref.line, at]));
  const [first, last] = [lines[0]?.at, lines.at(-1)?.at];
  const changes = new Map<number, Remark>();
  if (first === undefined || last === undefined) return changes;
  const latest = new Map<string, Observation>();
  const from = Math.max(0, pageAt(snapshot, first) - PAGES_SEARCHED);
  for (let page = from; page <= pageAt(snapshot, last); page++) {
    const observations = observationsOn(snapshot, page);
    const lists = new Set(observations.filter(({ ofList }) => ofList).map(({ by }) => by.ref.line));
    for (const now of observations) {
      if (now.ofList) continue;
      const at = asked.get(now.by.ref.line);
      const was = latest.get(now.key);
      const remark = at !== undefined && was ? changeSince(was, now, lists.has(now.by.ref.line)) : undefined;
      if (at !== undefined && remark) changes.set(at, remark);
      latest.set(now.key, now);
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
  const about = [`since ${was.by.date ?? 'the last'}`, now.under].filter(Boolean).join(', ');
  const text = `${isMean ? 'mean ' : ''}${size} ${difference > 0 ? 'more' : 'less'}`;
  return { kind: 'change', text, about };
}
