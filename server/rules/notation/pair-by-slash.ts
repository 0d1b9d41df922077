import { KIND, tokenSpan, tokenText } from '../../../grammar/index.ts';
import type { QuantityEntry } from '../../model/entry/entry.ts';
import type { PlaceKind } from '../../trade/vocabulary/quantity.ts';
import { tokensOf } from '../lib/line-syntax.ts';
import { type Problem, replaceWith, rule } from '../rule.ts';

export const pairBySlash = rule({
  code: 'pair-by-slash',
  severity: 'warning',
  title: 'Two values with a slash between them',
  why: 'A slash makes a fraction, so 70/75 is a little less than one. For two places, write each place before its value.',
  standing: 'notation',
  good: 'session 2026-05-02\n  main jet primary 70, secondary 75\n',
  bad: 'session 2026-05-02\n  main jet 70/75\n',
  outranks: ['outside-band', 'ten-times', 'unknown-sign', 'missing-unit', 'list-length'],
  on: ['setting', 'reading'],
  about: ({ name, places }) => ABOUT.has(name) || (places?.includes('valve') ?? false),
  formed: ({ kinds }) => kinds.includes(KIND.Fraction) || kinds.includes('n?n'),
  check: (entry) => [...fractions(entry), ...decimals(entry)],
});

/** Fractions that are two sizes of the trade. */
function fractions({ line, quantity }: QuantityEntry): Problem[] {
  return tokensOf(line, KIND.Fraction).flatMap((token) => {
    const text = tokenText(line, token);
    const [first, second] = text.split('/').map(Number) as [number, number];
    if (first < SMALLEST_SIZE || second < SMALLEST_SIZE) return [];
    const span = tokenSpan(line, token);
    const pair = placesText(quantity.places, [String(first), String(second)]);
    return [problemOf(span, text, pair)];
  });
}

/** Smallest number taken as a size: jet numbers start at about 30, and inch rules end at 64ths. */
const SMALLEST_SIZE = 20;

/** `0.32/0.37`, which the notation does not read as a fraction. */
function decimals({ line, quantity }: QuantityEntry): Problem[] {
  return [...line.tokens.kinds.matchAll(/n\?n/g)].flatMap(({ index }) => {
    if (tokenText(line, index + 1) !== '/') return [];
    const numbers = [tokenText(line, index), tokenText(line, index + 2)] as const;
    const span = { from: tokenSpan(line, index).from, to: tokenSpan(line, index + 2).to };
    return [problemOf(span, numbers.join('/'), placesText(quantity.places, numbers))];
  });
}

function problemOf(span: Problem['span'], text: string, pair: string): Problem {
  const message = `${text} is not a value here. For two places write ${pair}.`;
  return { span, message, fixes: [replaceWith(span, pair)] };
}

function placesText(
  places: readonly PlaceKind[] | undefined,
  [first, second]: readonly [string, string] | string[],
): string {
  const [one, other] = places?.includes('valve') ? ['intake', 'exhaust'] : ['primary', 'secondary'];
  return `${one} ${first}, ${other} ${second}`;
}

const ABOUT: ReadonlySet<string> = new Set([
  'main jet',
  'idle jet',
  'air bleed',
  'idle air bleed',
  'venturi',
]);
