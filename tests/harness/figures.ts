/** Figures as a table: a notebook, the figure asked for at the cursor or its end, and what it says. */
import { expect, test } from 'vitest';
import type { Figure } from '../../server/analysis/figure.ts';
import { allFigures, figuresAbout } from '../../server/analysis/figures.ts';
import { lineCount, lineStateAt } from '../../server/model/snapshot/locate.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { fixture } from './fixture.ts';

export interface FigureRow {
  readonly say: string;
  /** A `‸` marks the line that is asked about; else the last. */
  readonly book: string;
  /** The figure's name; every figure of that name counts. */
  readonly figure: string;
  /** Text of each; none for a figure that must not be there. */
  readonly text?: readonly string[];
  readonly working?: string;
  /** Rows of its table that must be there, cells joined by ` | `; an empty list for no table at all. */
  readonly rows?: readonly string[];
  /** Part of its caution; '' for none. */
  readonly caution?: string;
  readonly source?: string;
  /** Ends of its value, each within `off`. */
  readonly value?: { readonly low: number; readonly high: number; readonly off: number };
}

export function testFigures(rows: readonly FigureRow[]): void {
  test.each(rows.map((row) => [row.say, row] as const))('%s', (_, row) => check(row));
}

/** All figures at the cursor or the end; those about a word where one is given. */
export function figuresIn(book: string, word?: string): readonly Figure[] {
  const { text, cursor } = fixture(book);
  const snapshot = openNotebook(text);
  const line = cursor?.line ?? lineCount(snapshot) - 1;
  const state = lineStateAt(snapshot, line)?.after;
  if (!state) throw new Error(`the notebook has no line ${line}`);
  const moment = { state, snapshot, line };
  return word === undefined ? allFigures(moment) : figuresAbout(word, moment);
}

/** The one figure of a name. */
export function figureIn(book: string, name: string): Figure {
  const found = figuresIn(book).filter((figure) => figure.name === name);
  expect(found.map((figure) => figure.name)).toEqual([name]);
  return found[0] as Figure;
}

function check(row: FigureRow): void {
  const found = figuresIn(row.book).filter((figure) => figure.name === row.figure);
  expect(found.map((figure) => figure.text)).toEqual(row.text ?? [expect.any(String)]);
  const [figure] = found;
  if (!figure) return;
  if (row.working !== undefined) expect(figure.working).toBe(row.working);
  if (row.source !== undefined) expect(`${figure.standing}: ${figure.source}`).toContain(row.source);
  if (row.caution !== undefined) expect(figure.caution ?? '').toContain(row.caution);
  if (row.caution === '') expect(figure.caution).toBeUndefined();
  expect(figure.rows.map((cells) => cells.join(' | '))).toEqual(
    expect.arrayContaining([...(row.rows ?? [])]),
  );
  if (row.rows?.length === 0) expect(figure.rows).toEqual([]);
  if (!row.value) return;
  const { low, high, off } = row.value;
  expect(Math.abs((figure.value?.low ?? Number.NaN) - low)).toBeLessThanOrEqual(off);
  expect(Math.abs((figure.value?.high ?? Number.NaN) - high)).toBeLessThanOrEqual(off);
}
