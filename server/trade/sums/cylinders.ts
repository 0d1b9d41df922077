/** Cylinder sums: spread, hottest and coldest, by bank, in firing order, and a cylinder that is not firing. */
import { mad, mean, median } from 'simple-statistics';

/** A value and the cylinder it was read on, numbered from 1. */
export interface CylinderValue {
  readonly cylinder: number;
  readonly value: number;
}

/** Summary of a set of readings, in their unit. */
interface CylinderSummary {
  readonly mean: number;
  readonly median: number;
  readonly spread: number;
  readonly highest: CylinderValue;
  readonly lowest: CylinderValue;
}

/** A cold tube, with what it was compared with. */
export interface ColdCylinder extends CylinderValue {
  /** Median of the other tubes, degC. */
  readonly othersMedian: number;
  /** Its rise over the surroundings as a fraction of the others'. */
  readonly riseFraction: number;
}

/**
 * What makes a tube cold. Common practice, no source for the fractions: a rise over the surroundings under `dead` of the
 * others' is a cylinder not firing; under `weak` it is one only if it is also outside the others' own scatter by
 * `score` (the modified z-score limit of the NIST/SEMATECH e-Handbook). Spread alone at idle says little.
 */
export const COLD_RULE = { dead: 0.35, weak: 0.65, score: 3.5, standing: 'common practice' } as const;

/** Pairs values in cylinder order with their cylinder number; a value missing is left out. */
export function numbered(values: readonly (number | undefined)[]): CylinderValue[] {
  return values.flatMap((value, index) => (value === undefined ? [] : [{ cylinder: index + 1, value }]));
}

/** Mean, median, spread and the two ends of a set of readings; undefined for none. */
export function summarize(readings: readonly CylinderValue[]): CylinderSummary | undefined {
  const [first, ...rest] = readings;
  if (first === undefined) return undefined;
  const values = readings.map((each) => each.value);
  const highest = rest.reduce((best, each) => (each.value > best.value ? each : best), first);
  const lowest = rest.reduce((best, each) => (each.value < best.value ? each : best), first);
  return {
    mean: mean(values),
    median: median(values),
    spread: highest.value - lowest.value,
    highest,
    lowest,
  };
}

/** The readings in the order the cylinders fire; a cylinder without a reading is left out. */
export function inFiringOrder(readings: readonly CylinderValue[], order: readonly number[]): CylinderValue[] {
  return order.flatMap((cylinder) => readings.find((each) => each.cylinder === cylinder) ?? []);
}

/** Pairs of neighbouring cylinders, from the banks front to rear. */
export function neighbours(banks: readonly (readonly number[])[]): [number, number][] {
  return banks.flatMap((bank) =>
    bank.slice(1).map((cylinder, index): [number, number] => [bank[index] ?? cylinder, cylinder]),
  );
}

/**
 * The tubes that look as if their cylinder is not firing, from temperatures in degC (a fraction of a rise means nothing
 * without its zero). Fewer than three readings are not judged, nor are tubes whose neighbours are not warm themselves.
 */
export function coldCylinders(readings: readonly CylinderValue[], surroundingsCelsius = 20): ColdCylinder[] {
  if (readings.length < 3 || areClose(readings, surroundingsCelsius)) return [];
  return readings.flatMap((each) => {
    const others = readings.filter((other) => other !== each).map((other) => other.value);
    const cold = compareWithOthers(each, others, surroundingsCelsius);
    return isCold(cold, others) ? [cold] : [];
  });
}

/** Quick test: if even the coldest has its share of the hottest's rise, no median is needed. */
function areClose(readings: readonly CylinderValue[], surroundings: number): boolean {
  const values = readings.map((reading) => reading.value);
  return Math.min(...values) - surroundings >= COLD_RULE.weak * (Math.max(...values) - surroundings);
}

function compareWithOthers(reading: CylinderValue, others: number[], surroundings: number): ColdCylinder {
  const othersMedian = median(others);
  const rise = othersMedian - surroundings;
  const riseFraction = rise > 0 ? (reading.value - surroundings) / rise : 1;
  return { ...reading, othersMedian, riseFraction };
}

function isCold(reading: ColdCylinder, others: number[]): boolean {
  if (reading.riseFraction < COLD_RULE.dead) return true;
  if (reading.riseFraction >= COLD_RULE.weak) return false;
  return 0.6745 * (reading.othersMedian - reading.value) > COLD_RULE.score * mad(others);
}
