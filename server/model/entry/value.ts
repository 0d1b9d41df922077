/**
 * Values: tokens to an interval with its unit, a text, a date. Nothing is judged here; a number that cannot be read
 * has the reason in `problem`, which rules report.
 */
import {
  type AmountSyntax,
  isEmpty,
  type Line,
  type Run,
  runSpan,
  type Span,
  tokenSpan,
  tokenText,
  type ValueSyntax,
} from '../../../grammar/index.ts';
import { about, atLeast, atMost, exact, type Interval, range, scale } from '../../trade/measure/interval.ts';
import { matchUnit, type Unit, unitById } from '../../trade/measure/units.ts';

/** A word with its columns. */
export interface Word {
  readonly text: string;
  readonly span: Span;
}

type NumberProblem = 'no number' | 'comma' | 'no second number' | 'divided by zero';

export interface Amount {
  readonly form: 'amount';
  /** In `unit`; undefined where `problem` says why. */
  readonly interval: Interval | undefined;
  /** Undefined where none was written. */
  readonly unit: Unit | undefined;
  /** No unit was written, and `unit` is the only one the number's size allows. */
  readonly taken?: true;
  /** `+2 deg`, `in 1/4 turn`: a change of a setting. Anywhere else a sign is the number's own. */
  readonly relative: 'more' | 'less' | 'in' | 'out' | undefined;
  readonly problem: NumberProblem | undefined;
  /** The number alone, without prefix and unit. */
  readonly numberSpan: Span;
  /** Where the unit is or would be. */
  readonly unitSpan: Span;
  readonly span: Span;
}

export interface Plain {
  readonly form: 'text' | 'date' | 'clock' | 'ratio' | 'order';
  /** Without quotes. */
  readonly text: string;
  readonly span: Span;
}

export type Value = Amount | Plain;

/** A value and the words after it that are not its unit. */
interface Lowered {
  readonly value: Value;
  readonly after: readonly Word[];
}

/** What cannot be read has its problem in the value; nothing throws. */
export function lowerValue(line: Line, syntax: ValueSyntax): Lowered {
  const tail = wordsOf(line, syntax.tail);
  if (syntax.form === 'ratio') return lowerRatio(line, syntax.token, tail);
  if (syntax.form !== 'amount') {
    const text = tokenText(line, syntax.token);
    return {
      value: {
        form: syntax.form,
        text: syntax.form === 'text' ? text.slice(1, -1) : text,
        span: tokenSpan(line, syntax.token),
      },
      after: tail,
    };
  }
  const unit = unitOf(line, syntax.inch, tail);
  const prefix = syntax.prefix === undefined ? '' : tokenText(line, syntax.prefix).toLowerCase();
  const { interval, problem, signed } = intervalOf(line, syntax, prefix);
  const numberSpan = numbersOf(line, syntax, signed);
  const unitSpan = unit.span ?? { from: numberSpan.to, to: numberSpan.to };
  const span = { from: runSpan(line, syntax.run).from, to: unitSpan.to };
  const relative = signed ? 'more' : RELATIVE.get(prefix);
  return {
    value: { form: 'amount', interval, unit: unit.unit, relative, problem, numberSpan, unitSpan, span },
    after: unit.words === 0 ? tail : tail.slice(unit.words),
  };
}

/** `signed`: the sign before them is the numbers' own. */
function numbersOf(line: Line, syntax: AmountSyntax, signed = false): Span {
  const from = (signed ? syntax.prefix : syntax.lowSign) ?? syntax.low ?? syntax.run[0];
  const to = syntax.high ?? syntax.link ?? from;
  return { from: tokenSpan(line, from).from, to: tokenSpan(line, to).to };
}

const RELATIVE: ReadonlyMap<string, Amount['relative']> = new Map(
  Object.entries({
    '+': 'more',
    '-': 'less',
    '−': 'less',
    in: 'in',
    out: 'out',
  }),
);

/** `25-30 lb-ft` is a range where a firing order makes no sense; `12-8` and `1-3-4-2` are none. */
export function asRange(line: Line, syntax: ValueSyntax, lowered: Lowered): Lowered {
  const [low, high, ...more] =
    syntax.form === 'order' ? tokenText(line, syntax.token).split('-').map(Number) : [];
  if (syntax.form !== 'order' || low === undefined || high === undefined || more.length > 0 || low >= high)
    return lowered;
  const tail = wordsOf(line, syntax.tail);
  const unit = unitOf(line, undefined, tail);
  const numberSpan = tokenSpan(line, syntax.token);
  const unitSpan = unit.span ?? { from: numberSpan.to, to: numberSpan.to };
  return {
    value: {
      form: 'amount',
      interval: range(low, high),
      unit: unit.unit,
      relative: undefined,
      problem: undefined,
      numberSpan,
      unitSpan,
      span: { from: numberSpan.from, to: unitSpan.to },
    },
    after: tail.slice(unit.words),
  };
}

