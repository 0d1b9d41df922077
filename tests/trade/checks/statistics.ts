import { mad, mean, median, std } from 'mathjs';
import { curveAt, monotone } from '../../../server/trade/measure/curves.ts';
import { coldCylinders, numbered, summarize } from '../../../server/trade/sums/cylinders.ts';
import { compareWithPast, noiseOf } from '../../../server/trade/sums/noise.ts';
import { studentT } from '../../../server/trade/sums/student-t.ts';
import { fitTrial, responseAt, type TrialFit } from '../../../server/trade/sums/trials.ts';
import { type Check, check, given } from './check.ts';
import { NORRIS } from './norris.ts';

const norris = fitTrial(NORRIS);

function line(fit: TrialFit | undefined): { slope: number; intercept: number } {
  return fit?.model.kind === 'line' ? fit.model : { slope: Number.NaN, intercept: Number.NaN };
}

/** Degrees of freedom and the two-sided 95 per cent t, as printed. */
const T_TABLE: readonly (readonly [number, number])[] = [
  [1, 12.706],
  [2, 4.303],
  [3, 3.182],
  [4, 2.776],
  [5, 2.571],
  [10, 2.228],
  [30, 2.042],
  [100, 1.984],
];

const knotted = [
  [100, 26.6],
  [300, 34.71],
  [1200, 44.36],
  [4000, 48.77],
].map(([rate = Number.NaN, y = Number.NaN]) => ({ x: Math.log10(rate), y, weight: 1 }));

/** The published curve at four of six places evenly spaced from log10(100) to log10(4500). */
const CURVE: readonly (readonly [number, number])[] = [
  [1, 32.26732798],
  [2, 37.90293207],
  [3, 43.28930106],
  [4, 46.80303567],
];

function pooledAt(values: readonly number[], weights: readonly number[], index: number): number {
  const knots = values.map((y, x) => ({ x, y, weight: weights[x] ?? 1 }));
  return given(monotone(knots)[index]?.y);
}

/** Eight tubes at idle, degF, published with the judgement that they were nothing to worry about. */
const IDLE_TUBES = [300, 300, 530, 450, 360, 470, 350, 390];
const REPEATS = [17, 17.5, 16.8, 17.2, 17.9, 17.1];

export const STATISTICS_CHECKS: readonly Check[] = [
  check('nist-strd', 'Norris, slope', 1.00211681802045, 1e-12, () => line(norris).slope),
  check('nist-strd', 'Norris, intercept', -0.262323073774029, 1e-11, () => line(norris).intercept),
  check('nist-strd', 'Norris, residual standard deviation', 0.884796396144373, 1e-11, () =>
    given(norris?.spread),
  ),
  // At the mean of the knobs the half-interval is t s sqrt(1 + 1/n), all three certified or printed (t of 34 by the table).
  check(
    'nist-strd',
    'Norris, half of the 95 per cent interval at the mean',
    2.032 * 0.884796396144373 * Math.sqrt(1 + 1 / 36),
    0.001,
    () => {
      const centre = mean(...NORRIS.map((row) => row.knob));
      if (norris === undefined) return Number.NaN;
      const { value, high } = responseAt(norris, centre);
      return given(high) - value;
    },
  ),
  ...T_TABLE.map(([degrees, t]) =>
    check('nist-ehandbook', `t of ${degrees} degrees of freedom, 95 per cent`, t, 0.0006, () =>
      studentT(degrees),
    ),
  ),
  check('order-inference', 'pooled mean of 22.5, 23.333, 20.833 with weights 3', 22.222, 0.0005, () =>
    pooledAt([22.5, 23.333, 20.833, 24.25], [3, 3, 3, 2], 1),
  ),
  check('order-inference', 'value after the pooled ones, left as it is', 24.25, 1e-9, () =>
    pooledAt([22.5, 23.333, 20.833, 24.25], [3, 3, 3, 2], 3),
  ),
  ...CURVE.map(([place, y]) =>
    check('scipy-pchip', `monotone curve at place ${place}`, y, 1e-7, () =>
      curveAt(knotted, 2 + ((Math.log10(4500) - 2) * place) / 5),
    ),
  ),
  check('mathjs', 'mean of the idle tubes, degF', mean(IDLE_TUBES), 1e-9, () =>
    given(summarize(numbered(IDLE_TUBES))?.mean),
  ),
  check('mathjs', 'median of the idle tubes, degF', median(IDLE_TUBES), 1e-9, () =>
    given(summarize(numbered(IDLE_TUBES))?.median),
  ),
  check('mathjs', 'median absolute deviation of repeats', mad(REPEATS), 1e-9, () =>
    given(compareWithPast(REPEATS, 17)?.deviation),
  ),
  check(
    'nist-ehandbook',
    'modified z-score of 20 against repeats',
    (0.6745 * (20 - median(REPEATS))) / mad(REPEATS),
    1e-9,
    () => given(compareWithPast(REPEATS, 20)?.score),
  ),
  check('mathjs', 'standard deviation of repeats', Number(std(REPEATS)), 1e-9, () =>
    given(noiseOf([REPEATS])?.deviation),
  ),
  check(
    'magazine-idle',
    'tubes told apart as cold in the published idle example',
    0,
    1e-9,
    () => coldCylinders(numbered(IDLE_TUBES.map((each) => (each - 32) / 1.8))).length,
  ),
];
