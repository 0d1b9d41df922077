/** A line of plain speech written out in the notation. */
import type { Line } from '../../../grammar/index.ts';
import type { Fix } from '../../model/snapshot/finding.ts';
import { lineSpan } from './line-syntax.ts';

/** The edit that puts lines of the notation in the line's place, moved in as it is; its comment stays behind them. */
export function writtenAs(line: Line, lines: readonly string[]): Fix['edits'][number] {
  const indent = /^\s*/.exec(line.text)?.[0] ?? '';
  return { span: lineSpan(line), text: lines.join(`\n${indent}`) };
}

/** A reading to choose, by one keystroke. */
export const offerOf = (line: Line, lines: readonly string[]): Fix => ({
  title: isNote(lines) ? 'Keep it as a note' : `Write ${lines.map((each) => `"${each}"`).join(' and ')}`,
  edits: [writtenAs(line, lines)],
});

export const isNote = (lines: readonly string[]): boolean => lines.every((each) => /^note\b/i.test(each));
