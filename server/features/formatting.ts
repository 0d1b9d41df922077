/**
 * Formatting: names and values in columns within a section, comments below each other, lines moved in under their head.
 * No token is touched (but units, if asked), and a line that cannot be read stays as it is.
 */
import type { Range } from '../../grammar/index.ts';
import { type Interruptible, runToEnd } from '../model/snapshot/interruptible.ts';
import { lineCount, linesBetween, rawLine } from '../model/snapshot/locate.ts';
import { stretchesOf } from '../model/snapshot/section-ranges.ts';
import type { Change, Snapshot } from '../model/snapshot/snapshot.ts';
import { cellsOf, type Laid } from './formatting/cells.ts';
import { laidOut } from './formatting/columns.ts';
import { lineEdits } from './formatting/edits.ts';
import { inTableUnits } from './formatting/spelling.ts';

export interface FormatStyle {
  /** Spaces before a line inside a section; twice as many before a row of a trial. */
  readonly indent: number;
  /** `table`: every unit as the table of units prints it. */
  readonly unitSpelling: 'as written' | 'table';
}

export const DEFAULT_STYLE: FormatStyle = { indent: 2, unitSpelling: 'as written' };

/**
 * The changes that format the lines of a range, or all. Each lies on one line; none overlap. In a range the columns that
 * the lines around it already have are kept to.
 */
export const formatEdits = (snapshot: Snapshot, style: FormatStyle, range?: Range): readonly Change[] =>
  runToEnd(formatting(snapshot, style, range));

/** As `formatEdits`, a section a step. */
export function* formatting(
  snapshot: Snapshot,
  style: FormatStyle,
  range?: Range,
): Interruptible<readonly Change[]> {
  const [from, to] = range ? linesIn(range) : [0, lineCount(snapshot)];
  const edits: Change[] = [];
  for (const block of blocksOf(snapshot)) {
    if (block.from >= to || block.to <= from) continue;
    const lines = linesOf(snapshot, block, style);
    const texts = laidOut(lines, style.indent, (at) => at >= from && at < to);
    for (const [i, { at, text }] of lines.entries())
      for (const edit of lineEdits(at, text, texts[i] as string))
        if (edit.text !== '' || !joinsBreaks(snapshot, edit.range)) edits.push(edit);
    yield;
  }
  return edits;
}

/** White space alone between a `\r` and a `\n`: without them the two would be one break. */
function joinsBreaks(snapshot: Snapshot, { start, end }: Range): boolean {
  if (start.line === 0 || start.character > 0 || end.character === 0) return false;
  return (
    rawLine(snapshot, start.line - 1).endsWith('\r') &&
    rawLine(snapshot, start.line).slice(end.character) === '\n'
  );
}

/** A range that ends before the first character of a line does not include that line. */
function linesIn({ start, end }: Range): readonly [from: number, to: number] {
  return [start.line, end.character === 0 && end.line > start.line ? end.line : end.line + 1];
}

interface Block {
  readonly from: number;
  readonly to: number;
}

/** The sections, and the lines before the first. */
function blocksOf(snapshot: Snapshot): readonly Block[] {
  const stretches = stretchesOf(snapshot);
  return [{ from: 0, to: stretches[0]?.from ?? lineCount(snapshot) }, ...stretches];
}

function linesOf(snapshot: Snapshot, { from, to }: Block, { unitSpelling }: FormatStyle): readonly Laid[] {
  return [...linesBetween(snapshot, from, to)].map(({ entry, before, at }) => {
    const spelled = unitSpelling === 'table' ? inTableUnits(entry, before) : entry;
    return { at, text: entry.line.text, cells: cellsOf(spelled, before) };
  });
}
