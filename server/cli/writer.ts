/** Output of findings: file by file, as they are found, so that no notebook needs more memory than its text. */
import type { Severity } from '../model/snapshot/finding.ts';
import type { Stream } from '../model/snapshot/read-pages.ts';

/** The findings in one file. */
export interface Checked extends Stream {
  readonly path: string;
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
