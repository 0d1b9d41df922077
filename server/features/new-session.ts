/** The head of a new session at the end of a notebook, as a piece of text to be put there. */
import { endsInBreak, type Position, type Range } from '../../grammar/index.ts';
import { lineCount, parsedLine } from '../model/locate.ts';
import type { Page } from '../model/page.ts';
import { sessionsOf } from '../model/sessions.ts';
import { linesOf, type Snapshot } from '../model/snapshot.ts';

export interface SessionAsked {
  /** ISO date. */
  readonly today: string;
  /** May be empty. */
  readonly title: string;
  /** A line of the session to start from, from zero; the last one where left out. */
  readonly from?: number;
}

export interface Insertion {
  /** Empty, or the blanks of the last line. */
  readonly range: Range;
  readonly text: string;
  /** Where writing goes on once it is put in. */
  readonly cursor: Position;
}

/** A session started from an earlier one than the last goes back to what held then, by a line `revert to`. */
export function newSession(snapshot: Snapshot, { today, title, from }: SessionAsked): Insertion {
  const line = lineCount(snapshot) - 1;
  const character = parsedLine(snapshot, line).text.length;
  const isEmptyLine = isBlank(snapshot, line);
  const gap = isEmptyLine ? (isBlank(snapshot, line - 1) ? [] : ['']) : ['', ''];
  const revert = revertOf(snapshot, from);
  const head = ['session', today, ...(title.trim() ? ['', oneLine(title)] : [])].join(' ');
  const lines = [...gap, head, ...(revert ? [`  ${revert}`] : []), '  '];
  return {
    range: { start: { line, character: isEmptyLine ? 0 : character }, end: { line, character } },
    text: lines.join(breakOf(snapshot)),
    cursor: { line: line + lines.length - 1, character: 2 },
  };
}

const oneLine = (title: string): string => title.trim().replaceAll(/\s+/g, ' ');

const isBlank = (snapshot: Snapshot, line: number): boolean =>
  line < 0 || parsedLine(snapshot, line).text.trim() === '';

/** Undefined where the settings in force are those of that session already, or it has no date to go back to. */
function revertOf(snapshot: Snapshot, from: number | undefined): string | undefined {
  const sessions = sessionsOf(snapshot);
  const session = from === undefined ? undefined : sessions.findLast((each) => each.from <= from);
  if (!session?.date || session === sessions.at(-1)) return undefined;
  return `revert to ${session.date}`;
}

/** As the notebook's own lines end. */
export function breakOf({ pages }: Snapshot): string {
  const first = linesOf(pages[0] as Page).lines[0] ?? '';
  if (!endsInBreak(first)) return '\n';
  return first.endsWith('\r\n') ? '\r\n' : first.slice(-1);
}
