import { KIND, type Line, runSpan, type Span, tokenText } from '../../../grammar/index.ts';
import { numberOf } from '../../model/entry/value.ts';
import { LISTED_KINDS } from '../lib/kinds.ts';
import { amountsIn } from '../lib/line-syntax.ts';
import { type Problem, replaceWith, rule } from '../rule.ts';

export const reversedRange = rule({
  code: 'reversed-range',
  severity: 'warning',
  title: 'A range that runs from high to low',
  why: 'It is read from the lower to the higher number, but a range written backwards may have a mistyped number.',
  standing: 'notation',
  good: 'targets\n  idle 750..800 rpm\n',
  bad: 'targets\n  idle 800..750 rpm\n',
  on: LISTED_KINDS,
  formed: ({ kinds }) => kinds.includes(KIND.Dots),
  check({ line }) {
    if (!line.tokens.kinds.includes(KIND.Dots)) return [];
    const found: Problem[] = [];
    for (const { prefix, lowSign, low, link, highSign, high } of amountsIn(line.syntax)) {
      if (low === undefined || link === undefined || high === undefined) continue;
      if (line.tokens.kinds[link] !== KIND.Dots) continue;
      const sign = prefix !== undefined && line.tokens.kinds[prefix] === KIND.Minus ? prefix : lowSign;
      const [from, to] = [signedNumber(line, sign, low), signedNumber(line, highSign, high)];
      if (!descends(from, to)) continue;
      const span = runSpan(line, [sign ?? low, high + 1]);
      found.push({
        span,
        message: `This range runs from ${from} down to ${to}; it is read as ${to}..${from}.`,
        fixes: joinsNumber(line, span, to) ? [] : [replaceWith(span, `${to}..${from}`)],
      });
    }
    return found;
  },
});

/** A fraction right after another number would be read together with it: `9 3/8`. */
const joinsNumber = (line: Line, { from }: Span, fraction: string): boolean =>
  /^\d+\//.test(fraction) && /\d\s*$/.test(line.text.slice(0, from));

/** A number as written, with its minus sign. */
const signedNumber = (line: Line, sign: number | undefined, number: number): string =>
  `${sign !== undefined && line.tokens.kinds[sign] === KIND.Minus ? '-' : ''}${tokenText(line, number)}`;

function descends(from: string, to: string): boolean {
  const [first, second] = [sizeOf(from), sizeOf(to)];
  return first !== undefined && second !== undefined && first > second;
}

function sizeOf(text: string): number | undefined {
  const size = numberOf(text.replace(/^-/, ''));
  if (typeof size !== 'number') return undefined;
  return text.startsWith('-') ? -size : size;
}
