/** Folding ranges: sections and sessions, trials, and runs of comments or notes. Blank lines at an end stay outside. */
import { type Line, parseLine, withoutBreak } from '../../grammar/index.ts';
import { once } from '../memo.ts';
import type { Interruptible } from '../model/snapshot/interruptible.ts';
import type { Page } from '../model/snapshot/page.ts';
import { stretchesOf } from '../model/snapshot/section-ranges.ts';
import { linesOf, type Snapshot } from '../model/snapshot/snapshot.ts';

export interface Fold {
  /** First and last line, from zero. */
  readonly from: number;
  readonly to: number;
  readonly kind: 'section' | 'trial' | 'comment' | 'note';
}

/** What a line is to a fold. Inside a trial its rows, and what may come between them. */
type Part = 'blank' | 'comment' | 'note' | 'trial' | 'row' | 'file' | 'other';

/** Every fold of at least two lines, by first line. */
export function foldsOf(snapshot: Snapshot): readonly Fold[] {
  const parts = snapshot.pages.flatMap((page) => partsOf(page));
  const sections = stretchesOf(snapshot).map(({ from, to }) => fold(parts, 'section', from, to));
  return [...sections, ...runs(parts, 'comment'), ...runs(parts, 'note'), ...trials(parts)]
    .filter(({ from, to }) => to > from)
    .sort((a, b) => a.from - b.from || b.to - a.to);
}

/** Works out what `foldsOf` is made of, a page a step. */
export function* prepareFolding({ pages }: Snapshot): Interruptible<void> {
  for (const page of pages) {
    partsOf(page);
    yield;
  }
}

/** Memo by page: an editor requests folds after every keystroke, and all pages but one are unchanged. */
const partsOf = once((page: Page): readonly Part[] =>
  linesOf(page).lines.map((raw) => partOf(parseLine(withoutBreak(raw)))),
);

function partOf(line: Line): Part {
  const { kind } = line.syntax;
  if (kind === 'blank' && line.comment !== undefined) return 'comment';
  if (kind === 'blank') return line.text.trim() === '' ? 'blank' : 'other';
  if (kind === 'want') return 'row';
  return kind === 'note' || kind === 'trial' || kind === 'row' || kind === 'file' ? kind : 'other';
}

/** Up to before `end`, without the blank lines there. */
function fold(parts: readonly Part[], kind: Fold['kind'], from: number, end: number): Fold {
  let to = end - 1;
  while (to > from && parts[to] === 'blank') to--;
  return { from, to, kind };
}

function* runs(parts: readonly Part[], kind: 'comment' | 'note'): Generator<Fold> {
  for (let from = 0; from < parts.length; from++) {
    if (parts[from] !== kind) continue;
    const end = endOf(parts, from, (part) => part === kind);
    yield { from, to: end - 1, kind };
    from = end;
  }
}

/** A trial goes on as long as what follows does not end it. */
function* trials(parts: readonly Part[]): Generator<Fold> {
  for (const [from, part] of parts.entries()) {
    if (part === 'trial')
      yield fold(
        parts,
        'trial',
        from,
        endOf(parts, from + 1, (part) => part !== 'trial' && part !== 'other'),
      );
  }
}

function endOf(parts: readonly Part[], from: number, goesOn: (part: Part) => boolean): number {
  let end = from;
  while (end < parts.length && goesOn(parts[end] as Part)) end++;
  return end;
}
