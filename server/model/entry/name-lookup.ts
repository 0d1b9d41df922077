/** How names are read: letter case does not count, a hyphen is as good as a space, the notebook's own words come first. */

import { type Line, type Run, runText } from '../../../grammar/index.ts';
import { once } from '../../memo.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { findQuantity } from '../../trade/vocabulary/vocabulary.ts';
import type { SectionKind } from './entry.ts';
import { type NamedSpec, type SpecNames, specNames } from './spec-names.ts';

export interface NameScope {
  readonly section: SectionKind | undefined;
  /** Inside a merge that was not finished, where no line says anything. */
  readonly inConflict: boolean;
  /** Own words of the notebook, by lower-case name. */
  readonly words: ReadonlyMap<string, Quantity>;
  /** What is specified may be read by its name: `head bolts 60 lb-ft`. */
  readonly specs: ReadonlyMap<string, NamedSpec>;
}

export const nameOf = (line: Line, run: Run): string =>
  runText(line, run)
    .toLowerCase()
    .replace(/[\s-]+/g, ' ');

/** Own words first, then what is specified: a notebook may narrow what the trade says. */
export function nameAt(
  words: readonly string[],
  from: number,
  around: NameScope,
): { quantity: Quantity; length: number } | undefined {
  const { section } = around;
  const known = findQuantity(
    words,
    from,
    section === 'vehicle' || section === 'engine' ? section : undefined,
  );
  const own = ownNameAt(words, from, around.words, LONGEST_OWN);
  if (own && own.length >= (known?.length ?? 0)) return own;
  if (section !== 'session' || around.specs.size === 0) return known;
  const names = specNames(around.specs);
  const specified = ownNameAt(words, from, names, LONGEST_SPEC);
  if (specified && specified.length >= (known?.length ?? 0)) return specified;
  return (known?.quantity.name === 'torque' && torqueOf(words, from + known.length, names)) || known;
}

/** `torque head nuts 75 lb-ft`: the work before its name. */
function torqueOf(
  words: readonly string[],
  from: number,
  names: SpecNames,
): { quantity: Quantity; length: number } | undefined {
  const found = ownNameAt(words, from, names, LONGEST_SPEC);
  return found?.quantity.dimension === 'torque' ? { ...found, length: from + found.length } : undefined;
}

const LONGEST_OWN = 4;
const LONGEST_SPEC = 6;

/** The longest name that begins at a word. */
function ownNameAt(
  words: readonly string[],
  from: number,
  names: SpecNames,
  longest: number,
): { quantity: Quantity; length: number } | undefined {
  if (!mayBegin(names, words[from] ?? '')) return undefined;
  for (let length = Math.min(longest, words.length - from); length > 0; length--) {
    const name = words.slice(from, from + length).join(' ');
    const quantity = names.get(name.toLowerCase().replaceAll('-', ' '));
    if (quantity) return { quantity, length };
  }
  return undefined;
}

/** Names up to which their first words are gathered: where there are more, a name is looked up at once. */
const FEW = 64;

/** Most words of a notebook begin no name of its own, and this tells them at once. */
const mayBegin = (names: SpecNames, word: string): boolean =>
  names.size > FEW || (names.size > 0 && firstWordsOf(names).has(firstWord(word)));

const firstWordsOf = once(
  (names: SpecNames): ReadonlySet<string> => new Set([...names.keys()].map(firstWord)),
);

const firstWord = (text: string): string => (text.split(/[\s-]/, 1)[0] ?? '').toLowerCase();
