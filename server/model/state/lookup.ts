/** Look-ups of a line beyond its state: another day, another notebook, a file. */

import type { Ref } from '../entry/entry.ts';
import type { State } from './state.ts';

/** Target of a look-up. */
export type Question =
  /** The state at the end of that day's session, not of the line's own. */
  | { readonly of: 'day'; readonly date: string; readonly asking: Ref | undefined }
  /** The state at the end of another notebook, by the path as written. */
  | { readonly of: 'notebook'; readonly path: string }
  /** Whether a file that is only named is missing, by the path as written. */
  | { readonly of: 'file'; readonly path: string };

/** Why another notebook gives nothing; `cycle`: it uses, in the end, this notebook. */
export interface Absent {
  readonly problem: FileProblem | 'cycle';
  /** Where a file was looked for, from the folder that may be read; where that says more than the path. */
  readonly lookedAt?: string;
}

/** Undefined where there is no such day, the file is there, or nobody looked. */
export type LookUpResult = State | Absent | undefined;

export type LookUp = (question: Question) => LookUpResult;

export const isAbsent = (found: LookUpResult): found is Absent => found !== undefined && 'problem' in found;

/** `outside`: the path leaves the folder it may be read from. */
export type FileProblem = 'missing' | 'too large' | 'outside' | 'not text' | 'not readable';
