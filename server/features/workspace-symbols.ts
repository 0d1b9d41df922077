/** Sessions, parts, items and own words by name, in whichever notebook they are. */
import type { Range } from '../../grammar/index.ts';
import type { EntryKind } from '../model/notebook.ts';
import type { Snapshot } from '../model/snapshot.ts';
import { type OutlineSymbol, symbolsOf } from './symbols.ts';

export interface FoundSymbol {
  readonly uri: string;
  readonly name: string;
  /** The session or section it stands in; empty for those themselves. */
  readonly container: string;
  readonly kind: EntryKind;
  readonly range: Range;
}

/** More are of no use in a list to choose from. */
const MOST_FOUND = 500;
const LISTED: ReadonlySet<EntryKind> = new Set(['session', 'part', 'item', 'word']);

/** Those whose name or detail has every word of the query somewhere in it, in any letter case; for an empty one all. */
export function findSymbols(
  notebooks: Iterable<{ readonly uri: string; readonly snapshot: Snapshot }>,
  query: string,
): readonly FoundSymbol[] {
  const words = query.toLowerCase().split(/\s+/);
  const found: FoundSymbol[] = [];
  for (const { uri, snapshot } of notebooks) {
    for (const { symbol, container } of listed(symbolsOf(snapshot))) {
      if (!matches(symbol, words)) continue;
      found.push({ uri, name: fullName(symbol), container, kind: symbol.kind, range: symbol.range });
      if (found.length === MOST_FOUND) return found;
    }
  }
  return found;
}

function* listed(
  symbols: readonly OutlineSymbol[],
): Generator<{ readonly symbol: OutlineSymbol; readonly container: string }> {
  for (const top of symbols) {
    if (LISTED.has(top.kind)) yield { symbol: top, container: '' };
    for (const symbol of top.children) if (LISTED.has(symbol.kind)) yield { symbol, container: top.name };
  }
}

function matches({ name, detail }: OutlineSymbol, words: readonly string[]): boolean {
  const text = `${name} ${detail}`.toLowerCase();
  return words.every((word) => text.includes(word));
}

/** What an item says is what it is looked for by. */
const fullName = ({ name, detail, kind }: OutlineSymbol): string =>
  kind === 'item' && detail ? `${name}: ${detail}` : name;
