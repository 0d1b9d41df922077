/** Known effects: what one change alone did to one reading, how often it was seen, and whether it is clear of the scatter. */
import { mean, sampleStandardDeviation } from 'simple-statistics';
import { once } from '../../memo.ts';
import type { Unit } from '../../trade/measure/units.ts';
import type { Noise } from '../../trade/sums/noise.ts';
import { studentT } from '../../trade/sums/student-t.ts';
import { airMoved, type Comparison, type Evidence, numberOf } from './comparisons.ts';
import type { Observation } from './observations.ts';
import { type Changed, oneChange, settingOrWordsText, sizeOf } from './setup-changes.ts';

export interface Effect {
  /** `initial`, `mixture left`, `vacuum source: manifold -> ported`. */
  readonly cause: string;
  /** Of the cause, where it is a number: the effect is for each one of these. */
  readonly per: Unit | undefined;
  readonly causeName: string;
  /** The latest of what was read. */
  readonly reading: Observation;
  /** In the reading's usual unit, for each `per`. */
  readonly sizes: readonly number[];
  readonly mean: number;
  /** Difference between the largest and the smallest of `sizes`. */
  readonly spread: number;
  /** How many of them with air density changed by 3 per cent or more. */
  readonly airMoved: number;
  readonly verdict: Verdict;
}

type Verdict = 'clear of the scatter' | 'within the scatter' | 'scatter not known' | 'not consistent';

/**
 * Only comparisons with one change count; latest last. `word`: what caused it or was read; all without one.
 */
export function effectsIn({ comparisons, noise }: Evidence, word: string | undefined): readonly Effect[] {
  const seen = new Map<string, Seen[]>();
  for (const comparison of comparisons) {
    const one = comparison.after.ofList ? undefined : seenIn(comparison);
    if (!one || (word !== undefined && one.causeName !== word && comparison.after.quantity.name !== word))
      continue;
    const before = seen.get(one.key);
    if (before) before.push(one);
    else seen.set(one.key, [one]);
  }
  return [...seen.values()].map((each) => effectOf(each, noise));
}

interface Seen {
  readonly key: string;
  readonly cause: string;
  readonly causeName: string;
  readonly per: Unit | undefined;
  readonly size: number;
  /** Direction of a change in words; that of a number is in its sign. */
  readonly forth: boolean;
  /** The raw difference, which is compared with the scatter. */
  readonly difference: number;
  readonly comparison: Comparison;
}

/** What one change alone did; undefined where there was not one change. Kept with the comparison, of which a keystroke leaves nearly all as they are. */
const seenIn = once((comparison: Comparison): Seen | undefined => {
  const { changes, after } = comparison;
  const change = oneChange(changes);
  const difference = numberOf(comparison.difference);
  if (!change || difference === undefined) return undefined;
  const amount = sizeOf(change);
  const measured = change.amount && amount !== undefined && amount !== 0;
  const { cause, either, forth } = measured ? causeInNumbers(change) : causeInWords(change);
  return {
    key: `${either}|${after.key}`,
    cause,
    forth,
    causeName: change.name,
    per: measured ? change.amount?.unit : undefined,
    size: measured ? difference / amount : difference,
    difference,
    comparison,
  };
});

export const causeText = ({ name, place }: Changed): string => (place === '' ? name : `${name} ${place}`);

interface Cause {
  readonly cause: string;
  /** One key for both directions: going back is the same cause reversed. */
  readonly either: string;
  readonly forth: boolean;
}

const causeInNumbers = (change: Changed): Cause => ({
  cause: causeText(change),
  either: causeText(change),
  forth: true,
});

function causeInWords(change: Changed): Cause {
  const [before, after] = [change.before, change.after].map((stood) =>
    stood === undefined ? 'not written' : settingOrWordsText(stood),
  ) as [string, string];
  const arrow = (from: string, to: string) => `${causeText(change)}: ${from} -> ${to}`;
  const forth = before <= after;
  return { cause: arrow(before, after), either: forth ? arrow(before, after) : arrow(after, before), forth };
}

/** Shown in the direction it was first seen. */
function effectOf(all: readonly Seen[], noises: Evidence['noise']): Effect {
  const first = all[0] as Seen;
  const seen = all.map((each) => (each.forth === first.forth ? each : { ...each, size: -each.size }));
  const latest = seen.at(-1) as Seen;
  const sizes = seen.map(({ size }) => size);
  const { after } = latest.comparison;
  return {
    cause: first.cause,
    causeName: latest.causeName,
    per: latest.per,
    reading: after,
    sizes,
    mean: mean(sizes),
    spread: Math.max(...sizes) - Math.min(...sizes),
    airMoved: seen.filter(({ comparison }) => airMoved(comparison)).length,
    verdict: verdictOf(seen, noises.get(after.family)),
  };
}

/**
 * With known scatter an effect is credited when at least half of its differences exceed it, all in one direction. Without,
 * only where the mean of repeated changes differs from zero at 95 per cent (Student's t): never on one reading.
 */
function verdictOf(seen: readonly Seen[], noise: Noise | undefined): Verdict {
  if (!noise) return verdictByRepeats(seen.map(({ size }) => size));
  const least = leastReal(noise);
  const out = seen.filter(({ difference }) => Math.abs(difference) > least);
  if (out.length === 0 || 2 * out.length < seen.length) return 'within the scatter';
  return new Set(out.map(({ size }) => Math.sign(size))).size === 1
    ? 'clear of the scatter'
    : 'not consistent';
}

function verdictByRepeats(sizes: number[]): Verdict {
  if (sizes.length < 2) return 'scatter not known';
  const half = (studentT(sizes.length - 1) * sampleStandardDeviation(sizes)) / Math.sqrt(sizes.length);
  return Math.abs(mean(sizes)) > half ? 'clear of the scatter' : 'not consistent';
}

/** Whether a difference is within its family's scatter; undefined where there are no repeats. */
export function againstNoise(
  { after, difference }: Comparison,
  { noise }: Evidence,
): { readonly least: number; readonly noise: Noise; readonly within: boolean } | undefined {
  const known = noise.get(after.family);
  const size = numberOf(difference);
  if (!known || size === undefined) return undefined;
  const least = leastReal(known);
  return { least, noise: known, within: Math.abs(size) <= least };
}

/** Degrees of freedom past which Student's t no longer differs in the figures shown. */
const MANY = 200;

/**
 * The least difference of two readings that exceeds the scatter 19 times in 20: Student's t for the repeats at hand times
 * the root of 2 times their deviation. For many repeats that is the 2.8 deviations of ISO 5725-6; for few it is more.
 */
export const leastReal = ({ deviation, degrees }: Noise): number =>
  studentT(Math.min(degrees, MANY)) * Math.SQRT2 * deviation;
