/** The log lines of a notebook, each with what was in force as it was written. */

import type { Origin } from '../../model/entry/entry.ts';
import { lineOf } from '../../model/snapshot/locate.ts';
import { type LineState, saidBy } from '../../model/snapshot/page.ts';
import { keptByPage, onPages } from '../../model/snapshot/per-page.ts';
import { sectionsUpFrom } from '../../model/snapshot/section-ranges.ts';
import { pageAt, type Snapshot } from '../../model/snapshot/snapshot.ts';
import type { State } from '../../model/state/state.ts';

export interface LogLine {
  /** As written. */
  readonly path: string;
  /** What was in force at the line. */
  readonly state: State;
  readonly by: Origin;
}

const logsOn = keptByPage((readings: readonly LineState[]): readonly LogLine[] =>
  saidBy(readings).flatMap(({ entry, after, where }) =>
    entry.kind === 'file' && entry.word === 'log' && entry.path !== ''
      ? [{ path: entry.path, state: after, by: where }]
      : [],
  ),
);

/** Asked of a log's line (`word` is `log`) that one; else, up to the line, those of the latest session that has any. */
export function logLinesAt(snapshot: Snapshot, line: number, word?: string): readonly LogLine[] {
  const at = (log: LogLine) => lineOf(snapshot, log.by.ref) ?? line + 1;
  if (word === 'log') return logsOn(snapshot, pageAt(snapshot, line)).filter((log) => at(log) === line);
  for (const pages of sectionsUpFrom(snapshot, line)) {
    const found = onPages(snapshot, pages, logsOn).filter((log) => at(log) <= line);
    if (found.length > 0) return found;
  }
  return [];
}
