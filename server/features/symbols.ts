/** Outline of a notebook: its sections and sessions, and the lines in each. */
import type { Range } from '../../grammar/index.ts';
import { once } from '../memo.ts';
import type { EntryKind } from '../model/entry/entry.ts';
import type { Interruptible } from '../model/snapshot/interruptible.ts';
import { pageLines } from '../model/snapshot/locate.ts';
import type { Page } from '../model/snapshot/page.ts';
import { type SectionRange, stretchesOf } from '../model/snapshot/section-ranges.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { titleOf } from './entry-titles.ts';
import { onLine, wholeLines } from './ranges.ts';

export interface OutlineSymbol {
  /** Never empty. */
  readonly name: string;
  readonly detail: string;
  readonly kind: EntryKind;
  readonly range: Range;
  /** Inside `range`: what to put the cursor on. */
  readonly selection: Range;
  readonly children: readonly OutlineSymbol[];
}

/** Those at the top, in the order of lines. Lines before the first section are at the top level. */
export function* symbolsOf(snapshot: Snapshot): Generator<OutlineSymbol> {
  const stretches = stretchesOf(snapshot);
  yield* entriesOn(snapshot, 0, stretches[0]?.pagesFrom ?? snapshot.pages.length);
  for (const stretch of stretches) yield sectionSymbol(snapshot, stretch);
}

/** Works out what `symbolsOf` is made of, a page a step. */
export function* prepareOutline(snapshot: Snapshot): Interruptible<void> {
  for (let page = 0; page < snapshot.pages.length; page++) {
    pageEntries(snapshot, page);
    yield;
  }
}

/** Those of some kinds alone, each with the section or session that it is in, where that is not itself. */
export function* symbolsOfKinds(
  snapshot: Snapshot,
  kinds: ReadonlySet<EntryKind>,
): Generator<readonly [symbol: OutlineSymbol, container: string]> {
  const stretches = stretchesOf(snapshot);
  const wanted = ({ kind }: { readonly kind: EntryKind }) => kinds.has(kind);
  for (const symbol of entriesOn(snapshot, 0, stretches[0]?.pagesFrom ?? snapshot.pages.length, wanted))
    yield [symbol, ''];
  for (const stretch of stretches) {
    const head = headOf(stretch);
    if (wanted(head)) yield [headSymbol(snapshot, stretch, []), ''];
    for (const symbol of entriesOn(snapshot, stretch.pagesFrom, stretch.pagesTo, wanted))
      yield [symbol, head.name];
  }
}

const sectionSymbol = (snapshot: Snapshot, stretch: SectionRange): OutlineSymbol =>
  headSymbol(snapshot, stretch, entriesOn(snapshot, stretch.pagesFrom, stretch.pagesTo));

const headSymbol = (
  snapshot: Snapshot,
  stretch: SectionRange,
  children: readonly OutlineSymbol[],
): OutlineSymbol => ({
  ...headOf(stretch),
  range: wholeLines(snapshot, stretch.from, stretch.to - 1),
  selection: wholeLines(snapshot, stretch.from, stretch.from),
  children,
});

function headOf({ kind, title, date, clock }: SectionRange): Pick<OutlineSymbol, 'name' | 'detail' | 'kind'> {
  const isSession = kind === 'session';
  return {
    name: isSession ? [date, title].filter(Boolean).join(' ') || 'session' : kind,
    detail: isSession ? (clock ?? '') : title,
    kind: isSession ? 'session' : 'section',
  };
}

function entriesOn(
  snapshot: Snapshot,
  from: number,
  to: number,
  wanted: (entry: PageEntry) => boolean = () => true,
): readonly OutlineSymbol[] {
  const symbols: OutlineSymbol[] = [];
  for (let index = from; index < to; index++) {
    const start = snapshot.starts[index] as number;
    for (const entry of pageEntries(snapshot, index)) {
      if (!wanted(entry)) continue;
      const range = onLine(start + entry.line, { from: 0, to: entry.length });
      const { name, detail, kind } = entry;
      symbols.push({ name, detail, kind, range, selection: range, children: [] });
    }
  }
  return symbols;
}

interface PageEntry {
  readonly name: string;
  readonly detail: string;
  readonly kind: EntryKind;
  /** Of the page. */
  readonly line: number;
  readonly length: number;
}

/** Memo by page: an editor requests symbols after every keystroke, and all pages but one are unchanged. */
const entriesOfPage = once((_: Page, snapshot: Snapshot, index: number): readonly PageEntry[] =>
  pageLines(snapshot, index).flatMap(({ entry }, line) => {
    const title = titleOf(entry);
    return title ? [{ ...title, kind: entry.kind, line, length: entry.line.text.length }] : [];
  }),
);

const pageEntries = (snapshot: Snapshot, index: number): readonly PageEntry[] =>
  entriesOfPage(snapshot.pages[index] as Page, snapshot, index);
