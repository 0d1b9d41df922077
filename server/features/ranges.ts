/** Ranges from lines and columns, clipped to the text. */
import type { Range, Span } from '../../grammar/index.ts';
import { lineText } from '../model/snapshot/locate.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';

/** Columns `from` to `to` of a line, all from zero. */
export const onLine = (line: number, { from, to }: Span): Range => ({
  start: { line, character: from },
  end: { line, character: to },
});

/** From the start of one line to the end of another, without its break. */
export const wholeLines = (snapshot: Snapshot, from: number, to: number): Range => ({
  start: { line: from, character: 0 },
  end: { line: to, character: lineText(snapshot, to).length },
});
