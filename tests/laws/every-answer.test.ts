/** Law 5, of every answer; the failures that were met are kept as rows. */
import fc from 'fast-check';
import { test } from 'vitest';
import { edits } from '../fuzz/edits.ts';
import { SEED } from './law.ts';

const RUNS = Math.round(Number(process.env.LAW_RUNS ?? 200) / 8);

test('law 5: every answer of an edited notebook is that of its text opened anew', {
  timeout: 600_000,
}, () => {
  fc.assert(edits.property() as fc.IProperty<unknown>, { numRuns: RUNS, seed: SEED });
});
