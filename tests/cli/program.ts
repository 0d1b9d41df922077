/** The terminal's program as it is shipped: bundled once a test file, and run as a process of its own. */
/// <reference types="node" />
import { type SpawnSyncOptions, spawnSync } from 'node:child_process';
import { mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSync } from 'esbuild';

export interface Program {
  /** For the files of a test; anybody may read it. */
  readonly folder: string;
  readonly cli: string;
  /** Runs a line of the shell in the folder; `tappet` is the program in it. */
  readonly shell: (line: string, options?: SpawnSyncOptions) => Ran;
  readonly remove: () => void;
}

interface Ran {
  /** Null for one that was killed. */
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
  /** What came out of file 3. */
  readonly trace: string;
}

/** Milliseconds; what takes longer never ends. */
const LONGEST = 30_000;

export function builtProgram(): Program {
  const place = realpathSync(mkdtempSync(join(tmpdir(), 'program-')));
  const cli = join(place, 'cli.cjs');
  buildSync({
    entryPoints: [join(import.meta.dirname, '../../server/main.cli.ts')],
    outfile: cli,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    logLevel: 'error',
  });
  const folder = join(place, 'books');
  spawnSync('mkdir', [folder]);
  spawnSync('chmod', ['755', place, folder]);
  return {
    folder,
    cli,
    shell: (line, options) => {
      const tappet = `tappet() { "${process.execPath}" $NODE_MORE "${cli}" "$@"; }`;
      const { status, output } = spawnSync('bash', ['-c', `${tappet}\n${line}`], {
        cwd: folder,
        timeout: LONGEST,
        killSignal: 'SIGKILL',
        stdio: ['ignore', 'pipe', 'pipe', 'pipe'],
        ...options,
        env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: undefined, ...options?.env },
      });
      const [out = '', err = '', trace = ''] = output.slice(1).map(String);
      return { code: status, out, err, trace };
    },
    remove: () => rmSync(place, { recursive: true, force: true }),
  };
}
