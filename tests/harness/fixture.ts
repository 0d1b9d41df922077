/** Notebooks written in tests: lines without the indentation of the test, with marks in them. */
import type { Position, Range } from '../../grammar/index.ts';

export interface Fixture {
  /** Without the marks. */
  readonly text: string;
  /** Where `‸` stood; the last one. */
  readonly cursor: Position | undefined;
  /** What stood between `«` and `»`, in order. */
  readonly ranges: readonly Range[];
}

/** Takes the marks out of a text and says where they were. Throws where a `»` closes nothing. */
export function fixture(marked: string): Fixture {
  const opened: Position[] = [];
  const ranges: Range[] = [];
  let cursor: Position | undefined;
  let text = '';
  for (const sign of dedent(marked)) {
    if (sign === '‸') cursor = endOf(text);
    else if (sign === '«') opened.push(endOf(text));
    else if (sign === '»') {
      const start = opened.pop();
      if (!start) throw new Error('a » without its «');
      ranges.push({ start, end: endOf(text) });
    } else text += sign;
  }
  return { text, cursor, ranges };
}

/** A template literal as a notebook: the first line break and the indentation all its lines share are left out. */
export function dedent(text: string): string {
  const lines = text.replace(/^\n/, '').split('\n');
  const indents = lines
    .filter((line) => line.trim() !== '')
    .map((line) => line.length - line.trimStart().length);
  const shared = Math.min(...indents, Number.MAX_SAFE_INTEGER);
  return lines.map((line) => (line.trim() === '' ? '' : line.slice(shared))).join('\n');
}

function endOf(text: string): Position {
  const lines = text.split(/\r\n|\n|\r/);
  return { line: lines.length - 1, character: (lines.at(-1) ?? '').length };
}
