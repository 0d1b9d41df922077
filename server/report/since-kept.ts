/** Settings that differ from the last session marked `keep`: the first question when an engine got worse. */

import {
  type Changed,
  changesBetween,
  settingOrWordsText,
  stepText,
} from '../analysis/evidence/setup-changes.ts';
import { sessionsOf } from '../model/snapshot/section-ranges.ts';
import { carriedAfter, keptBefore, sameKeep } from '../model/snapshot/session-state.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import type { State } from '../model/state/state.ts';
import { type Where, whereOf } from './where.ts';

export interface ChangeRow {
  /** With its place: `mixture left`. */
  readonly name: string;
  /** Undefined where nothing was written. */
  readonly before: string | undefined;
  readonly after: string | undefined;
  /** `2 deg more`; undefined where the two cannot be compared. */
  readonly change: string | undefined;
  readonly where: Where | undefined;
}

/** Against the last kept session above the one of the line; empty where that line's own session is the kept one. */
export function sinceKept(snapshot: Snapshot, line: number, state: State): readonly ChangeRow[] {
  const session = sessionsOf(snapshot).findLast(({ from }) => from <= line);
  const kept = session && keptBefore(snapshot, session);
  if (!kept || !sameKeep(state.keptSession, carriedAfter(snapshot, kept).keptSession)) return [];
  return changesBetween(carriedAfter(snapshot, kept), state).map((change) => rowOf(snapshot, change));
}

const rowOf = (snapshot: Snapshot, change: Changed): ChangeRow => ({
  name: [change.name, change.place].filter(Boolean).join(' '),
  before: change.before && settingOrWordsText(change.before),
  after: change.after && settingOrWordsText(change.after),
  change: stepText(change),
  where: change.by && whereOf(snapshot, change.by),
});
