/** A line of plain speech to its tokens: numbers with every way they may be read, words, signs. */
import { FRACTION_SIGNS, readingsOfNumber } from './numbers.ts';

export interface Token {
  readonly kind: 'number' | 'word' | 'sign' | 'cylinder' | 'time';
  /** As written; a word in lower case with its spelling put right. */
  readonly text: string;
  /** As written. */
  readonly raw: string;
  /** Of a number: how it may be read, as the notation writes numbers; the likelier first. */
  readonly readings: readonly string[];
  /** Nothing stands between it and the token before. */
  readonly joined: boolean;
  readonly from: number;
  readonly to: number;
}

const PATTERN = new RegExp(
  [
    `(?<cylinder>#\\d{1,2}(?!\\d| ?drill))`,
    `(?<lap>\\d{1,2}:\\d{2}[.,]\\d+)`,
    `(?<time>\\d{1,2}:\\d{2}(?![\\d:]))`,
    `(?<grade>m\\d{1,2}(?:x[\\d.,]+)?(?!\\w)|\\d+w-?\\d+(?!\\w)|\\d{3}/\\d{2}-\\d{2}s?(?!\\w))`,
    `(?<ordinal>n[or]\\.(?= ?\\d)|\\d+(?:st|nd|rd|th)(?![\\p{L}\\d])|w/o?(?![\\p{L}\\d]))`,
    `(?<mixed>\\d+(?: |-| ?& ?| and )\\d+/\\d+(?![\\d/])|\\d* ?[${FRACTION_SIGNS}])`,
    `(?<number>\\d{1,3}\u2009\\d{3}(?!\\d)|\\d+(?:[.,]\\d+)+|\\d+/(?:2|3|4|5|6|8|16|32|64)(?![\\d/${FRACTION_SIGNS}]|[.,]\\d)|\\d+|[.,]\\d+)`,
    `(?<word>[\\p{L}°%][\\p{L}\\p{M}°%²³]*(?:['’./-][\\p{L}\\d][\\p{L}\\p{M}\\d]*)*)`,
    `(?<sign>[-=]+>|→|\\+/?-|\\.\\.+|[<>]=?|\\S)`,
  ].join('|'),
  'giu',
);

/** Linear: each alternative looks at most at the number or word it begins. */
export function tokensOf(text: string, spelling: ReadonlyMap<string, string>): readonly Token[] {
  const tokens: Token[] = [];
  for (const match of withThousands(text).matchAll(PATTERN)) {
    const raw = match[0];
    const { index } = match;
    if (raw === '.' && ABBREVIATED.has(tokens.at(-1)?.text ?? '')) continue;
    if (isPair(raw)) {
      tokens.push(...pairAt(raw, index));
      continue;
    }
    const joined = index > 0 && !/\s/.test(text.charAt(index - 1));
    const at = { raw, joined, from: index, to: index + raw.length };
    tokens.push({ ...at, ...kindOf(match.groups ?? {}, raw, spelling) });
  }
  return tokens;
}

/** A full stop after one of these ends no sentence. */
const ABBREVIATED = new Set(
  'adv comp comps cyl cyls init initial mech oil press pres pt pts temp temps tot vac valve max min abt ca approx ign carb'.split(
    ' ',
  ),
);

/** `48 230` on a line of a distance is one number: its blank is made a thin one, which keeps every place in the line. */
const withThousands = (text: string): string =>
  /\b(?:km|mi|miles|odo|odometer|clock)\b/i.test(text)
    ? text.replace(/(?<!\d)(\d{1,3}) (\d{3})(?!\d)/g, '$1\u2009$2')
    : text;

/** `5/5`, `6/8`: two numbers, since nobody writes a fraction so. */
function isPair(raw: string): boolean {
  const [, above, below] = /^(\d+)\/(\d+)$/.exec(raw) ?? [];
  if (above === undefined) return false;
  const [top, bottom] = [Number(above), Number(below)];
  return top >= bottom || (top % 2 === 0 && bottom % 2 === 0);
}

function pairAt(raw: string, from: number): readonly Token[] {
  let at = from;
  return raw.split(/(\/)/).map((text) => {
    const token: Token = {
      kind: text === '/' ? 'sign' : 'number',
      text,
      raw: text,
      readings: text === '/' ? [] : [text],
      joined: at > from,
      from: at,
      to: at + text.length,
    };
    at += text.length;
    return token;
  });
}

function kindOf(
  named: Readonly<Record<string, string | undefined>>,
  raw: string,
  spelling: ReadonlyMap<string, string>,
): Pick<Token, 'kind' | 'text' | 'readings'> {
  if (named.cylinder) return { kind: 'cylinder', text: raw, readings: [] };
  if (named.time) return { kind: 'time', text: raw, readings: [] };
  if (named.mixed ?? named.number ?? named.lap)
    return { kind: 'number', text: raw, readings: readingsOfNumber(raw) };
  if (named.word ?? named.grade ?? named.ordinal) {
    const lower = raw.toLowerCase().replace(/’/g, "'").replace(/\.$/, '');
    return { kind: 'word', text: spelling.get(lower) ?? withoutIs(lower), readings: [] };
  }
  return { kind: 'sign', text: raw, readings: [] };
}

/** `initial's at 12`: what is said of a thing. */
const withoutIs = (word: string): string =>
  word.endsWith("'s") && !/^(?:it|he|she|let|that|there|here|what|who|today|tonight)'s$/.test(word)
    ? word.slice(0, -2)
    : word;
