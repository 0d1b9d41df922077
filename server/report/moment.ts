/** Line of a notebook meant by a line number or a date. */
import { lineCount } from '../model/snapshot/locate.ts';
import { sessionsOf } from '../model/snapshot/section-ranges.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';

/** A line from zero, or what is wrong with the request. */
export type ReportLine = { readonly line: number } | { readonly problem: string };

/** The last line of the notebook. */
export const endOf = (snapshot: Snapshot): number => lineCount(snapshot) - 1;

/** `17` is the 17th line, `2026-05-02` the last line of that day's last session. Never throws. */
export function momentOf(snapshot: Snapshot, asked: string): ReportLine {
  if (/^\d+$/.test(asked)) return lineMoment(snapshot, Number(asked));
  if (/^\d{4}-\d{2}-\d{2}$/.test(asked)) return dateMoment(snapshot, asked);
  return { problem: `"${asked}" is not a line number (17) or a date (2026-05-02)` };
}

function lineMoment(snapshot: Snapshot, line: number): ReportLine {
  const count = lineCount(snapshot);
  if (line >= 1 && line <= count) return { line: line - 1 };
  return { problem: `there is no line ${line}: the notebook has lines 1 to ${count}` };
}

function dateMoment(snapshot: Snapshot, date: string): ReportLine {
  const sessions = sessionsOf(snapshot);
  const session = sessions.findLast((each) => each.date === date);
  if (session) return { line: session.to - 1 };
  const dates = sessions.flatMap((each) => each.date ?? []);
  return { problem: `there is no session on ${date}; ${nearest(dates, date)}` };
}

function nearest(dates: readonly string[], date: string): string {
  const sorted = dates.toSorted();
  const before = sorted.findLast((each) => each < date);
  const after = sorted.find((each) => each > date);
  const near = [before, after].filter((each) => each !== undefined);
  return near.length > 0 ? `the nearest are ${near.join(' and ')}` : 'the notebook has no dated session';
}
