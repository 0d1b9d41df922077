/**
 * Source text as lines and positions. The only file that knows about line breaks and UTF-16.
 */

/** A place in a text, as in the Language Server Protocol: both from zero, `character` in UTF-16 code units. */
export interface Position {
  readonly line: number;
  readonly character: number;
}

export interface Range {
  readonly start: Position;
  readonly end: Position;
}

/** Columns of one line, half open, in UTF-16 code units. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

const LINE = /[^\r\n]*(?:\r\n|\n|\r)|[^\r\n]+$/g;

/**
 * Cuts a text after each line break (`\r\n`, `\n` or `\r`, as the protocol counts them) and keeps the breaks.
 * A text that ends in a break ends in one empty line more; joined, the lines are the text again.
 */
export function cutLines(text: string): string[] {
  const lines: string[] = text.match(LINE) ?? [];
  if (text === '' || endsInBreak(text)) lines.push('');
  return lines;
}

/** Whether a line, as cut, has its break: all but the last of a text have. */
export const endsInBreak = (raw: string): boolean => raw.endsWith('\n') || raw.endsWith('\r');

/** The line as the reader sees it: without its break. */
export function withoutBreak(raw: string): string {
  if (raw.endsWith('\r\n')) return raw.slice(0, -2);
  return endsInBreak(raw) ? raw.slice(0, -1) : raw;
}

/** Text of `lines` with `range` replaced by `text`, as one string. Columns beyond a line's end mean its end. */
export function replaceIn(lines: readonly string[], range: Range, text: string): string {
  const head = lines.slice(0, range.start.line).join('');
  const first = lines[range.start.line] ?? '';
  const last = lines[range.end.line] ?? '';
  const tail = lines.slice(range.end.line + 1).join('');
  return (
    head + first.slice(0, column(first, range.start)) + text + last.slice(column(last, range.end)) + tail
  );
}

function column(raw: string, position: Position): number {
  return Math.max(0, Math.min(position.character, withoutBreak(raw).length));
}

/** Below 0 where `a` comes before `b`, 0 where they are equal; for sorting. */
export function comparePositions(a: Position, b: Position): number {
  return a.line - b.line || a.character - b.character;
}
