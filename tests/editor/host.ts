/** A real editor: VS Code's own server on the project's Node, its workbench in a headless browser, nothing beyond loopback. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { ended } from './processes.ts';
import { prepare } from './setup.ts';

const { editor, browser: executablePath } = prepare();
const SERVER_MAIN = join(editor, 'out/server-main.js');
/** For anything to start or to come: a machine that is busy with other things is slow. */
export const LIMIT_MS = 300_000;

/** Where one run of the editor keeps its settings and extensions; dropped after it. */
export interface Profile {
  readonly folder: string;
  readonly user: string;
  readonly extensions: string;
}

/** A running editor server. `ended` resolves with why, when it or one of its extension hosts ends by itself. */
export interface EditorServer {
  readonly port: number;
  readonly ended: Promise<string>;
  readonly stop: () => void;
}

/** Quiet, offline and the same on every run. */
const SETTINGS = {
  'chat.disableAIFeatures': true,
  'editor.minimap.enabled': false,
  'editor.hover.delay': 100,
  'extensions.autoCheckUpdates': false,
  'extensions.autoUpdate': false,
  'extensions.ignoreRecommendations': true,
  'files.autoSave': 'off',
  'git.enabled': false,
  'telemetry.telemetryLevel': 'off',
  'workbench.enableExperiments': false,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
};

/** A fresh profile. `user` and `extensions` may lie elsewhere, as a command line asks. */
export function makeProfile(settings: object = {}, folders: Partial<Profile> = {}): Profile {
  const folder = mkdtempSync(join(tmpdir(), 'tappet-editor-'));
  const profile = { folder, user: join(folder, 'user'), extensions: join(folder, 'extensions'), ...folders };
  mkdirSync(join(profile.user, 'User'), { recursive: true });
  mkdirSync(profile.extensions, { recursive: true });
  writeFileSync(join(profile.user, 'User/settings.json'), JSON.stringify({ ...SETTINGS, ...settings }));
  return profile;
}

/** Removes what `makeProfile` made. */
export function dropProfile(profile: Profile): void {
  rmSync(profile.folder, { recursive: true, force: true, maxRetries: 5 });
}

/** One command of the editor's own command line, such as `--install-extension FILE`. Throws when it fails. */
export async function editorCommand(profile: Profile, args: readonly string[]): Promise<void> {
  const child = spawn(process.execPath, [SERVER_MAIN, ...profileArguments(profile), ...args], {
    env: environment(),
  });
  const { status, output } = await ended(child);
  // It reports success on the exit status even when an extension could not be installed.
  if (status !== 0 || /Failed Installing/.test(output)) throw new Error(`${args.join(' ')}: ${output}`);
}

/** Starts the editor's server on a free port. */
export async function startServer(profile: Profile, env: NodeJS.ProcessEnv = {}): Promise<EditorServer> {
  const args = [
    '--host',
    '127.0.0.1',
    '--port',
    '0',
    '--without-connection-token',
    '--disable-workspace-trust',
  ];
  // The first ends a server left behind by a killed run; without the second a built editor ignores extension tests.
  const unattended = [
    '--enable-remote-auto-shutdown',
    '--enable-smoke-test-driver',
    '--telemetry-level',
    'off',
  ];
  const child = spawn(process.execPath, [SERVER_MAIN, ...args, ...unattended, ...profileArguments(profile)], {
    env: { ...environment(), ...env },
    detached: true, // a process group of its own, so that its extension hosts end with it
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const stop = () => endGroup(child);
  process.once('exit', stop);
  return { ...(await listening(child)), stop };
}

/** Opens the headless browser. */
export function openBrowser(): Promise<Browser> {
  const loopbackOnly = 'MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost, EXCLUDE *.localhost';
  const args = ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking'];
  return chromium.launch({
    executablePath,
    args: [...args, `--host-resolver-rules=${loopbackOnly}`],
    timeout: LIMIT_MS,
  });
}

/** The address of a workbench on `folder`; `payload` are the workbench's own start options. */
export function workbenchAddress(
  server: EditorServer,
  folder: string,
  payload: readonly (readonly string[])[],
): string {
  const quiet = [
    ['skipWelcome', 'true'],
    ['skipReleaseNotes', 'true'],
  ];
  const query = new URLSearchParams({ folder, payload: JSON.stringify([...quiet, ...payload]) });
  return `http://127.0.0.1:${server.port}/?${query}`;
}

/** How the workbench names a file on the server's machine. */
export function remoteFile(server: EditorServer, path: string): string {
  return `vscode-remote://127.0.0.1:${server.port}${resolve(path)}`;
}

function environment(): NodeJS.ProcessEnv {
  const { CODE_SERVER_PARENT_PID: _parent, VSCODE_IPC_HOOK_CLI: _hook, ...env } = process.env;
  return { ...env, EXTENSIONS_GALLERY: '{"serviceUrl":""}' };
}

function profileArguments({ folder, user, extensions }: Profile): string[] {
  const folders = [
    '--server-data-dir',
    join(folder, 'server'),
    '--user-data-dir',
    user,
    '--extensions-dir',
    extensions,
  ];
  return ['--accept-server-license-terms', ...folders];
}

function listening(child: ChildProcess): Promise<Omit<EditorServer, 'stop'>> {
  let output = '';
  return new Promise((ready, reject) => {
    const timer = setTimeout(
      () => reject(new Error(`the editor's server did not start\n${output}`)),
      LIMIT_MS,
    );
    const ended = new Promise<string>((end) => {
      child.once('exit', (code, signal) => {
        end(`the editor's server ended (${code ?? signal})`);
        reject(new Error(`the editor's server ended early (${code ?? signal})\n${output}`));
      });
      const read = (data: Buffer) => {
        output = (output + data).slice(-100_000);
        const host = /Extension Host Process exited with code: (\S+),/.exec(String(data));
        if (host) end(`the extension host ended by itself (${host[1]})`);
        const port = /Extension host agent listening on (\d+)/.exec(output);
        if (!port) return;
        clearTimeout(timer);
        ready({ port: Number(port[1]), ended });
      };
      child.stdout?.on('data', read);
      child.stderr?.on('data', read);
    });
  });
}

function endGroup(child: ChildProcess): void {
  try {
    if (child.pid) process.kill(-child.pid, 'SIGKILL');
  } catch {
    // It has ended already.
  }
}
