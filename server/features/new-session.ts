/** The head of a new session at the end of a notebook, as a piece of text to be put there. */
import { type Position, type Range, withoutBreak } from '../../grammar/index.ts';
import { lineCount, lineText } from '../model/snapshot/locate.ts';
import type { Page } from '../model/snapshot/page.ts';
import { sessionsOf } from '../model/snapshot/section-ranges.ts';
import { linesOf, pageAt, type Snapshot } from '../model/snapshot/snapshot.ts';

export interface SessionAsked {
  /** ISO date. */
  readonly today: string;
  /** May be empty. */
  readonly title: string;
  /** A line of the session to start from, from zero; the last one where left out. */
  readonly from?: number;
}

interface Insertion {
  /** Empty, or the white space of the last line. */
  readonly range: Range;
  readonly text: string;
  /** Where writing goes on once it is put in. */
  readonly cursor: Position;
}

/** A session started from one before the last begins with a line `revert to` that restores its settings. */
export function newSession(snapshot: Snapshot, { today, title, from }: SessionAsked): Insertion {
  const line = lineCount(snapshot) - 1;
  const character = lineText(snapshot, line).length;
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
  line < 0 || lineText(snapshot, line).trim() === '';

/** Undefined where the settings in force are those of that session already, or it has no date to go back to. */
function revertOf(snapshot: Snapshot, from: number | undefined): string | undefined {
  const sessions = sessionsOf(snapshot);
  const session = from === undefined ? undefined : sessions.findLast((each) => each.from <= from);
  if (!session?.date || session === sessions.at(-1)) return undefined;
  return `revert to ${session.date}`;
}

/** As the last line that is ended is: what is put behind a lone `\r` must not begin with `\n`, or the two would be one. */
export function breakOf(snapshot: Snapshot): string {
  const line = lineCount(snapshot) - 2;
  if (line < 0) return '\n';
  const page = pageAt(snapshot, line);
  const { lines } = linesOf(snapshot.pages[page] as Page);
  const raw = lines[line - (snapshot.starts[page] as number)] ?? '';
  return raw.slice(withoutBreak(raw).length) || '\n';
}
