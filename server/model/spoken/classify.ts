/** Tokens to pieces: which words name something of the trade, which say how, and which numbers with which units. */
import { longestPhrase, phraseTree } from '../../trade/phrases.ts';
import { matchUnit, type Unit } from '../../trade/units.ts';
import { PLACE_NAMES, PLACE_WORDS } from '../../trade/vocabulary.ts';
import { type Around, nameAt } from '../names.ts';
import * as lexicon from './lexicon.ts';
import { sizeOf } from './numbers.ts';
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

export interface SpokenAmount {
  /** Ways to read the number, or the first number of a range. */
  readonly low: readonly string[];
  readonly high: readonly string[] | undefined;
  readonly link: '..' | ' ± ';
  readonly prefix: '' | '~' | '>= ' | '<= ';
  readonly unit: Unit | undefined;
  /** The unit as written. */
  readonly unitText: string;
}

const NAMES = phraseTree([...lexicon.SPOKEN_NAMES].map(([name, means]) => [name, means.split('|')] as const));
const STATES = phraseTree(lexicon.GEARS);
const same = (word: string): string => word;

export function classify(text: string, scope: Around): readonly Piece[] {
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
  scope: Around,
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
  return wordAt(tokens, words, at, scope, before, make);
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
  scope: Around,
  before: Piece | undefined,
  make: (kind: string, length?: number, more?: Partial<Piece>) => Made,
): Made {
  const word = words[at] as string;
  const token = tokens[at] as Token;
  const state = stateAt(tokens, words, at, before);
  if (state) return make('g', state.length, { text: state.text });
  if (word === 'full' && /^(?:advance|retard)$/.test(words[at + 1] ?? '') && before?.kind !== undefined)
    return make('r', 2);
  const place = placeAt(words, at);
  const spoken = longestPhrase(NAMES, words, at, same);
  const known = nameAt(words, at, scope);
  const isFact = known?.quantity.kind === 'fact';
  const nameLength = Math.max(spoken?.length ?? 0, isFact ? 0 : (known?.length ?? 0));
  if (place && place.length >= nameLength) return make('p', place.length, { text: place.text });
  if (spoken && spoken.length >= nameLength) return make('n', spoken.length, { names: spoken.value });
  if (known && !isFact) return make('n', known.length, { names: [known.quantity.name] });
  if (/^(?:with|without|w)$/.test(word)) return make('h');
  if (word === 'no' || word === 'not') return make('o', 1, { text: word });
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
  return make(kinds.find(([, set]) => set.has(word))?.[0] ?? 'x');
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
  const isGear = words[at + length] === 'gear';
  const end = isGear ? length + 1 : length;
  if (letter && first.raw !== first.raw.toUpperCase() && !opens) return undefined;
  const isAfter = before?.kind === 'v' || before?.kind === 'g' || before?.kind === 'r';
  const isBefore = /^[:=]$/.test(tokens[at + end]?.text ?? '') && letter;
  const isState =
    first.text === 'idling' ||
    first.text === 'wot' ||
    first.text === 'fwd' ||
    first.text === 'tickover' ||
    first.text === 'ticking' ||
    first.text === 'neutral' ||
    first.text === 'park' ||
    first.text === 'drive';
  if (!(opens || (isAfter && (letter || isState || isGear)) || isBefore || isGear)) return undefined;
  if (!opens && !isAfter && !isBefore && !isGear) return undefined;
  return { text: found.value, length: end };
}

function placeAt(
  words: readonly string[],
  at: number,
): { readonly text: string; readonly length: number } | undefined {
  const first = words[at] as string;
  const two = `${first} ${words[at + 1]}`;
  if (PLACE_WORDS.has(two)) return { text: two, length: 2 };
  if (!PLACE_WORDS.has(first) || first === 'r' || first === 'l' || first === 'all') return undefined;
  return { text: PLACE_NAMES.get(first) ?? first, length: 1 };
}

/** A number with what belongs to it: `around 850`, `7 to 800 rpm`, `14+`, `15 or so`, `half a turn`. */
function numberAt(
  tokens: readonly Token[],
  words: readonly string[],
  at: number,
): { readonly amount: SpokenAmount; readonly length: number } | undefined {
  const prefix = prefixAt(tokens, words, at);
  let i = at + prefix.length;
  const low = plainAt(tokens, words, i);
  if (!low) return undefined;
  i += low.length;
  const range = prefix.between
    ? rangeAt(tokens, words, i, low.readings, true)
    : rangeAt(tokens, words, i, low.readings, false);
  if (range) i += range.length;
  const unit = unitAt(tokens, words, i);
  if (unit) i += unit.length;
  const suffix = suffixAt(tokens, words, i);
  i += suffix.length;
  return {
    amount: {
      low: range?.low ?? low.readings,
      high: range?.high,
      link: range?.link ?? '..',
      prefix: suffix.prefix || prefix.prefix,
      unit: unit?.unit ?? low.unit,
      unitText: unit?.text ?? low.unitText ?? '',
    },
    length: i - at,
  };
}

