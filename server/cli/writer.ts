/** How what was found gets written: file by file, as it is found, so that no size needs more memory than its notebook. */
import type { LocatedFinding, Severity } from '../model/findings.ts';
import type { Snapshot } from '../model/snapshot.ts';

/** What was found in one file. */
export interface Checked {
  readonly path: string;
  readonly snapshot: Snapshot;
  readonly findings: Iterable<LocatedFinding>;
}

/** How many notebooks were checked, how many have findings, and how many of which severity. */
export interface Tally {
  readonly files: number;
  readonly filesWithFindings: number;
  readonly findings: Readonly<Record<Severity, number>>;
}

export interface Writer {
  readonly file: (checked: Checked) => void;
  readonly end: (tally: Tally) => void;
}
