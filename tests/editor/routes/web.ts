/** The suite as an editor in the browser runs it: the browser build of the extension, its server in a worker. */
import { join } from 'node:path';
import type { Counts } from '../evidence.ts';
import { dropProfile, makeProfile } from '../host.ts';
import { OUT, type Route, withWorkspace } from '../route.ts';
import { runSuite } from '../run-suite.ts';
import { ROOT } from '../setup.ts';
import { buildSuite } from '../suite/build.ts';

export const webRoute: Route = {
  name: 'web-worker extension host',
  run: (log) => withWorkspace((folder) => run(folder, log)),
};

async function run(folder: string, onLine: (line: string) => void): Promise<Counts> {
  const profile = makeProfile();
  try {
    const tests = await buildSuite('web worker');
    const end = await runSuite({
      profile,
      extension: ROOT,
      tests,
      folder,
      host: 'web worker',
      out: join(OUT, 'web'),
      onLine,
    });
    if (end.ok && end.counts) return end.counts;
    onLine(`  ${end.reason}`);
    return { passed: end.counts?.passed ?? 0, failed: Math.max(end.counts?.failed ?? 0, 1) };
  } finally {
    dropProfile(profile);
  }
}
