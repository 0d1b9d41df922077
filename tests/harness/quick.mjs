/** What `npm run test:quick` leaves out of `npm test`. */

/** Tests that take long, each with its reason. */
export const SLOW_TESTS = [
  'tests/lsp/rename-in-all.test.ts', // two thousand notebooks on a disk, four times
  'tests/lsp/used-many.test.ts', // five thousand notebooks that use one another
  'tests/lsp/long-answers.test.ts', // notebooks long enough for an answer to take seconds
  'tests/lsp/endings.test.ts', // starts a server for each way to end it
  'tests/lsp/too-many.test.ts', // more findings than an editor is shown
  'tests/cli/failing-disk.test.ts', // a process for each call that may fail
  'tests/cli/odd-files.test.ts', // builds the program and starts it for each odd file
  'tests/cli/process.test.ts', // the same, for each way to start it
  'tests/cli/samples.test.ts', // check and show of every sample, against tests/golden
  'tests/features/own-names.test.ts', // every feature with every name that an object has
  'tests/figures/any-text.test.ts', // every figure of any text
  'tests/tidy/expressions.test.ts', // every regular expression against long texts
  'tests/laws/growth.test.ts', // opens notebooks of thousands of lines, of each kind
  'tests/laws/stream.test.ts', // long texts read once, beside the same as snapshots
  'tests/fuzz/**', // some hundred steps of each fuzzer
];

/** Few runs of each law, always the same ones. */
export const FEW_RUNS = { LAW_RUNS: '5', LAW_SEED: '1' };
