/** State before and after a session, and which sessions are marked `keep`. */
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

/** Whether both were marked by the same line; the line may have been re-read since, so the objects may differ. */
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
