/** Log lines of a notebook, each with the state in force where it was written. */

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

/** On a log's own line (`word` is `log`) that one; else those of the latest session up to here that has any. */
export function logLinesAt(snapshot: Snapshot, line: number, word?: string): readonly LogLine[] {
  const at = (log: LogLine) => lineOf(snapshot, log.by.ref) ?? line + 1;
  if (word === 'log') return logsOn(snapshot, pageAt(snapshot, line)).filter((log) => at(log) === line);
  for (const pages of sectionsUpFrom(snapshot, line)) {
    const found = onPages(snapshot, pages, logsOn).filter((log) => at(log) <= line);
    if (found.length > 0) return found;
  }
  return [];
}