const ABOUT = new Set([
  'about',
  'around',
  'roughly',
  'approx',
  'approximately',
  'circa',
  'ca',
  'nearly',
  'almost',
  'maybe',
]);
const PREFIXES: readonly (readonly [words: string, prefix: SpokenAmount['prefix']])[] = [
  ['just over', '>= '],
  ['more than', '>= '],
  ['at least', '>= '],
  ['well over', '>= '],
  ['less than', '<= '],
  ['at most', '<= '],
  ['just under', '<= '],
  ['near enough', '~'],
  ['over', '>= '],
  ['above', '>= '],
  ['under', '<= '],
  ['below', '<= '],
  ['max', '<= '],
  ['min', '>= '],
];

function prefixAt(
  tokens: readonly Token[],
  words: readonly string[],
  at: number,
): { readonly prefix: SpokenAmount['prefix']; readonly length: number; readonly between?: boolean } {
  const word = words[at] as string;
  if (tokens[at]?.text === '~') return { prefix: '~', length: 1 };
  if (tokens[at]?.text.startsWith('<')) return { prefix: '<= ', length: 1 };
  if (tokens[at]?.text.startsWith('>') && tokens[at]?.text !== '>') return { prefix: '>= ', length: 1 };
  if (word === 'between' || word === 'from') return { prefix: '', length: 1, between: true };
  if (ABOUT.has(word)) return { prefix: '~', length: 1 };
  for (const [phrase, prefix] of PREFIXES) {
    const parts = phrase.split(' ');
    if (parts.every((part, i) => words[at + i] === part)) return { prefix, length: parts.length };
  }
  return { prefix: '', length: 0 };
}

/** One number: digits, `3k`, `half a`, `a quarter`, a number word before a unit. */
function plainAt(
  tokens: readonly Token[],
  words: readonly string[],
  at: number,
):
  | {
      readonly readings: readonly string[];
      readonly length: number;
      readonly unit?: Unit;
      readonly unitText?: string;
    }
  | undefined {
  const token = tokens[at];
  if (!token) return undefined;
  if (token.kind === 'number' && token.readings.length > 0) {
    const isThousands = tokens[at + 1]?.joined && words[at + 1] === 'k';
    if (isThousands)
      return { readings: token.readings.map((each) => String(sizeOf(each) * 1000)), length: 2 };
    return { readings: token.readings, length: 1 };
  }
  const word = words[at] as string;
  const ordinal = /^(\d)(?:st|nd|rd|th)$/.exec(word);
  if (ordinal?.[1] && /^(?:clips?|grooves?)$/.test(words[at - 1] ?? ''))
    return { readings: [ordinal[1]], length: 1 };
  const whole = /^(?:gallon|turn|pint|quart|litre|liter|inch)$/.test(word)
    ? unitAt(tokens, words, at)
    : undefined;
  const isAndHalf =
    whole &&
    /^(?:&|and)$/.test(tokens[at + 1]?.text ?? '') &&
    words[at + 2] === 'a' &&
    words[at + 3] === 'half';
  if (isAndHalf) return { readings: ['1 1/2'], length: 4, unit: whole.unit, unitText: whole.text };
  const counted = word === 'another' || word === 'one' ? unitAt(tokens, words, at + 1) : undefined;
  if (counted && /^(?:turns|steps)$/.test(counted.unit.dimension)) return { readings: ['1'], length: 1 };
  const article = word === 'a' || word === 'another' ? 1 : 0;
  const next = words[at + article];
  const share =
    next === 'half'
      ? '1/2'
      : next === 'quarter' || next === '1/4'
        ? '1/4'
        : next === 'eighth'
          ? '1/8'
          : undefined;
  const isShare =
    share && (article === 1 || words[at + 1] === 'a' || words[at + 1] === 'turn' || words[at + 1] === 'flat');
  if (isShare && share)
    return { readings: [share], length: article + 1 + (words[at + article + 1] === 'a' ? 1 : 0) };
  const number = lexicon.NUMBERS.get(word);
  if (
    number &&
    ((words[at + 1] !== 'in' && unitAt(tokens, words, at + 1)) || NUMBERED.has(words[at + 1] ?? ''))
  )
    return { readings: [number], length: 1 };
  if (number && article === 0 && NUMBERED.has(words[at - 1] ?? '')) return { readings: [number], length: 1 };
  return undefined;
}

