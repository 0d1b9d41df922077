/** An editor with a client that nobody here wrote, over stdio. Left out where Neovim is not installed. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { type Counts, suiteReader } from '../evidence.ts';
import { ended } from '../processes.ts';
import { type Route, withWorkspace } from '../route.ts';
import { findOnPath, ROOT } from '../setup.ts';

export const neovimRoute: Route = {
  name: 'Neovim over stdio',
  run: (log) => withWorkspace((folder) => run(folder, log)),
};

/** Of its four checks each has a limit of its own. */
const LIMIT_MS = 1_200_000;

async function run(folder: string, log: (line: string) => void): Promise<Counts> {
  const neovim = findOnPath(['nvim']);
  if (!neovim) {
    log('  left out: no nvim on the PATH');
    return { passed: 0, failed: 0 };
  }
  const script = join(import.meta.dirname, 'neovim.lua');
  const args = ['--headless', '--clean', '-n', '-c', `luafile ${script}`, join(folder, 'bench.tappet')];
  const env = { ...process.env, NODE: process.execPath, SERVER: join(ROOT, 'dist/server.cjs') };
  const { status, output } = await ended(spawn(neovim, args, { env, timeout: LIMIT_MS }));
  const suite = suiteReader(log);
  suite.take(output);
  const counts = suite.counts();
  if (status === 0 && counts) return counts;
  log(`  FAILED (exit ${status}) ${output}`);
  return { passed: counts?.passed ?? 0, failed: Math.max(counts?.failed ?? 0, 1) };
}
