/** The regular expressions of the program, found in its text, and how long each may take on a long text made to delay it. */
import fc from 'fast-check';

interface Expression {
  /** `path:line`. */
  readonly at: string;
  readonly expression: RegExp;
}

/** What may stand before a division; behind anything else a `/` begins an expression. */
const VALUE_ENDS = /[\w)\]}"'`]\s*$/;
const KEYWORD_ENDS = /\b(?:return|typeof|case|of|in)\s*$/;
/** A comment, a text in quotation marks, or an expression. */
const PIECE =
  /\/\/.*|\/\*[\s\S]*?\*\/|'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"|\/((?:[^/\\[\n]|\\.|\[(?:[^\]\\\n]|\\.)*\])+)\/([dgimsuvy]*)/g;

/** Every expression that is written out in a program. */
export function expressionsIn(path: string, text: string): readonly Expression[] {
  const found: Expression[] = [];
  PIECE.lastIndex = 0;
  for (let piece = PIECE.exec(text); piece; piece = PIECE.exec(text)) {
    const [, source, flags] = piece;
    if (source === undefined) continue;
    const before = text.slice(Math.max(0, piece.index - 80), piece.index);
    if (VALUE_ENDS.test(before) && !KEYWORD_ENDS.test(before)) {
      PIECE.lastIndex = piece.index + 1; // a division
      continue;
    }
    const line = text.slice(0, piece.index).split('\n').length;
    found.push({ at: `${path}:${line}`, expression: new RegExp(source, flags) });
  }
  return found;
}

const SAMPLES = 8;
const LONGEST_UNIT = 3;
/** Ends that few expressions go on over, so that what matched so far must be tried in every other way. */
const ENDS = ['\u0001', '', ' x'];

/**
 * Texts that would take long where an expression can be matched in many ways: of texts that it matches, each piece is
 * repeated, and what comes behind it breaks the match. One function for each: from the number of repetitions to a text.
 */
function attacksOn(expression: RegExp): readonly ((n: number) => string)[] {
  const pieces = new Map<string, readonly [before: string, unit: string, after: string]>();
  const add = (before: string, unit: string, after: string) =>
    pieces.set(JSON.stringify([before, unit, after]), [before, unit, after]);
  for (const sample of samplesOf(expression)) {
    for (let from = 0; from < sample.length; from++)
      for (let to = from + 1; to <= Math.min(sample.length, from + LONGEST_UNIT); to++)
        for (const end of ENDS) {
          add('', sample.slice(from, to), end);
          add(sample.slice(0, from), sample.slice(from, to), end);
        }
  }
  for (const word of expression.source.replace(/\\[bdsw]/gi, '').match(/[a-z]{2,}/gi) ?? [])
    for (const end of ENDS) add('', `${word} `, end);
  return [...pieces.values()].map(
    ([before, unit, after]) =>
      (n) =>
        before + unit.repeat(Math.ceil(n / unit.length)) + after,
  );
}

function samplesOf({ source, flags }: RegExp): readonly string[] {
  const plain = new RegExp(withoutLooks(source), flags.replace(/[dgiy]/g, ''));
  return [...new Set(fc.sample(fc.stringMatching(plain, { maxLength: 24 }), { numRuns: SAMPLES, seed: 1 }))];
}

/** fast-check makes no text for a look behind or ahead, or of halves of characters: those are made as if matched, these of any. */
const withoutLooks = (source: string): string =>
  source
    .replace(/\(\?<?[=!]/g, '(?:')
    .replace(/\\b/gi, '')
    .replaceAll('\\p{Surrogate}', '.');

/** Each four times as long as the one before: what takes exponentially long is caught while it is short. */
const LENGTHS = [20, 80, 320, 1_280, 5_120];
/** Four times as long a text takes four times as long, and sixteen times where it grows with the square. */
const GROWTH = 4 ** 1.6;
/** What takes less grows over nothing: an expression goes over the longest text in a tenth of it. ms. */
const FLOOR = 0.5;

/** The first of those texts that an expression takes far longer over than its length explains; undefined where none is. */
export function slowOn(expression: RegExp): string | undefined {
  for (const attack of attacksOn(expression)) {
    for (const length of LENGTHS) {
      if (timeOf(expression, attack(length), 1) > FLOOR && isOver(expression, attack, length))
        return JSON.stringify(attack(8));
    }
  }
  return undefined;
}

/** Whatever else the machine does can only add to a time, so the least of some is compared. */
function isOver(expression: RegExp, attack: (n: number) => string, length: number): boolean {
  const [shorter, longer] = [length / 4, length].map((n) => timeOf(expression, attack(n), 5));
  return (longer as number) > FLOOR && (longer as number) > GROWTH * Math.max(shorter as number, FLOOR / 10);
}

/** The time to apply an expression as the program applies it, ms: the least of some. */
function timeOf(expression: RegExp, text: string, times: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < times; i++) {
    expression.lastIndex = 0;
    const began = performance.now();
    if (expression.global) text.replace(expression, '');
    else expression.exec(text);
    least = Math.min(least, performance.now() - began);
  }
  return least;
}
