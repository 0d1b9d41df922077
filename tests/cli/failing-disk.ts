/**
 * Loaded into a process before its program: a disk that fails. `DISK="3 fail ENOSPC"`: the third call that may change
 * something fails so, after half of what it was to write; `3 kill`: the process is killed before it, `3 late`: after half of it; `3 change WORD`: another
 * program makes of a.tappet that word before it;
 * `0 short`: no call writes more than seven bytes. The names of these calls are written to file 3.
 */
/// <reference types="node" />
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

const [at = '0', manner = '', code = ''] = (process.env.DISK ?? '').split(' ');
const SHORT = 7;
const CHANGING = [
  'appendFileSync',
  'chmodSync',
  'chownSync',
  'copyFileSync',
  'fchmodSync',
  'fchownSync',
  'fsyncSync',
  'ftruncateSync',
  'linkSync',
  'openSync',
  'closeSync',
  'renameSync',
  'rmSync',
  'symlinkSync',
  'truncateSync',
  'unlinkSync',
  'writeFileSync',
  'writeSync',
  'writevSync',
] as const;
type Call = (...args: unknown[]) => unknown;
const disk = fs as unknown as Record<string, Call>;
const { writeSync, writeFileSync, readFileSync } = fs;
const opened = new Set<unknown>();
let calls = 0;

for (const name of CHANGING) {
  const really = disk[name] as Call;
  disk[name] = (...args) => {
    if (!changes(name, args)) return really(...args);
    calls++;
    writeSync(3, `${name}\n`);
    if (calls === Number(at)) fail(name, args, () => really(...args));
    const done = manner === 'short' && name === 'writeSync' ? half(name, args, SHORT) : really(...args);
    if (name === 'openSync') opened.add(done);
    return done;
  };
}
syncBuiltinESMExports();

/** Files that are only read are no matter. */
function changes(name: string, args: readonly unknown[]): boolean {
  if (name === 'openSync') return /[wax+]/.test(String(args[1]));
  return name !== 'closeSync' || opened.delete(args[0]);
}

function fail(name: string, args: readonly unknown[], really: () => unknown): void {
  if (manner === 'kill') die();
  if (manner === 'late') {
    if (half(name, args) === undefined) really();
    die();
  }
  if (manner === 'change') writeFileSync('a.tappet', code);
  if (manner !== 'fail') return;
  half(name, args);
  throw Object.assign(new Error(`${code}: ${name}`), { code });
}

/** Undefined where the call does not write. */
function half(name: string, args: readonly unknown[], most = Number.POSITIVE_INFINITY): number | undefined {
  if (name === 'writeSync') {
    const [file, bytes, from = 0] = args as [number, Uint8Array, number?];
    const length = Math.min(most, Math.ceil((bytes.length - from) / 2));
    return writeSync(file, bytes, from, length);
  }
  if (name !== 'writeFileSync') return undefined;
  const text = String(args[1]);
  writeFileSync(args[0] as string, text.slice(0, text.length / 2));
  return readFileSync(args[0] as string).length;
}

function die(): never {
  process.kill(process.pid, 'SIGKILL');
  for (;;);
}
