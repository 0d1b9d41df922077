/** Reference air that other days are compared with: the notebook's own, else that of its first session with weather. */

import type { Origin } from '../../model/entry/entry.ts';
import { lineOf } from '../../model/snapshot/locate.ts';
import { sectionEnd, stateAtSectionEnd } from '../../model/snapshot/section-ranges.ts';
import { pageAt, type Snapshot } from '../../model/snapshot/snapshot.ts';
import type { FigureContext } from '../figure.ts';
import { airOf, type DayAir, writtenReference } from './session-air.ts';

interface ReferenceDay {
  /** `the reference weather`, `2026-05-02`. */
  readonly name: string;
  readonly air: DayAir;
}

/** Undefined where no weather is written up to the end of the line's session. */
export function referenceDay({ state, snapshot, line }: FigureContext): ReferenceDay | undefined {
  const written = writtenReference(state);
  if (written) return { name: 'the reference weather', air: written };
  const last = pageAt(snapshot, line);
  for (let end = 0; end <= last; ) {
    end = sectionEnd(snapshot, end);
    const after = snapshot.pages[end - 1]?.after;
    const air = after && airOf(after);
    if (air) return { name: nameOf(after.session?.by), air };
  }
  return undefined;
}

const nameOf = (session: Origin | undefined): string => session?.date ?? 'the first session with weather';

/** Air at the end of the line's session; undefined where no air is written. */
export function airOfSessionAt(snapshot: Snapshot, { ref }: Origin): DayAir | undefined {
  const line = lineOf(snapshot, ref);
  return line === undefined ? undefined : airOf(stateAtSectionEnd(snapshot, line));
}
