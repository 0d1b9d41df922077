/** Name lookup: ignores letter case, takes a hyphen as a space, own words first. */
import { type Line, type Run, runText } from '../../../grammar/index.ts';
import { once } from '../../memo.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { findQuantity } from '../../trade/vocabulary/vocabulary.ts';
import type { SectionKind } from './entry.ts';
import { type NamedSpec, type SpecNames, specNames } from './spec-names.ts';

export interface NameScope {
  readonly section: SectionKind | undefined;
  /** Inside an unfinished merge, where no line has a meaning. */
  readonly inConflict: boolean;
  /** Own words of the notebook, by lower-case name. */
  readonly words: ReadonlyMap<string, Quantity>;
  /** Names of specs, which readings may use: `head bolts 60 lb-ft`. */
  readonly specs: ReadonlyMap<string, NamedSpec>;
}

export const nameOf = (line: Line, run: Run): string =>
  runText(line, run)
    .toLowerCase()
    .replace(/[\s-]+/g, ' ');

/** Own words first, then specs, then the trade's words: a notebook may override them. */
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

/** Most names for which first words are collected; beyond that, names are looked up directly. */
const FEW = 64;

/** First words of own names: a quick test, since most words of a notebook begin none. */
const mayBegin = (names: SpecNames, word: string): boolean =>
  names.size > FEW || (names.size > 0 && firstWordsOf(names).has(firstWord(word)));

const firstWordsOf = once(
  (names: SpecNames): ReadonlySet<string> => new Set([...names.keys()].map(firstWord)),
);

const firstWord = (text: string): string => (text.split(/[\s-]/, 1)[0] ?? '').toLowerCase();
