/** The table of known effects: what one change alone did to one reading, how often it was seen, and how far it is told from noise. */

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
  /** From the least to the greatest of `sizes`. */
  readonly spread: number;
  /** How many of them with the air moved by 3 per cent or more. */
  readonly airMoved: number;
  readonly verdict: Verdict;
}

type Verdict = 'told from noise' | 'within the noise' | 'noise not known' | 'not the same each time';

/**
 * Only comparisons with one change count; the latest stands last. `word`: what caused it or was read; all without one.
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
  /** The way a change in words went; a number's is in its size. */
  readonly forth: boolean;
  /** The difference itself, which is what noise is held against. */
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
  /** The same both ways: back from the second to the first is the same cause the other way round. */
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
  const told = (from: string, to: string) => `${causeText(change)}: ${from} -> ${to}`;
  const forth = before <= after;
  return { cause: told(before, after), either: forth ? told(before, after) : told(after, before), forth };
}

/** Told the way it was seen first. */
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
 * With noise known, an effect is credited when at least half of what was seen stands out of it, all the same way. Without,
 * only where repeats of the change itself tell their mean from nought at 95 per cent (Student's t): never on one reading.
 */
function verdictOf(seen: readonly Seen[], noise: Noise | undefined): Verdict {
  if (!noise) return verdictByRepeats(seen.map(({ size }) => size));
  const least = leastReal(noise);
  const out = seen.filter(({ difference }) => Math.abs(difference) > least);
  if (out.length === 0 || 2 * out.length < seen.length) return 'within the noise';
  return new Set(out.map(({ size }) => Math.sign(size))).size === 1
    ? 'told from noise'
    : 'not the same each time';
}

function verdictByRepeats(sizes: number[]): Verdict {
  if (sizes.length < 2) return 'noise not known';
  const half = (studentT(sizes.length - 1) * sampleStandardDeviation(sizes)) / Math.sqrt(sizes.length);
  return Math.abs(mean(sizes)) > half ? 'told from noise' : 'not the same each time';
}

/** How one difference stands against the noise of its family; undefined where no repeat tells it. */
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
 * The least difference of two readings that 19 times in 20 is more than noise: Student's t for the repeats at hand times
 * the root of 2 times their deviation. For many repeats that is the 2.8 deviations of ISO 5725-6; for few it is more.
 */
export const leastReal = ({ deviation, degrees }: Noise): number =>
  studentT(Math.min(degrees, MANY)) * Math.SQRT2 * deviation;
