/**
 * `npm run fuzz -- [NAME...] [--seed N] [--minutes M] [--runs R] [--path P]`: fuzzers one after another, a line each; what
 * breaks is made as small as it gets and printed with the seed and the path that repeat it. Exit 1 where something broke.
 */
import { parseArgs } from 'node:util';
import fc from 'fast-check';
import type { Fuzzer } from './fuzzer.ts';
import { FUZZERS } from './fuzzers.ts';

/** The whole of a longer case comes back with its seed and path. */
const LONGEST_SHOWN = 2000;

interface Choice {
  readonly seed: number;
  /** For each fuzzer. */
  readonly minutes: number;
  readonly runs: number;
  /** Of a failure, to repeat it alone; empty for all. */
  readonly path: string;
}

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: {
    seed: { type: 'string', default: String(Date.now() % 2 ** 31) },
    minutes: { type: 'string', default: '1' },
    runs: { type: 'string', default: String(Number.MAX_SAFE_INTEGER) },
    path: { type: 'string', default: '' },
  },
});
const choice: Choice = {
  seed: Number(values.seed),
  minutes: Number(values.minutes),
  runs: Number(values.runs),
  path: values.path,
};

const unknown = positionals.filter((name) => FUZZERS.every((fuzzer) => fuzzer.name !== name));
const isNumeric = [choice.seed, choice.minutes, choice.runs].every(Number.isFinite);
if (unknown.length > 0 || !isNumeric) {
  console.error(
    `usage: npm run fuzz -- [${FUZZERS.map(({ name }) => name).join('|')}]... [--seed N] [--minutes M] [--runs R] [--path P]`,
  );
  process.exit(2);
}

let failed = 0;
for (const fuzzer of FUZZERS)
  if (positionals.length === 0 || positionals.includes(fuzzer.name)) failed += await run(fuzzer, choice);
// A server of a talk that broke off may still hold a timer.
process.exit(failed ? 1 : 0);

/** @returns how many failures: a fuzzer stops at its first. */
async function run(fuzzer: Fuzzer, { seed, minutes, runs, path }: Choice): Promise<number> {
  const start = performance.now();
  const result = await fc.check(fuzzer.property() as fc.IAsyncProperty<[unknown]>, {
    seed,
    path,
    numRuns: runs,
    plugins: [fc.interruptAfterTimeLimit(minutes * 60_000)],
  });
  const failures = result.failed ? 1 : 0;
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  const steps = result.numRuns * fuzzer.stepsPerRun;
  console.log(`${fuzzer.name.padEnd(10)} ${steps} steps, ${seconds} s, ${failures} failures, seed ${seed}`);
  if (result.failed) {
    console.log(
      `  repeat: npm run fuzz -- ${fuzzer.name} --seed ${result.seed} --path ${result.counterexamplePath}`,
    );
    console.log(
      `  case, made smaller ${result.numShrinks} times: ${shown(fc.stringify(result.counterexample))}`,
    );
    console.log(`  ${String((result.errorInstance as Error | null)?.stack ?? result.errorInstance)}`);
  }
  return failures;
}

function shown(text: string): string {
  return text.length > LONGEST_SHOWN
    ? `${text.slice(0, LONGEST_SHOWN)}... (${text.length} characters)`
    : text;
}
