/** What held before and after a session, and which sessions are marked as ones to come back to. */
import type { State } from '../state/state.ts';
import { EMPTY_STATE } from '../state/state.ts';
import { type SectionRange, sessionsOf } from './section-ranges.ts';
import type { Snapshot } from './snapshot.ts';

/** Without what the session itself says. */
export const carriedBefore = ({ pages }: Snapshot, { pagesFrom }: SectionRange): State =>
  pages[pagesFrom]?.before ?? EMPTY_STATE;

/** With all that the session says. */
export const carriedAfter = ({ pages }: Snapshot, { pagesTo }: SectionRange): State =>
  pages[pagesTo - 1]?.after ?? EMPTY_STATE;

/** Marked by the same line. What says so may have been read again since: it need not be the same object. */
export const sameKeep = (a: State['keptSession'], b: State['keptSession']): boolean =>
  a?.by.ref.line === b?.by.ref.line;

/** It has a line `keep`. */
export function isKept(snapshot: Snapshot, session: SectionRange): boolean {
  const { keptSession: kept } = carriedAfter(snapshot, session);
  return kept !== undefined && !sameKeep(kept, carriedBefore(snapshot, session).keptSession);
}

/** The last session above a session that is marked to keep. */
export const keptBefore = (snapshot: Snapshot, session: SectionRange): SectionRange | undefined =>
  sessionsOf(snapshot).findLast((each) => each.to <= session.from && isKept(snapshot, each));
