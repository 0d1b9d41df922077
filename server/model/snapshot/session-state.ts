/** What held before and after a session, and which sessions are marked as ones to come back to. */
import type { Carried } from '../state/state.ts';
import { NOTHING_CARRIED } from '../state/state.ts';
import { type Stretch, sessionsOf } from './section-ranges.ts';
import type { Snapshot } from './snapshot.ts';

/** Without what the session itself says. */
export const carriedBefore = ({ pages }: Snapshot, { pagesFrom }: Stretch): Carried =>
  pages[pagesFrom]?.before ?? NOTHING_CARRIED;

/** With all that the session says. */
export const carriedAfter = ({ pages }: Snapshot, { pagesTo }: Stretch): Carried =>
  pages[pagesTo - 1]?.after ?? NOTHING_CARRIED;

/** Marked by the same line. What says so may have been read again since: it need not be the same object. */
export const sameKeep = (a: Carried['kept'], b: Carried['kept']): boolean =>
  a?.by.ref.line === b?.by.ref.line;

/** It has a line `keep`. */
export function isKept(snapshot: Snapshot, session: Stretch): boolean {
  const { kept } = carriedAfter(snapshot, session);
  return kept !== undefined && !sameKeep(kept, carriedBefore(snapshot, session).kept);
}

/** The last session above a session that is marked to keep. */
export const keptBefore = (snapshot: Snapshot, session: Stretch): Stretch | undefined =>
  sessionsOf(snapshot).findLast((each) => each.to <= session.from && isKept(snapshot, each));
