/** One way of putting the extension in front of an editor, and what all ways share. */
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Counts } from './evidence.ts';
import { ROOT } from './setup.ts';

export interface Route {
  readonly name: string;
  /** Says what it does by `log`. Throws, or counts a failure, when something is not as it must be. */
  readonly run: (log: (line: string) => void) => Promise<Counts>;
}

/** Where screenshots and logs go. */
export const OUT = join(ROOT, 'out/editor');

/** Runs `use` on a fresh copy of the tests' notebooks, so that no run sees what another has written. */
export async function withWorkspace<T>(use: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'tappet-workspace-'));
  cpSync(join(import.meta.dirname, 'workspace'), folder, { recursive: true });
  cpSync(join(ROOT, 'samples'), join(folder, 'samples'), { recursive: true });
  try {
    return await use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Runs steps in order and stops at the first that fails: what follows it would only fail for the same reason. */
export async function runSteps(
  steps: Readonly<Record<string, () => Promise<unknown>>>,
  log: (line: string) => void,
): Promise<Counts> {
  let passed = 0;
  for (const [name, step] of Object.entries(steps)) {
    try {
      await step();
    } catch (error) {
      log(`  FAILED ${name}: ${error instanceof Error ? error.message : error}`);
      return { passed, failed: 1 };
    }
    passed++;
    log(`  ok ${name}`);
  }
  return { passed, failed: 0 };
}
