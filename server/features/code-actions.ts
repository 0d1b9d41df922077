/** Code actions at a place: fix a finding, or write the same thing another way. */
import type { Range } from '../../grammar/index.ts';
import { lineStateAt } from '../model/snapshot/locate.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { type ActionAround, type CodeAction, isWanted } from './code-actions/action.ts';
import { allAsRead, asRead } from './code-actions/as-read.ts';
import { fixAll, fixesAt } from './code-actions/fixes.ts';
import { doneToday, settingsWritten } from './code-actions/lines.ts';
import { madeAbsolute, otherUnits } from './code-actions/values.ts';

export type { ActionAround, ActionKind, CodeAction } from './code-actions/action.ts';

/** At the lines of a range, or at its start. The edits of one action never overlap. */
export function codeActionsAt(snapshot: Snapshot, range: Range, around: ActionAround): readonly CodeAction[] {
  const reading = lineStateAt(snapshot, range.start.line);
  const place = reading && { snapshot, reading, line: range.start.line, column: range.start.character };
  const rewrites = place && isWanted(around, 'refactor.rewrite');
  return [
    ...(isWanted(around, 'quickfix') ? fixesAt(snapshot, range, around) : []),
    ...(rewrites
      ? [asRead, otherUnits, madeAbsolute, settingsWritten, doneToday].flatMap((act) => act(place, around))
      : []),
    ...(isWanted(around, 'source.fixAll') ? fixAll(snapshot, around) : []),
    ...(isWanted(around, 'source.asRead') ? allAsRead(snapshot) : []),
  ];
}
