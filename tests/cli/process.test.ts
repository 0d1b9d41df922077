/** The door itself, as a process: arguments, standard input, standard output, exit code. */
/// <reference types="node" />
import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };

const DOOR = join(import.meta.dirname, '../../server/main.cli.ts');
const TYPO = 'targets\n  initial 9,5 deg\n';
let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tappet-'));
  mkdirSync(join(folder, 'old.tappet'));
  writeFileSync(join(folder, 'typo.tappet'), TYPO);
  writeFileSync(join(folder, 'old.tappet/clean.tappet'), 'session 2026-05-02\n  idle 820 rpm\n');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function tappet(args: readonly string[], input = '', env = {}) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [DOOR, ...args], {
    cwd: folder,
    input,
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '', FORCE_COLOR: undefined, ...env },
  });
  return { status, stdout, stderr };
}

describe('as a process', { timeout: 600_000 }, () => {
  it.each<[string[], string, number]>([
    [['check', 'old.tappet'], '', 0],
    [['check'], '', 1],
    [['check', '-'], TYPO, 1],
    [['show', 'old.tappet'], '', 2],
    [['check', 'missing.tappet', 'typo.tappet/within.tappet'], '', 2],
  ])('%j ends with its exit code', (args, input, code) => {
    const { status, stderr } = tappet(args, input);
    expect(status, stderr).toBe(code);
  });

  it('prints the version of the manifest', () =>
    expect(tappet(['--version']).stdout).toBe(`${manifest.version}\n`));

  it('keeps colours from pipes unless they are asked for', () => {
    expect(tappet(['check']).stdout).not.toContain('\u001B');
    expect(tappet(['check'], '', { FORCE_COLOR: '1' }).stdout).toContain('\u001B[31m');
  });

  it.skipIf(process.getuid?.() === 0)('tells of a file it may not read', () => {
    const locked = join(folder, 'locked.tappet');
    writeFileSync(locked, TYPO);
    chmodSync(locked, 0);
    const { status, stderr } = tappet(['check', locked]);
    rmSync(locked);
    expect([status, stderr]).toEqual([2, `tappet: ${locked}: no permission\n`]);
  });
});