/** `8.4:1` is the number 8.4. */
function lowerRatio(line: Line, token: number, after: readonly Word[]): Lowered {
  const [above, below] = tokenText(line, token).split(':').map(Number) as [number, number];
  const span = tokenSpan(line, token);
  const interval = below === 0 ? undefined : exact(above / below);
  const problem = below === 0 ? ('divided by zero' as const) : undefined;
  const unitSpan = { from: span.to, to: span.to };
  return {
    value: {
      form: 'amount',
      interval,
      unit: unitById('ratio'),
      relative: undefined,
      problem,
      numberSpan: span,
      unitSpan,
      span,
    },
    after,
  };
}

interface UnitRead {
  readonly unit: Unit | undefined;
  /** How many words it took. */
  readonly words: number;
  readonly span: Span | undefined;
}

const NO_UNIT: UnitRead = { unit: undefined, words: 0, span: undefined };

/** An inch sign may begin a longer unit: `17" Hg`. */
function unitOf(line: Line, inch: number | undefined, tail: readonly Word[]): UnitRead {
  const words = inch === undefined ? tail : [{ text: 'in', span: tokenSpan(line, inch) }, ...tail];
  const first = words[0];
  if (!first) return NO_UNIT;
  const texts = words.map((word) => word.text);
  const match = matchUnit(texts, 0);
  if (!match) return NO_UNIT;
  const last = words[match.length - 1] as Word;
  const fromTail = match.length - (words.length - tail.length);
  return { unit: match.unit, words: fromTail, span: { from: first.span.from, to: last.span.to } };
}

interface Read extends Pick<Amount, 'interval' | 'problem'> {
  /** The minus before a range is that of its first number, so that the interval has it already. */
  readonly signed?: boolean;
}

function intervalOf(line: Line, syntax: AmountSyntax, prefix: string): Read {
  if (syntax.low === undefined) return unread('no number');
  const low = numberOf(tokenText(line, syntax.low));
  if (typeof low === 'string') return unread(low);
  const isLess = syntax.lowSign !== undefined;
  if (syntax.link === undefined)
    return { interval: withPrefix(isLess ? -low : low, prefix), problem: undefined };
  const signed = RELATIVE.get(prefix) === 'less';
  return { ...between(line, isLess || signed ? -low : low, syntax), signed };
}

/** `190..220`, `-5..-2`, `50 ± 2` */
function between(line: Line, low: number, { link, highSign, high }: AmountSyntax): Read {
  if (high === undefined) return unread('no second number');
  const size = numberOf(tokenText(line, high));
  if (typeof size === 'string') return unread(size);
  const isTolerance = /^(?:±|\+\/-)$/.test(tokenText(line, link as number));
  if (isTolerance) return { interval: range(low - size, low + size), problem: undefined };
  const isLess = highSign !== undefined && RELATIVE.get(tokenText(line, highSign)) === 'less';
  return { interval: range(low, isLess ? -size : size), problem: undefined };
}

function withPrefix(n: number, prefix: string): Interval {
  if (prefix === '~') return about(n);
  if (prefix.startsWith('<') || prefix === '≤') return atMost(n);
  if (prefix.startsWith('>') || prefix === '≥') return atLeast(n);
  return exact(n);
}

const unread = (problem: NumberProblem): Read => ({ interval: undefined, problem });

/** `9`, `.035`, `3/8`, `1 1/2`, `1-1/2`; a reason instead of a number where it is none. */
export function numberOf(text: string): number | NumberProblem {
  if (text.includes(',')) return 'comma';
  const parts = /^(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/.exec(text);
  if (!parts) return Number(text);
  const [, whole, above, below] = parts.map(Number) as [number, number, number, number];
  return below === 0 ? 'divided by zero' : (Number.isNaN(whole) ? 0 : whole) + above / below;
}

/** `at -4 deg`: the sign is the number's own. Undefined for what is a screw's turn. */
export function asWhole(amount: Amount): Amount | undefined {
  const { relative, interval, span } = amount;
  if (relative === 'in' || relative === 'out') return undefined;
  const numberSpan = { from: span.from, to: amount.numberSpan.to };
  const signed = interval && relative === 'less' ? scale(interval, -1) : interval;
  return relative ? { ...amount, interval: signed, relative: undefined, numberSpan } : amount;
}

const NO_WORDS: readonly Word[] = [];

export function wordsOf(line: Line, run: Run): readonly Word[] {
  if (isEmpty(run)) return NO_WORDS;
  const words: Word[] = [];
  for (let token = run[0]; token < run[1]; token++)
    words.push({ text: tokenText(line, token), span: tokenSpan(line, token) });
  return words;
}
