/** How near a spoken number is to what was read: about, over, a shade under, or so. */
import { VAGUE } from './lexicon.ts';
import type { Token } from './tokens.ts';

export type Prefix = '' | '~' | '>= ' | '<= ';

interface Nearness {
  readonly prefix: Prefix;
  /** In tokens; zero where nothing of the kind is said. */
  readonly length: number;
  readonly between?: boolean;
}

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));

const ABOUT = set(
  'about bout around roughly approx approximately circa ca abt nearly almost maybe say nearabouts nearest approaching',
);
/** After `a shade`, `a whisker`: too little to count. */
const BESIDE = set('under over above below past off shy short more less');
const LITTLE: ReadonlySet<string> = new Set([...VAGUE, 'shade', 'smidgin', 'trifle', 'gnat']);

/** Longest first where one begins another. */
const PREFIXES: readonly (readonly [words: readonly string[], prefix: Prefix])[] = (
  [
    ['just over', '>= '],
    ['more than', '>= '],
    ['at least', '>= '],
    ['well over', '>= '],
    ['better than', '>= '],
    ['upwards of', '>= '],
    ['north of', '>= '],
    ['less than', '<= '],
    ['at most', '<= '],
    ['just under', '<= '],
    ['no more than', '<= '],
    ['near enough', '~'],
    ['more or less', '~'],
    ['close to', '~'],
    ['getting on for', '~'],
    ['somewhere around', '~'],
    ['somewhere about', '~'],
    ['something like', '~'],
    ['in the region of', '~'],
    ['nigh on', '~'],
    ['just about', '~'],
    ['over', '>= '],
    ['above', '>= '],
    ['under', '<= '],
    ['below', '<= '],
    ['max', '<= '],
    ['min', '>= '],
  ] as const
).map(([phrase, prefix]) => [phrase.split(' '), prefix]);

const SUFFIXES: readonly (readonly string[])[] = [
  'or so',
  'ish',
  'or thereabouts',
  'thereabouts',
  'give or take',
  'near enough',
  'more or less',
  'odd',
  'or near it',
  'or near',
  'or close',
].map((phrase) => phrase.split(' '));

const begins = (words: readonly string[], at: number, phrase: readonly string[]): boolean =>
  phrase.every((word, i) => words[at + i] === word);

/** What stands before a number. */
export function prefixAt(tokens: readonly Token[], words: readonly string[], at: number): Nearness {
  const word = words[at] as string;
  const sign = tokens[at]?.text ?? '';
  if (sign === '~' || sign === '±') return { prefix: '~', length: 1 };
  if (sign.startsWith('<')) return { prefix: '<= ', length: 1 };
  if (sign.startsWith('>') && sign !== '>') return { prefix: '>= ', length: 1 };
  if (word === 'between' || word === 'from') return { prefix: '', length: 1, between: true };
  const beside = besideAt(words, at);
  if (beside > 0) return { prefix: '~', length: beside };
  if (word === 'say' && /[^s]s$|^they$/.test(words[at - 1] ?? '')) return { prefix: '', length: 0 };
  if (word === 'round' && words[at - 1] !== 'all' && words[at - 1] !== '\u0000')
    return { prefix: '~', length: 1 };
  if (ABOUT.has(word)) return { prefix: '~', length: 1 };
  const found = PREFIXES.find(([phrase]) => begins(words, at, phrase));
  return found ? { prefix: found[1], length: found[0].length } : { prefix: '', length: 0 };
}

/** `a whisker under`, `a shade over`, `just shy of`: in words. */
function besideAt(words: readonly string[], at: number): number {
  const article = words[at] === 'a' || words[at] === 'just' ? 1 : 0;
  const little = LITTLE.has(words[at + article] ?? '') ? 1 : 0;
  const side = words[at + article + little] ?? '';
  const isShy = side === 'shy' || side === 'short';
  if (!(little && BESIDE.has(side)) && !(isShy && article + little > 0)) return 0;
  const length = article + little + 1;
  return /^(?:of|than)$/.test(words[at + length] ?? '') ? length + 1 : length;
}

/** What stands after a number and its unit. */
export function suffixAt(tokens: readonly Token[], words: readonly string[], at: number): Nearness {
  const from = tokens[at]?.text === '-' && /^(?:ish|odd)$/.test(words[at + 1] ?? '') ? at + 1 : at;
  const found = SUFFIXES.find((phrase) => begins(words, from, phrase));
  if (found) return { prefix: '~', length: from - at + found.length };
  if (tokens[at]?.text === '+' && tokens[at]?.joined && tokens[at + 1]?.kind !== 'number')
    return { prefix: '>= ', length: 1 };
  return { prefix: '', length: 0 };
}
