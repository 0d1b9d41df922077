/** Finding: what a check reports on a line. The checks are in server/rules; the model only stores their findings. */
import type { Span } from '../../../grammar/index.ts';
import type { Entry, Origin } from '../entry/entry.ts';
import type { LookUp } from '../state/lookup.ts';
import type { State } from '../state/state.ts';

export type Severity = 'error' | 'warning' | 'information' | 'hint';

export interface Fix {
  readonly title: string;
  /** On the finding's own line; they do not overlap. */
  readonly edits: readonly { readonly span: Span; readonly text: string }[];
}

export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  readonly span: Span;
  readonly message: string;
  /** Other lines that belong to it. */
  readonly related: readonly { readonly origin: Origin; readonly message: string }[];
  readonly fixes: readonly Fix[];
}

export interface LocatedFinding extends Finding {
  /** The line, from zero. */
  readonly at: number;
}

/** Context of a check: the line's entry, the state before it, and the state after it. */
export interface Context {
  readonly before: State;
  readonly after: State;
  readonly where: Origin;
  readonly lookUp: LookUp;
}

/** Judges one line. Depends on its arguments alone; never throws. */
export type Check = (entry: Entry, context: Context) => readonly Finding[];
