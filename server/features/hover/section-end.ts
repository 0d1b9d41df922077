/** For facts and ports, figures use the state at the end of the section, not at the cursor. */

import type { EntryKind } from '../../model/entry/entry.ts';
import { saidBetween } from '../../model/snapshot/locate.ts';
import type { State } from '../../model/state/state.ts';
import type { HoverQuestion } from './question.ts';

const WHOLE_SECTION: ReadonlySet<EntryKind> = new Set(['fact', 'port']);

/** After the line; for a fact or a port, after the last line of its section. */
export function asTheSectionEnds({ snapshot, line, reading }: HoverQuestion): State {
  if (!WHOLE_SECTION.has(reading.entry.kind)) return reading.after;
  let { after } = reading;
  for (const { entry, after: next } of saidBetween(snapshot, line + 1)) {
    if (HEADS.has(entry.kind)) break;
    after = next;
  }
  return after;
}

const HEADS: ReadonlySet<EntryKind> = new Set(['section', 'session']);
