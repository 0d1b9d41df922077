/** The air other days are told against: as the notebook writes it, else that of its first session with weather. */
import type { Origin } from '../notebook.ts';
import { pageAt, type Snapshot } from '../snapshot.ts';
import { airOf, type DayAir, writtenReference } from './day-air.ts';
import type { Moment } from './figure.ts';

interface ReferenceDay {
  /** `the reference weather`, `2026-05-02`. */
  readonly name: string;
  readonly air: DayAir;
}

/** Undefined where no weather is written up to the line. */
export function referenceDay({ carried, snapshot, line }: Moment): ReferenceDay | undefined {
  const written = writtenReference(carried);
  if (written) return { name: 'the reference weather', air: written };
  for (let page = 0; page <= pageAt(snapshot, line); page++) {
    const after = snapshot.pages[page]?.after;
    const air = after && airOf(after);
    if (air) return { name: nameOf(after.session?.by), air };
  }
  return undefined;
}

const nameOf = (session: Origin | undefined): string => session?.date ?? 'the first session with weather';

/** The air of the session in which a line stands; undefined where it tells none. */
export function airOfSessionAt(snapshot: Snapshot, { ref }: Origin): DayAir | undefined {
  const first = snapshot.pages.findIndex((page) => page.id === ref.page);
  const session = snapshot.pages[first]?.after.session?.by.ref;
  for (let page = first; page >= 0 && page < snapshot.pages.length; page++) {
    const after = snapshot.pages[page]?.after;
    if (after?.session?.by.ref.line !== session?.line) break;
    const air = after && airOf(after);
    if (air) return air;
  }
  return undefined;
}
