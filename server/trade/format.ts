/** Values as they are printed: short, in the notation's own signs, never finer than they are worth. */
import type { Interval } from './interval.ts';
import type { Unit } from './units.ts';

const FIGURES = 4;

/**
 * A value in its unit, as the notation itself would write it: `9 deg`, `~480 F`, `450..580 F`, `<= 34 deg`. The
 * numbers are taken to be in `unit` already; a value that may be anything is `any`.
 */
export function formatValue(iv: Interval, unit: Unit | undefined): string {
  const numbers = formatNumbers(iv, (n) => formatNumber(n, unit));
  const symbol = unit?.symbol ?? '';
  if (symbol === '' || symbol.startsWith(':')) return numbers + symbol;
  return `${numbers} ${symbol === 'turns' && numbers === '1' ? 'turn' : symbol}`;
}

/** A number to four significant figures without idle noughts; whole numbers in full; temperatures to whole degrees. */
export function formatNumber(n: number, unit: Unit | undefined): string {
  if (unit?.dimension === 'temperature' || Math.abs(n) >= 10 ** (FIGURES - 1)) return String(Math.round(n));
  return String(Number(n.toPrecision(FIGURES)));
}

function formatNumbers(iv: Interval, number: (n: number) => string): string {
  const rough = iv.about ? '~' : '';
  if (iv.low === -Infinity) return iv.high === Infinity ? 'any' : `<= ${rough}${number(iv.high)}`;
  if (iv.high === Infinity) return `>= ${rough}${number(iv.low)}`;
  const [low, high] = [number(iv.low), number(iv.high)];
  return low === high ? rough + low : `${rough}${low}..${high}`;
}
