/** How a law is written: its number and name, any value it speaks of, and what must hold. */
import fc from 'fast-check';
import { test } from 'vitest';

/**
 * The same values at every run, so that the same code has the same answer. More and other ones by hand:
 * `LAW_RUNS=5000 npx vitest run tests/laws`; a failure prints its seed, and `LAW_SEED` runs it again.
 */
const RUNS = Number(process.env.LAW_RUNS ?? 200);
export const SEED = Number(process.env.LAW_SEED ?? (process.env.LAW_RUNS ? Date.now() : 1));
const LONGEST = 10 * 60_000;

/** `share`: how many runs of the usual number, for values that take long. */
export function law<T>(name: string, values: fc.Arbitrary<T>, holds: (value: T) => void, share = 1): void {
  const numRuns = Math.max(1, Math.round(RUNS * share));
  test(name, () => fc.assert(fc.property(values, holds), { numRuns, seed: SEED }), LONGEST);
}
