/** Each fuzzer for a few hundred steps, always the same ones, and all that fuzzing has broken. More by hand: `npm run fuzz`. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CASES, type Case } from './cases.ts';
import type { Fuzzer } from './fuzzer.ts';
import { FUZZERS } from './fuzzers.ts';

const SEED = 1;
const LONGEST = 10 * 60_000;

/** Few where a run takes long: all of it takes some seconds. */
const RUNS: Readonly<Record<string, number>> = {
  edits: 40,
  requests: 15,
  formats: 40,
  actions: 60,
  names: 40,
  csv: 600,
};

type Property = fc.IAsyncProperty<unknown[]>;

test.each(FUZZERS)(
  '$name',
  ({ name, property }: Fuzzer) =>
    fc.assert(property() as Property, { seed: SEED, numRuns: RUNS[name] ?? 100, endOnFailure: true }),
  LONGEST,
);

test.each(CASES)('$fuzzer: $was', async ({ fuzzer, value }: Case) => {
  const found = FUZZERS.find(({ name }) => name === fuzzer);
  expect(found).toBeDefined();
  const property = (found as Fuzzer).property() as Property;
  await fc.assert(property, { examples: [[...value]], numRuns: 1, endOnFailure: true });
});
