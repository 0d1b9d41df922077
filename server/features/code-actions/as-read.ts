/** Plain speech written out as it was read: a line, or all of them. */
import type { Entry } from '../../model/entry/entry.ts';
import { linesBetween } from '../../model/snapshot/locate.ts';
import type { Change, Snapshot } from '../../model/snapshot/snapshot.ts';
import { writtenAs } from '../../rules/lib/written-as.ts';
import { breakOf } from '../new-session.ts';
import { onLine } from '../ranges.ts';
import type { CodeAction, Place } from './action.ts';

/** For a line of plain speech that has one meaning. */
export function asRead({ snapshot, reading, line }: Place): readonly CodeAction[] {
  const edit = editOf(snapshot, reading.entry, line);
  return edit
    ? [{ title: 'Write it as read', kind: 'refactor.rewrite', edits: [edit], found: [], isSure: false }]
    : [];
}

/** All such lines, remarks as notes. */
export function allAsRead(snapshot: Snapshot): readonly CodeAction[] {
  const edits = editsAsRead(snapshot);
  return edits.length > 0
    ? [
        {
          title: `Write all as read (${edits.length})`,
          kind: 'source.asRead',
          edits,
          found: [],
          isSure: false,
        },
      ]
    : [];
}

/** In the order of lines; each lies on one line. */
export const editsAsRead = (snapshot: Snapshot): readonly Change[] =>
  [...linesBetween(snapshot)].flatMap(({ entry, at }) => editOf(snapshot, entry, at) ?? []);

function editOf(snapshot: Snapshot, entry: Entry, line: number): Change | undefined {
  if (entry.kind !== 'spoken') return undefined;
  const { span, text } = writtenAs(entry.line, entry.as);
  return { range: onLine(line, span), text: text.replaceAll('\n', breakOf(snapshot)) };
}
