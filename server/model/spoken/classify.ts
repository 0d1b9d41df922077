/** Tokens to pieces: which words name something of the trade, which say how, and which numbers with which units. */
import { longestPhrase, phraseTree } from '../../trade/text/phrase-tree.ts';
import { type NameScope, nameAt } from '../entry/name-lookup.ts';
import { asideAt } from './asides.ts';
import * as lexicon from './lexicon.ts';
import { derivedNameAt, nearNameAt, spokenNameAt } from './names.ts';
import { placeAt } from './place-words.ts';
import { numberAt, type SpokenAmount } from './spoken-amount.ts';
import { type Token, tokensOf } from './tokens.ts';

/**
 * What a piece is, one character each so that forms can be patterns: `n` name, `v` amount, `p` place, `g` condition, `r` remark,
 * `c` change, `q` comparison, `t` trouble, `w` something to do, `k` uncounted amount, `m` time, `o` no, `a` and, `h` with, `f` filler,
 * `x` other, and signs as themselves.
 */
export interface Piece {
  readonly kind: string;
  /** Lower case; for a place or a condition as the notation writes it. */
  readonly text: string;
  /** Of a name: what it may be. */
  readonly names: readonly string[];
  readonly amount: SpokenAmount | undefined;
  readonly from: number;
  readonly to: number;
}

const STATES = phraseTree(lexicon.GEARS);
const same = (word: string): string => word;

export function classify(text: string, scope: NameScope): readonly Piece[] {
  const tokens = tokensOf(text, lexicon.SPELLINGS);
  const words = tokens.map((token) => (token.kind === 'word' ? token.text : '\u0000'));
  const pieces: Piece[] = [];
  for (let i = 0; i < tokens.length; ) {
    const { piece, length } = pieceAt(tokens, words, i, scope, pieces.at(-1));
    pieces.push(piece);
    i += length;
  }
  return pieces;
}

interface Made {
  readonly piece: Piece;
  readonly length: number;
}

function pieceAt(
  tokens: readonly Token[],
  words: readonly string[],
  at: number,
  scope: NameScope,
  before: Piece | undefined,
): Made {
  const token = tokens[at] as Token;
  const make = (kind: string, length = 1, more: Partial<Piece> = {}): Made => {
    const to = (tokens[at + length - 1] as Token).to;
    return {
      piece: { kind, text: token.text, names: [], amount: undefined, from: token.from, to, ...more },
      length,
    };
  };
  const read = numberAt(tokens, words, at);
  if (read) return make('v', read.length, { amount: read.amount });
  if (token.kind === 'cylinder') return make('p', 1, { text: token.text });
  if (token.kind === 'time') return make('m');
  if (token.kind === 'sign') return signAt(tokens, at, make);
  if (token.kind === 'number') return make('x');
  const aside = before?.kind === 'v' || before?.kind === 'g' || before?.kind === 'p' ? asideAt(words, at) : 0;
  if (aside > 0 && isAsideAt(tokens, at + aside, aside)) {
    const last = tokens[at + aside - 1] as Token;
    const text = tokens
      .slice(at, at + aside)
      .map(({ text: word }) => word)
      .join(' ');
    return make('r', aside, { text, to: last.to });
  }
  return wordAt(tokens, words, at, scope, before, make);
}

/** A number straight after the words makes a name of them: `12 top end 4200`. One word alone ends its clause. */
function isAsideAt(tokens: readonly Token[], end: number, length: number): boolean {
  const next = tokens[end];
  if (next?.kind === 'number') return false;
  return length > 1 || next === undefined || /^[,;()]$/.test(next.text);
}

function signAt(tokens: readonly Token[], at: number, make: (kind: string, length?: number) => Made): Made {
  const text = (tokens[at] as Token).text;
  if (text === '→') return make('>');
  if (text === '->') return make('>');
  if (text === '.') return make(',');
  return make(text === '&' ? 'a' : text === '–' ? '-' : text.charAt(0));
}

