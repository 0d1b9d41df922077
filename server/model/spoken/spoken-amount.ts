/** A spoken number with all that belongs to it: about, a bound, a range, its unit, the name of a drill. */

import { matchUnit, type Unit, unitById } from '../../trade/measure/units.ts';
import { drillNamed } from '../../trade/sums/drills.ts';
import { type Prefix, prefixAt, suffixAt } from './about.ts';
import * as lexicon from './lexicon.ts';
import { sizeOf } from './numbers.ts';
import type { Token } from './tokens.ts';

export interface SpokenAmount {
  /** Ways to read the number, or the first number of a range. */
  readonly low: readonly string[];
  readonly high: readonly string[] | undefined;
  readonly link: '..' | ' ± ';
  /** `from 8 to 10`, `8 to 10`: of a setting a step, not a range; `8 -> 10` and `10 to 8` are never one, and only have where it came to. */
  readonly isStep: 'from' | 'to' | undefined;
  /** What it was called: `#40 drill`. */
  readonly called: string;
  readonly prefix: Prefix;
  readonly unit: Unit | undefined;
  /** The unit as written. */
  readonly unitText: string;
}

/** A number with what belongs to it: `around 850`, `7 to 800 rpm`, `14+`, `15 or so`, `half a turn`. */
export function numberAt(
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
  const step = range ? undefined : stepAt(tokens, words, i, low.readings);
  if (step) i += step.length;
  const unit = unitAt(tokens, words, i);
  if (unit) i += unit.length;
  const suffix = suffixAt(tokens, words, i);
  i += suffix.length;
  return {
    amount: {
      low: range?.low ?? step?.readings ?? low.readings,
      high: range?.high,
      link: range?.link ?? '..',
      isStep: step
        ? 'from'
        : range && words[i - (unit?.length ?? 0) - range.length] === 'to'
          ? words[at] === 'from'
            ? 'from'
            : 'to'
          : undefined,
      called: low.called ?? '',
      prefix: suffix.prefix || prefix.prefix,
      unit: unit?.unit ?? low.unit,
      unitText: unit?.text ?? low.unitText ?? '',
    },
    length: i - at,
  };
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
      readonly called?: string;
    }
  | undefined {
  const token = tokens[at];
  if (!token) return undefined;
  const drill = drillAt(tokens, words, at);
  if (drill) return drill;
  if (token.kind === 'number' && token.readings.length > 0) {
    const isThousands = tokens[at + 1]?.joined && words[at + 1] === 'k';
    if (isThousands)
      return { readings: token.readings.map((each) => String(sizeOf(each) * 1000)), length: 2 };
    return { readings: token.readings, length: 1 };
  }
  const word = words[at] as string;
  const ordinal = /^(\d)(?:st|nd|rd|th)$/.exec(word);
  if (ordinal?.[1] && (GROOVES.test(words[at - 1] ?? '') || GROOVES.test(words[at + 1] ?? '')))
    return { readings: [ordinal[1]], length: 1 };
  const couple = words[at] === 'a' ? at + 1 : at;
  const counting = words[couple + 1] === 'of' ? couple + 2 : couple + 1;
  if (words[couple] === 'couple' && /^(?:flats|notches|clicks|steps|holes)$/.test(words[counting] ?? ''))
    return { readings: ['2'], length: counting - at };
  const nth = ORDINALS.indexOf(word);
  if (nth > 0 && (GROOVES.test(words[at - 1] ?? '') || GROOVES.test(words[at + 1] ?? '')))
    return { readings: [String(nth)], length: 1 };
  const whole = /^(?:gallon|turn|pint|quart|litre|liter|inch)$/.test(word)
    ? unitAt(tokens, words, at)
    : undefined;
  const isAndHalf =
    whole &&
    /^(?:&|and)$/.test(tokens[at + 1]?.text ?? '') &&
    words[at + 2] === 'a' &&
    words[at + 3] === 'half';
  if (isAndHalf) return { readings: ['1 1/2'], length: 4, unit: whole.unit, unitText: whole.text };
  const counted =
    /^(?:another|one|a)$/.test(word) && words[at + 2] !== 'spot' ? unitAt(tokens, words, at + 1) : undefined;
  if (counted && /^(?:turns|steps)$/.test(counted.unit.dimension)) return { readings: ['1'], length: 1 };
  const article = /^(?:an?|another)$/.test(word) ? 1 : 0;
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
  if (next === 'half' && words[at + article + 1] === 'an' && words[at + article + 2] === 'hour')
    return { readings: ['30'], length: article + 3, unit: unitById('min'), unitText: 'min' };
  const number = lexicon.NUMBERS.get(word);
  if (
    number &&
    ((words[at + 1] !== 'in' && unitAt(tokens, words, at + 1)) || NUMBERED.has(words[at + 1] ?? ''))
  )
    return { readings: [number], length: 1 };
  if (number && article === 0 && NUMBERED.has(words[at - 1] ?? '')) return { readings: [number], length: 1 };
  return undefined;
}