/** Beside these a number word is a number. */
const NUMBERED = new Set(['up', 'down', 'more', 'less', 'back', 'richer', 'leaner', 'by']);

interface RangeRead {
  readonly low: readonly string[];
  readonly high: readonly string[];
  readonly link: SpokenAmount['link'];
  readonly length: number;
}

/** `to 850`, `- 850`, `..850`, `± 0.2`; `and 850` after `between`. */
function rangeAt(
  tokens: readonly Token[],
  words: readonly string[],
  at: number,
  low: readonly string[],
  between: boolean,
): RangeRead | undefined {
  const sign = tokens[at]?.text ?? '';
  const isTolerance = sign === '±' || sign === '+/-';
  const isLink =
    words[at] === 'to' ||
    sign === '-' ||
    sign === '–' ||
    sign.startsWith('..') ||
    (between && words[at] === 'and');
  const isOr = words[at] === 'or';
  const second = isTolerance || isLink || isOr ? plainAt(tokens, words, at + 1) : undefined;
  if (!second) return undefined;
  const [a, b] = [sizeOf(low[0] as string), sizeOf(second.readings[0] as string)];
  if (isTolerance) return { low, high: second.readings, link: ' ± ', length: 1 + second.length };
  if (isOr && !(b - a > 0 && b - a <= 2 && unitAt(tokens, words, at + 1 + second.length))) return undefined;
  // `7 to 800` are hundreds both.
  const scaled = a < b / 10 && a * 100 < b && Number.isInteger(a) ? [String(a * 100)] : low;
  if (sizeOf(scaled[0] as string) >= b) return undefined;
  return { low: scaled, high: second.readings, link: '..', length: 1 + second.length };
}

/** Letters that are units only straight after the number or in their own case. */
const NEVER = /^[andprkgt]$/;

function unitAt(
  tokens: readonly Token[],
  words: readonly string[],
  at: number,
): { readonly unit: Unit; readonly text: string; readonly length: number } | undefined {
  const token = tokens[at];
  if (token?.text === '"' && token.joined) return inchSign(words, at);
  if (token?.kind !== 'word') return undefined;
  const word = token.text;
  if (NEVER.test(word)) return undefined;
  if (/^[cfm]$/.test(word) && !token.joined && token.raw !== word.toUpperCase()) return undefined;
  if (word === 'in' && isNoInch(tokens, words, at + 1)) return undefined;
  const match = matchUnit(words, at);
  if (!match) return undefined;
  const texts = words.slice(at, at + match.length);
  return { unit: match.unit, text: texts.join(' '), length: match.length + ofWhat(words, at + match.length) };
}

function inchSign(words: readonly string[], at: number) {
  const match = matchUnit(['in', words[at + 1] ?? ''], 0);
  return match ? { unit: match.unit, text: 'in', length: match.length } : undefined;
}

/** `2 inches of vacuum`, `12 degrees of advance`: what follows is no part of the unit; nothing is left out here. */
const ofWhat = (words: readonly string[], at: number): number => (words[at] === 'each' ? 0 : 0);

/** `5 gal in 1.1 hrs`, `60 in top`: no inch where something follows that is no end. */
const isNoInch = (tokens: readonly Token[], words: readonly string[], at: number): boolean => {
  const next = tokens[at];
  return next !== undefined && next.kind !== 'sign' && !/^(?:hg|h2o|of)$/.test(words[at] ?? '');
};

function suffixAt(
  tokens: readonly Token[],
  words: readonly string[],
  at: number,
): { readonly prefix: SpokenAmount['prefix']; readonly length: number } {
  if (words[at] === 'or' && words[at + 1] === 'so') return { prefix: '~', length: 2 };
  if (words[at] === 'ish' || (tokens[at]?.text === '-' && words[at + 1] === 'ish'))
    return { prefix: '~', length: words[at] === 'ish' ? 1 : 2 };
  if (tokens[at]?.text === '+' && tokens[at]?.joined && tokens[at + 1]?.kind !== 'number')
    return { prefix: '>= ', length: 1 };
  return { prefix: '', length: 0 };
}
