/** How names are read: letter case does not count, a hyphen is as good as a space, the notebook's own words come first. */
import { type Line, type Run, runText } from '../../grammar/index.ts';
import type { Quantity } from '../trade/quantity.ts';
import { findQuantity } from '../trade/vocabulary.ts';
import type { SectionKind } from './notebook.ts';

export interface Around {
  readonly section: SectionKind | undefined;
  /** Own words of the notebook, by lower-case name. */
  readonly words: ReadonlyMap<string, Quantity>;
}

export const nameOf = (line: Line, run: Run): string =>
  runText(line, run)
    .toLowerCase()
    .replace(/[\s-]+/g, ' ');

/** Own words first: a notebook may narrow what the trade says. */
export function nameAt(
  words: readonly string[],
  from: number,
  around: Around,
): { quantity: Quantity; length: number } | undefined {
  const known = findQuantity(
    words,
    from,
    around.section === 'vehicle' ? 'vehicle' : around.section === 'engine' ? 'engine' : undefined,
  );
  for (
    let length = around.words.size > 0 ? Math.min(4, words.length - from) : 0;
    length > (known?.length ?? 0) - 1 && length > 0;
    length--
  ) {
    const quantity = around.words.get(
      words
        .slice(from, from + length)
        .join(' ')
        .toLowerCase()
        .replaceAll('-', ' '),
    );
    if (quantity) return { quantity, length };
  }
  return known;
}
