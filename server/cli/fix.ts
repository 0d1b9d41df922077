/** `tappet check --fix`: plain speech written as it was read, then what is surely meant put right. */
import { cutLines } from '../../grammar/index.ts';
import { editsAsRead } from '../features/code-actions/as-read.ts';
import { sureFixes } from '../features/code-actions/fixes.ts';
import type { Change, Snapshot } from '../model/snapshot/snapshot.ts';

/** The text with both done; `open` reads it as the notebook of its path. */
export function fixed(text: string, open: (text: string) => Snapshot): string {
  const written = edited(text, editsAsRead(open(text)));
  return edited(written, sureFixes(open(written)));
}

/** Each change lies on one line; none overlap. */
export function edited(text: string, edits: readonly Change[]): string {
  const lines = cutLines(text);
  const inOrder = edits.toSorted(
    ({ range: { start: a } }, { range: { start: b } }) => a.line - b.line || a.character - b.character,
  );
  for (const { range, text: put } of inOrder.toReversed()) {
    const { line, character } = range.start;
    const old = lines[line] as string;
    lines[line] = old.slice(0, character) + put + old.slice(range.end.character);
  }
  return lines.join('');
}
