/** Suggestion, and the question it answers. */
import type { Line, Range } from '../../../grammar/index.ts';
import type { Snapshot } from '../../model/snapshot/snapshot.ts';
import type { State } from '../../model/state/state.ts';

export type SuggestionKind =
  | 'section'
  | 'setting'
  | 'reading'
  | 'fact'
  | 'work'
  | 'value'
  | 'unit'
  | 'place'
  | 'condition'
  | 'part'
  | 'item'
  | 'date'
  | 'file'
  | 'folder'
  | 'rule';

export interface Suggestion {
  /** As it is listed. */
  readonly label: string;
  readonly kind: SuggestionKind;
  /** A few words beside the label; may be empty. */
  readonly detail: string;
  /** A sentence, where there is more to say. */
  readonly meaning?: string;
  /** What is put in place of `range`, which lies on one line and holds the cursor. */
  readonly text: string;
  readonly range: Range;
  /** What is typed to find it, where that is not the label: another spelling. */
  readonly foundBy?: string;
  /** `foundBy` is another name of the same thing, which shows why it is listed. */
  readonly byAlias?: boolean;
  /** `text` with stops for the cursor, as the protocol writes them, for editors that can. */
  readonly snippet?: string;
}

/** The suggestions of one place on one line, as its own file finds them: all of them replace columns of that line. */
export interface Offer extends Omit<Suggestion, 'range'> {
  readonly from: number;
  /** Past the word being typed where left out. */
  readonly to?: number;
}

export interface CompletionContext {
  /** ISO date. */
  readonly today: string;
  /** What lies in the folder of `folderWanted`, where somebody looked. */
  readonly folder?: readonly FolderEntry[];
  /** True where a typed space triggered it, not the user: only what the line still lacks is worth a list. */
  readonly unasked?: boolean;
}

export interface FolderEntry {
  readonly name: string;
  readonly isFolder: boolean;
}

export interface CompletionQuestion extends CompletionContext {
  readonly snapshot: Snapshot;
  readonly line: number;
  /** As carried to the line. */
  readonly state: State;
  /** The line before the word being typed. */
  readonly written: Line;
  /** The word being typed, up to the cursor; may be empty. */
  readonly typed: string;
  /** Where it begins and, past the cursor, ends. */
  readonly from: number;
  readonly to: number;
  /** The rest of the line, from the cursor on. */
  readonly rest: string;
}
