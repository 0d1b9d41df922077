/** Unfinished merges: which line begins a conflict and which ends it. In between nothing is in force. */
import type { Line } from '../../../grammar/index.ts';
import type { ConflictMark } from './entry.ts';

const MARKS: ReadonlyMap<string, ConflictMark> = new Map([
  ['<', 'begins'],
  ['|', 'parts'],
  ['=', 'parts'],
  ['>', 'ends'],
]);

/** Undefined for any other line. */
export const markOf = ({ text, syntax }: Line): ConflictMark | undefined =>
  syntax.kind === 'conflict' ? MARKS.get(text.charAt(0)) : undefined;

/** Whether a merge is open below a line with this mark. */
export const isOpenAfter = (isOpen: boolean, mark: ConflictMark | undefined): boolean =>
  mark === 'begins' || (isOpen && mark !== 'ends');
