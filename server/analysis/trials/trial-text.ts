/** Trial texts shared by its figures and its answers. */

import { valueText } from '../../model/entry/as-written.ts';
import { formatNumber, formatValue } from '../../trade/measure/format.ts';
import { exact } from '../../trade/measure/interval.ts';
import { PLATES_TOO_FAR_OPEN } from '../../trade/practice/idle-screws.ts';
import type { TrialFit } from '../../trade/sums/trials.ts';
import { each } from '../evidence/effect-text.ts';
import type { Input } from '../figure.ts';
import type { Axis, ReadTrial } from './trial.ts';
import type { WrittenTrial } from './written-trials.ts';

export interface Fitted extends ReadTrial {
  readonly fit: TrialFit;
}

export const FIT = {
  topic: 'trials',
  standing: 'published',
  source: 'least squares, and its prediction interval at 95 per cent (NIST/SEMATECH e-Handbook)',
} as const;

export const inputsOf = ({ trial }: WrittenTrial): readonly Input[] =>
  [...trial.rows.values()].map((row, i) => ({
    name: `row ${i + 1}`,
    value: [row.size, ...row.values.map((value) => valueText(value, undefined))].filter(Boolean).join(' '),
    by: row.by,
  }));

/** With its unit, rounded as that unit is read. */
export const inUnits = (value: number, { unit }: Axis): string => formatValue(exact(value), unit);

/** A difference to two figures, no finer than a tenth of a thou; one of rounding alone is none. */
export const small = (difference: number): string =>
  formatNumber(Number(Number(difference.toPrecision(2)).toFixed(4)) || 0, undefined);

/** `0.2 deg`, `0.03:1` */
export const withUnit = (number: string, { unit: { symbol } }: Axis): string =>
  symbol === '' || symbol.startsWith(':') ? number + symbol : `${number} ${symbol}`;

export const FLAT = {
  'does not move': 'does not move',
  'within noise': 'moves no more than repeats of one setting',
  'within the meter': 'moves less than a tachometer can show (1 per cent, TM 5-4210-230-14&P-1)',
  'no trend': 'shows no trend',
} as const;

export const count = (rows: number): string => (rows === 1 ? '1 row' : `${rows} rows`);

/** Response per unit of the knob, and over what range. */
export function courseText({ fit, knob, response }: Fitted): string {
  if (fit.flat) return `${response.name} ${FLAT[fit.flat]} between ${tried(fit, knob)}`;
  if (fit.model.kind === 'curve') return `a curve through ${count(fit.rows.length)}, ${tried(fit, knob)}`;
  return `${perUnit(fit.model.slope, knob, response)}, ${tried(fit, knob)}`;
}

/** From the least knob value that was tried to the greatest. */
export const tried = ({ low, high }: TrialFit, { unit }: Axis): string =>
  formatValue({ low, high, about: false }, unit);

/** `56 deg per in`, `20 rpm per number`. */
const perUnit = (slope: number, knob: Axis, response: Axis): string =>
  `${inUnits(slope, response)} per ${each(knob.unit)}`;

/** Equation of the line or curve. */
export function formulaOf({ fit, knob, response }: Fitted): string {
  if (fit.model.kind === 'curve')
    return `${response.name} as a monotone curve over ${knob.name}, which predicts a left-out row better than a line`;
  const { slope, intercept } = fit.model;
  const sign = intercept < 0 ? '-' : '+';
  return `${knob.name} x ${formatNumber(slope, undefined)} ${sign} ${inUnits(Math.abs(intercept), response)}`;
}

/** Advice where the response is flat; mixture screws without effect have a well-known cause. */
export function flatReason({ knob }: ReadTrial): string {
  const plain = 'No size can be worked out for a wanted value: first find what does move it.';
  if (knob.quantity?.name !== 'mixture') return plain;
  return `${plain} Mixture screws without effect: ${PLATES_TOO_FAR_OPEN} (common practice, no source).`;
}