function wordAt(
  tokens: readonly Token[],
  words: readonly string[],
  at: number,
  scope: NameScope,
  before: Piece | undefined,
  make: (kind: string, length?: number, more?: Partial<Piece>) => Made,
): Made {
  const word = words[at] as string;
  const token = tokens[at] as Token;
  const isSide = /^[lr]$/.test(word) && words.includes('l') && words.includes('r');
  const state = isSide ? undefined : stateAt(tokens, words, at, before);
  if (state) return make('g', state.length, { text: state.text });
  if (word === 'full' && /^(?:advance|retard)$/.test(words[at + 1] ?? '') && before?.kind !== undefined)
    return make('r', 2);
  const place = placeAt(words, at, before?.kind === 'v');
  const spoken = spokenNameAt(words, at);
  const known = nameAt(words, at, scope);
  const isFact = known?.quantity.kind === 'fact';
  const nameLength = Math.max(spoken?.length ?? 0, isFact ? 0 : (known?.length ?? 0));
  if (place && place.length >= nameLength) return make('p', place.length, { text: place.text });
  if (spoken && spoken.length >= nameLength) return make('n', spoken.length, { names: spoken.value });
  if (known && !isFact) return make('n', known.length, { names: [known.quantity.name] });
  if (/^(?:with|without|w)$/.test(word)) return make('h');
  if (word === 'no' || word === 'not') return make('o', 1, { text: word });
  if (word === 'in' && words[at + 1] === 'the') return make('f');
  if (word === 'on' && words[at + 1] === 'choke') return make('r', 2, { text: 'on choke' });
  if (word === 'and' || word === 'plus') return make('a');
  if (token.raw === 'I') return make('f');
  const kinds: readonly (readonly [string, ReadonlySet<string>])[] = [
    ['k', lexicon.VAGUE],
    ['t', lexicon.TROUBLES],
    ['c', lexicon.CHANGES],
    ['q', lexicon.COMPARISONS],
    ['w', lexicon.WANTS],
    ['f', lexicon.FILLERS],
    ['r', lexicon.REMARKS],
  ];
  const kind = kinds.find(([, set]) => set.has(word))?.[0];
  const isKnown =
    kind !== undefined || lexicon.EXPOSED.has(word) || lexicon.LOOKS.has(word) || lexicon.SKY.has(word);
  const derived = kind
    ? undefined
    : (derivedNameAt(words, at) ?? (isKnown ? undefined : nearNameAt(words, at)));
  if (derived) return make('n', derived.length, { names: derived.value });
  return make(kind ?? 'x');
}

/** `in D`, `at idle`, `850 P`, `D: 720`. */
function stateAt(
  tokens: readonly Token[],
  words: readonly string[],
  at: number,
  before: Piece | undefined,
): { readonly text: string; readonly length: number } | undefined {
  const opens = /^(?:in|at)$/.test(words[at] as string);
  const from = opens ? at + 1 : at;
  const found = longestPhrase(STATES, words, from, same);
  if (!found) return undefined;
  const first = tokens[from] as Token;
  const letter = first.text.length === 1;
  const length = found.length + (opens ? 1 : 0);
  const isGear = words[at + length] === 'gear' && first.text !== 'gear';
  const end = isGear ? length + 1 : length;
  if (letter && first.raw !== first.raw.toUpperCase() && !opens) return undefined;
  const isAfter = /^[vgr]$/.test(before?.kind ?? '') && (letter || RUNNING.has(first.text));
  const following = tokens[at + end];
  const isBefore =
    (letter && /^[:=]$/.test(following?.text ?? '')) ||
    (SELECTED.has(first.text) && following?.kind === 'number');
  return opens || isAfter || isBefore || isGear ? { text: found.value, length: end } : undefined;
}

/** Where the selector stands. */
const SELECTED: ReadonlySet<string> = new Set(['neutral', 'park', 'drive', 'reverse', 'fwd', 'gear']);
/** Said straight after a number without `in` or `at`. */
const RUNNING: ReadonlySet<string> = new Set([
  ...SELECTED,
  'idling',
  'wot',
  'tickover',
  'ticking',
  'flat',
  'full',
]);