const ORDINALS = ['', 'first', 'second', 'third', 'fourth', 'fifth', 'sixth'];
const GROOVES = /^(?:clips?|grooves?|notch|slot)$/;

/** Beside these a number word is a number. */
const NUMBERED = new Set(['up', 'down', 'more', 'less', 'back', 'richer', 'leaner', 'by']);

/** `8 -> 10`, `10 to 8`, `130 to 127.5`: what it came to. */
function stepAt(
  tokens: readonly Token[],
  words: readonly string[],
  at: number,
  low: readonly string[],
): { readonly readings: readonly string[]; readonly length: number } | undefined {
  const unit = unitAt(tokens, words, at);
  const link = at + (unit?.length ?? 0);
  const isArrow = /^(?:[-=]+>|→)$/.test(tokens[link]?.text ?? '');
  if (!isArrow && words[link] !== 'to') return undefined;
  const second = plainAt(tokens, words, link + 1);
  if (!second || (!isArrow && sizeOf(low[0] as string) <= sizeOf(second.readings[0] as string)))
    return undefined;
  return { readings: second.readings, length: link + 1 - at + second.length };
}

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
  const isTolerance = /^(?:±|\+\/?-)$/.test(sign);
  const isLink =
    words[at] === 'to' ||
    words[at] === 'through' ||
    sign === '-' ||
    sign === '–' ||
    sign.startsWith('..') ||
    (between && words[at] === 'and');
  const isOr = words[at] === 'or';
  const second = isTolerance || isLink || isOr ? plainAt(tokens, words, at + 1) : undefined;
  if (!second || (sign === '-' && isInList(tokens, at))) return undefined;
  const [a, b] = [sizeOf(low[0] as string), sizeOf(second.readings[0] as string)];
  if (isTolerance) return { low, high: second.readings, link: ' ± ', length: 1 + second.length };
  if (isOr && !(b - a > 0 && b - a <= 2 && unitAt(tokens, words, at + 1 + second.length))) return undefined;
  // `7 to 800` are hundreds both.
  const scaled = a < b / 10 && a * 100 < b && Number.isInteger(a) ? [String(a * 100)] : low;
  if (sizeOf(scaled[0] as string) >= b) return undefined;
  return { low: scaled, high: second.readings, link: '..', length: 1 + second.length };
}

/** `112-115-110`: a third number makes a list of them. */
const isInList = (tokens: readonly Token[], at: number): boolean =>
  [at - 2, at + 2].some((i) => tokens[i]?.text === '-' && tokens[i + (i < at ? -1 : 1)]?.kind === 'number');

/** Beside these `17P` is a pitch. */
const PITCHED = /^(?:prop|propeller|wheel|pitch)$/;

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
  if (word === 'flat' && words[at + 1] === 'out') return undefined;
  if (word === 'sec' && tokens[at + 1]?.kind === 'number') return undefined;
  if (word === 'p' && token.joined && words.some((each) => PITCHED.test(each)))
    return { unit: unitById('in'), text: 'in', length: 1 };
  if (word === 'f' && !token.joined && (words.includes('n') || words.includes('r'))) return undefined;
  // Nobody has a pressure in eighths: a bar that is left over.
  if (/^bars?$/.test(word) && /\d\/\d/.test(tokens[at - 1]?.raw ?? '')) return undefined;
  if (word === 'hg') return { unit: unitById('inHg'), text: 'in hg', length: 1 };
  if (NEVER.test(word) || (word === 'l' && words.includes('r'))) return undefined;
  if (/^[cfm]$/.test(word) && !token.joined && token.raw !== word.toUpperCase()) return undefined;
  if (word === 'in' && (isNoInch(tokens, words, at + 1) || words.includes('ex'))) return undefined;
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
  const glass = Number(tokens[at - 2]?.text);
  // `30.05 in 40%`: a barometer.
  if (glass > 27 && glass < 32 && !Number.isInteger(glass) && next?.kind === 'number') return false;
  return (
    next !== undefined && next.kind !== 'sign' && !/^(?:hg|h2o|of|vac|vacuum|mercury)$/.test(words[at] ?? '')
  );
};

/** `#40 drill`, `no 40 drill`, `50 drill`, `F drill`: its bore, and what it was called. */
function drillAt(tokens: readonly Token[], words: readonly string[], at: number) {
  const sign =
    tokens[at]?.text === '#' || words[at] === 'no' || words[at] === 'number' || words[at] === 'letter'
      ? 1
      : 0;
  const size = tokens[at + sign];
  if (words[at + sign + 1] !== 'drill' || !size) return undefined;
  const isNumber = size.kind === 'number' && /^\d{1,2}$/.test(size.raw);
  const drill =
    isNumber || /^[a-z]$/i.test(size.raw)
      ? drillNamed(isNumber ? `#${size.raw}` : size.raw.toUpperCase())
      : undefined;
  if (!drill) return undefined;
  const inches = String(Number(drill.inches.toFixed(4)));
  return {
    readings: [inches],
    length: sign + 2,
    unit: unitById('in'),
    unitText: 'in',
    called: `${drill.name} drill`,
  };
}
