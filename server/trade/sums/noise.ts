/** Outliers against past readings, and scatter from repeat readings. */
import { mad, mean, median } from 'simple-statistics';

/** Fewest past readings an odd one is judged against. */
const FEWEST_PAST = 5;

/** Modified z-score past which a reading is flagged (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17). */
export const SCORE_LIMIT = 3.5;

/** A difference from the median under this share of it is within what gauges and readers do. Common practice, no source. */
export const WITHIN_GAUGES = 0.05;

/** Two readings of one thing differ by less than this many standard deviations 19 times in 20 (ISO 5725-6). */
export const REPEATABILITY = 2.8;

/** Comparison of a reading with its own past, in its own unit. */
export interface PastComparison {
  readonly median: number;
  /** Median absolute deviation of the past from its median. */
  readonly deviation: number;
  /** How far out the reading is: 0.6745 x distance / deviation. */
  readonly score: number;
  /** The reading is worth a question. */
  readonly odd: boolean;
  readonly count: number;
}

/** Noise of a quantity from repeats: standard deviation, and its degrees of freedom. */
export interface Noise {
  readonly deviation: number;
  readonly degrees: number;
}

/**
 * Compares a reading with the past ones taken under the same conditions (itself not among them). When more than half of the
 * past is one value the mean absolute deviation replaces the median one. Undefined for fewer than five past readings,
 * or a past without any scatter, against which nothing can be measured.
 */
export function compareWithPast(past: readonly number[], reading: number): PastComparison | undefined {
  if (past.length < FEWEST_PAST) return undefined;
  const values = [...past];
  const centre = median(values);
  const deviation = mad(values);
  const unit = deviation > 0 ? deviation / 0.6745 : 1.253314 * meanDeviation(values, centre);
  if (!(unit > 0)) return undefined;
  const distance = Math.abs(reading - centre);
  const score = distance / unit;
  const odd = score > SCORE_LIMIT && distance > WITHIN_GAUGES * Math.abs(centre);
  return { median: centre, deviation, score, odd, count: past.length };
}

function meanDeviation(values: readonly number[], centre: number): number {
  return mean(values.map((value) => Math.abs(value - centre)));
}

/**
 * Noise from groups of repeat readings, each group taken with nothing changed: the pooled standard deviation. Groups of one
 * are left out, and so is one that strays far more than the others (4 times their median, from five groups on) was no repeat: something
 * happened to the engine. Undefined when none has two.
 */
export function noiseOf(groups: readonly (readonly number[])[]): Noise | undefined {
  const repeats = withoutStray(groups.filter((group) => group.length > 1));
  const degrees = repeats.reduce((sum, group) => sum + group.length - 1, 0);
  if (degrees === 0) return undefined;
  const squares = repeats.reduce((sum, group) => sum + squaresAboutMean(group), 0);
  return { deviation: Math.sqrt(squares / degrees), degrees };
}

/** Fewest groups among which one can be found to stray. */
const FEWEST_GROUPS = 5;

/** Of pairs of normal readings, about one in 150 strays by more than this many times the median pair. */
const STRAY = 4;

function withoutStray(repeats: readonly (readonly number[])[]): readonly (readonly number[])[] {
  if (repeats.length < FEWEST_GROUPS) return repeats;
  const strays = repeats.map((group) => Math.sqrt(squaresAboutMean(group) / (group.length - 1)));
  const moved = strays.filter((stray) => stray > 0);
  const usual = median(strays) || (moved.length > 1 ? median(moved) : Number.POSITIVE_INFINITY);
  return repeats.filter((_, i) => (strays[i] ?? 0) <= STRAY * usual);
}

function squaresAboutMean(group: readonly number[]): number {
  const centre = mean([...group]);
  return group.reduce((sum, value) => sum + (value - centre) ** 2, 0);
}
