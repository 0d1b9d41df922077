/** Formatting of values: short, in the notation's own symbols, no finer than their precision. */
import type { Interval } from './interval.ts';
import type { Unit } from './units.ts';

const FIGURES = 4;

/**
 * A value in its unit, as the notation itself would write it: `9 deg`, `~205 kPa`, `190..220 kPa`, `<= 34 deg`. The
 * numbers are taken to be in `unit` already; a value that may be anything is `any`.
 */
export function formatValue(iv: Interval, unit: Unit | undefined): string {
  const numbers = formatNumbers(iv, (n) => formatNumber(n, unit));
  const symbol = unit?.symbol ?? '';
  if (!unit || symbol === '' || symbol.startsWith(':')) return numbers + symbol;
  return `${numbers} ${symbolAfter(numbers, unit)}`;
}

/** A unit as it is printed after a number: `1 turn`, `3/4 turn`, `1 1/2 turns`. */
export const symbolAfter = (numbers: string, { symbol }: Unit): string =>
  /^-?(?:1|\d+\/\d+)$/.test(numbers) ? (ONE_OF.get(symbol) ?? symbol) : symbol;

const ONE_OF: ReadonlyMap<string, string> = new Map(
  Object.entries({
    turns: 'turn',
    flats: 'flat',
    steps: 'step',
    clicks: 'click',
    holes: 'hole',
    days: 'day',
    weeks: 'week',
    'heat cycles': 'heat cycle',
  }),
);

/**
 * Turns in eighths and inches in 64ths, where they come out even, as they are said at the bench; any other
 * number to four significant figures without trailing zeros; whole numbers in full; temperatures to whole degrees and
 * angles to tenths, as finely as a timing mark can be read.
 */
export function formatNumber(n: number, unit: Unit | undefined): string {
  const fraction = unit && inFraction(n, FINEST_FRACTION.get(unit.id) ?? 0);
  if (fraction) return fraction;
  if (unit?.dimension === 'temperature' || Math.abs(n) >= 10 ** (FIGURES - 1)) return String(Math.round(n));
  if (TO_TENTHS.has(unit?.dimension ?? '')) return String(Number(n.toFixed(1)));
  return String(Number(n.toPrecision(FIGURES)));
}

/**
 * A value known to within `half` on either side, and that span: both to two figures of `half`, so that no
 * meaningless digit is shown. Turns and inches that come out even stay fractions.
 */
export function formatWithin(
  value: number,
  span: Pick<Interval, 'low' | 'high'>,
  unit: Unit | undefined,
): { readonly value: string; readonly span: string } {
  const half = (span.high - span.low) / 2;
  const finest = Number.isFinite(half) && half > 0 ? 10 ** (Math.floor(Math.log10(half)) - 1) : 0;
  const roundEnd = (n: number): Interval => {
    const even = unit && inFraction(n, FINEST_FRACTION.get(unit.id) ?? 0) !== undefined;
    const rounded = finest === 0 || even ? n : Math.round(n / finest) * finest;
    return { low: rounded, high: rounded, about: false };
  };
  return {
    value: formatValue(roundEnd(value), unit),
    span: formatValue({ low: roundEnd(span.low).low, high: roundEnd(span.high).high, about: false }, unit),
  };
}

const TO_TENTHS: ReadonlySet<string> = new Set(['angle', 'angle per rotation']);
const FINEST_FRACTION: ReadonlyMap<string, number> = new Map(Object.entries({ turn: 8, in: 64 }));

/** `1 1/2`; undefined for whole numbers and for what does not come out even. */
function inFraction(n: number, finest: number): string | undefined {
  const parts = Math.round(Math.abs(n) * finest);
  if (finest === 0 || parts % finest === 0 || Math.abs(Math.abs(n) * finest - parts) > 1e-6) return undefined;
  const below = finest / commonTwos(parts, finest);
  const above = (parts * below) / finest;
  const whole = Math.floor(above / below);
  return `${n < 0 ? '-' : ''}${whole > 0 ? `${whole} ` : ''}${above - whole * below}/${below}`;
}

const commonTwos = (a: number, b: number): number => (a % 2 || b % 2 ? 1 : 2 * commonTwos(a / 2, b / 2));

function formatNumbers(iv: Interval, number: (n: number) => string): string {
  const rough = iv.about ? '~' : '';
  if (iv.low === -Infinity) return iv.high === Infinity ? 'any' : `<= ${rough}${number(iv.high)}`;
  if (iv.high === Infinity) return `>= ${rough}${number(iv.low)}`;
  const [low, high] = [number(iv.low), number(iv.high)];
  return low === high ? rough + low : `${rough}${low}..${high}`;
}

/** The text with its first letter capital; any other first character stays. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
