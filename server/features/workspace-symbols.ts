/** Workspace symbols: sessions, parts, items and own words by name, in all notebooks. */
import type { Range } from '../../grammar/index.ts';
import type { EntryKind } from '../model/entry/entry.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { type OutlineSymbol, symbolsOfKinds } from './symbols.ts';

/** A symbol as it is kept of a notebook that may not be open. */
export interface ListedSymbol {
  readonly name: string;
  /** The session or section it is in; empty for those themselves. */
  readonly container: string;
  readonly kind: EntryKind;
  readonly range: Range;
  /** What it is looked for by: lower case. */
  readonly words: string;
}

export interface FoundSymbol extends ListedSymbol {
  readonly uri: string;
}

/** More are of no use in a list to choose from. */
const MOST_FOUND = 500;
const LISTED: ReadonlySet<EntryKind> = new Set(['session', 'part', 'item', 'word']);

/** Those whose name or detail has every word of the query somewhere in it, in any letter case; for an empty one all. */
export function findSymbols(
  notebooks: Iterable<{ readonly uri: string; readonly symbols: Iterable<ListedSymbol> }>,
  query: string,
): readonly FoundSymbol[] {
  const words = query.toLowerCase().split(/\s+/);
  const found: FoundSymbol[] = [];
  for (const { uri, symbols } of notebooks) {
    for (const symbol of symbols) {
      if (!words.every((word) => symbol.words.includes(word))) continue;
      found.push({ ...symbol, uri });
      if (found.length === MOST_FOUND) return found;
    }
  }
  return found;
}

/** The sessions, parts, items and own words of a notebook. */
export function* listedIn(snapshot: Snapshot): Generator<ListedSymbol> {
  for (const [symbol, container] of symbolsOfKinds(snapshot, LISTED)) yield listed(symbol, container);
}

function listed(symbol: OutlineSymbol, container: string): ListedSymbol {
  const { name, detail, kind, range } = symbol;
  return { name: fullName(symbol), container, kind, range, words: `${name} ${detail}`.toLowerCase() };
}

/** Name of a symbol; an item includes its text, so that it can be searched. */
const fullName = ({ name, detail, kind }: OutlineSymbol): string =>
  kind === 'item' && detail ? `${name}: ${detail}` : name;
