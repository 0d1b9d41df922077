/** Selection ranges from a cursor outwards: token, value, statement, line, trial, section. */
import { comparePositions, type Position, type Range, type Span } from '../../grammar/index.ts';
import type { Entry } from '../model/entry/entry.ts';
import { lineCount, lineStateAt, touches } from '../model/snapshot/locate.ts';
import { stretchesOf } from '../model/snapshot/section-ranges.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { foldsOf } from './folding.ts';
import { onLine, wholeLines } from './ranges.ts';

/** From the innermost to the whole text, each wider than the one before and around it. At least one. */
export function selectionsAt(snapshot: Snapshot, position: Position): readonly Range[] {
  const reading = lineStateAt(snapshot, position.line);
  const whole = wholeLines(snapshot, 0, lineCount(snapshot) - 1);
  if (!reading) return [whole];
  const { line } = position;
  const column = Math.min(position.character, reading.entry.line.text.length);
  const spans = spansAround(reading.entry, column).map((span) => onLine(line, span));
  return widening([...spans, ...linesAround(snapshot, line), whole]);
}

/** Spans of a line in which the column lies, the narrowest first. */
function spansAround({ line, ...said }: Entry, column: number): readonly Span[] {
  const { starts, ends, kinds } = line.tokens;
  const tokens = [...kinds].map((_, i) => ({ from: starts[i] as number, to: ends[i] as number }));
  const content = { from: starts[0] ?? 0, to: ends[(line.comment ?? kinds.length) - 1] ?? 0 };
  return [...tokens, ...spansIn(said), content, { from: 0, to: line.text.length }]
    .filter((span) => span.to > span.from && touches(span, column))
    .sort((a, b) => a.to - a.from - (b.to - b.from));
}

/** Every stretch of columns that an entry names, whatever it is of. */
function* spansIn(value: unknown): Generator<Span> {
  if (typeof value !== 'object' || value === null) return;
  if ('from' in value && 'to' in value) yield value as Span;
  else for (const each of Object.values(value)) yield* spansIn(each);
}

function linesAround(snapshot: Snapshot, line: number): readonly Range[] {
  const folds = foldsOf(snapshot).filter(({ from, to }) => from <= line && line <= to);
  const sections = stretchesOf(snapshot).filter(({ from, to }) => from <= line && line < to);
  return [
    ...folds
      .sort((a, b) => a.to - a.from - (b.to - b.from))
      .map(({ from, to }) => wholeLines(snapshot, from, to)),
    ...sections.map(({ from, to }) => wholeLines(snapshot, from, to - 1)),
  ];
}

/** Only those that are around the one before and wider. */
function widening(ranges: readonly Range[]): readonly Range[] {
  const kept: Range[] = [];
  for (const range of ranges) {
    const last = kept.at(-1);
    if (!last || (holds(range, last) && !holds(last, range))) kept.push(range);
  }
  return kept;
}

const holds = (outer: Range, inner: Range): boolean =>
  comparePositions(outer.start, inner.start) <= 0 && comparePositions(outer.end, inner.end) >= 0;
