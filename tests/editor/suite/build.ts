/** Bundles the suite for an extension host. */
import { join } from 'node:path';
import { build } from 'esbuild';
import { ROOT } from '../setup.ts';

const TARGETS = {
  node: { platform: 'node', script: 'out/suite/node.cjs' },
  'web worker': { platform: 'browser', script: 'out/suite/web.cjs' },
} as const;

/** @returns the script to give to the editor. */
export async function buildSuite(host: keyof typeof TARGETS): Promise<string> {
  const { platform, script } = TARGETS[host];
  await build({
    entryPoints: [join(import.meta.dirname, 'run.ts')],
    outfile: join(ROOT, script),
    platform,
    format: 'cjs',
    bundle: true,
    external: ['vscode', 'node:*'],
    logLevel: 'warning',
  });
  return join(ROOT, script);
}
