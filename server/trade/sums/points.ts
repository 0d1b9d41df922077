/**
 * Contact points: dwell in degrees of the distributor, speeds in engine rpm, one spark per cylinder in two turns of the
 * crank. Source: standard textbook relations; the worked examples are in the tests.
 */
import { divide, exact, type Interval, scale } from '../measure/interval.ts';

/** Degrees the distributor turns from one spark to the next: 360 / cylinders. `cylinders` is 1 or more. */
export function dwellAvailable(cylinders: number): number {
  return 360 / cylinders;
}

/** Share of the time the points are shut, in per cent. */
export function dwellPercent(dwell: Interval, cylinders: number): Interval {
  return scale(dwell, 100 / dwellAvailable(cylinders));
}

/** Dwell in degrees of the distributor from a meter that reads per cent. */
export function dwellDegrees(percent: Interval, cylinders: number): Interval {
  return scale(percent, dwellAvailable(cylinders) / 100);
}

/** Seconds from one spark to the next over all cylinders; open where the speed may be zero. */
export function sparkInterval(rpm: Interval, cylinders: number): Interval {
  return divide(exact(120 / cylinders), rpm);
}

/**
 * Seconds the coil is on for each spark: the dwell over the 3 x rpm degrees the distributor turns in a second. How many
 * cylinders there are is already in the dwell.
 */
export function coilOnTime(dwell: Interval, rpm: Interval): Interval {
  return divide(scale(dwell, 1 / 3), rpm);
}
