/** The suite as a desktop editor runs it. VSCODE_EXECUTABLE names another editor; `download` fetches one. */
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { runTests } from '@vscode/test-electron';
import { type Counts, suiteReader } from '../evidence.ts';
import { dropProfile, makeProfile } from '../host.ts';
import { type Route, withWorkspace } from '../route.ts';
import { ROOT } from '../setup.ts';
import { buildSuite } from '../suite/build.ts';

export const nodeRoute: Route = {
  name: 'Node extension host',
  run: (log) => withWorkspace((folder) => run(folder, log)),
};

async function run(folder: string, log: (line: string) => void): Promise<Counts> {
  const suite = suiteReader(log);
  const profile = makeProfile();
  let rest = '';
  const stdout = new Writable({
    write(chunk, _encoding, done) {
      const text = rest + chunk;
      rest = text.slice(text.lastIndexOf('\n') + 1);
      suite.take(text.slice(0, text.length - rest.length));
      done();
    },
  });
  try {
    await runTests({
      ...executable(),
      stdout,
      extensionDevelopmentPath: ROOT,
      extensionTestsPath: await buildSuite('node'),
      launchArgs: [folder, `--user-data-dir=${profile.user}`, `--extensions-dir=${profile.extensions}`],
    });
  } catch (error) {
    const { passed = 0, failed = 0 } = suite.counts() ?? {};
    log(`  ${error}`);
    return { passed, failed: Math.max(failed, 1) };
  } finally {
    dropProfile(profile);
  }
  const counts = suite.counts();
  if (!counts) throw new Error('the editor ended well, but the suite never came to its end');
  return counts;
}

function executable(): { vscodeExecutablePath?: string } {
  const chosen = process.env.VSCODE_EXECUTABLE;
  if (chosen === 'download') return {};
  return { vscodeExecutablePath: chosen ?? join(import.meta.dirname, '../launcher/code') };
}
