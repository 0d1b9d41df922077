/** What the editor calls: runs the tests one after another and says how many passed. */
import { MARK } from '../evidence.ts';
import { TESTS } from './tests.ts';

const LIMIT_MS = 600_000;

/** Rejects when a test failed or none ran, which the editor turns into its exit status. */
export async function run(): Promise<void> {
  const here = typeof process === 'object' ? 'node' : 'web worker';
  let passed = 0;
  let failed = 0;
  for (const { name, host, test } of TESTS) {
    if (host && host !== here) continue;
    const failure = await outcome(test);
    console.log(`${MARK}  ${failure ? 'FAILED' : 'ok'} ${name}${failure ? `: ${failure}` : ''}`);
    if (failure) failed++;
    else passed++;
  }
  console.log(`${MARK}${passed} passed, ${failed} failed`);
  if (failed || !passed) throw new Error(`${failed} tests failed, ${passed} passed`);
}

async function outcome(test: () => Promise<void>): Promise<string | undefined> {
  try {
    await Promise.race([test(), late()]);
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

function late(): Promise<never> {
  return new Promise((_, reject) =>
    setTimeout(() => reject(new Error(`no end after ${LIMIT_MS / 1000} s`)), LIMIT_MS),
  );
}
