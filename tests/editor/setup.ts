/// <reference types="node" />
/** What the real-editor tests need beside the project's own packages: a browser, and an editor it can show. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';

export const ROOT = join(import.meta.dirname, '../..');
/** The npm package that carries a compiled VS Code (1.139.1); it runs on the Node of our own devDependencies. */
const EDITOR_PACKAGE = { name: 'code-server', version: '4.139.1' };
const EDITOR_FOLDER = join(ROOT, '.cache/editor');
const EDITOR_SERVER = join(EDITOR_FOLDER, 'node_modules/code-server/lib/vscode');
const BROWSERS = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

/** The editor's server folder and the browser's executable. Installs what is missing; quick when nothing is. */
export function prepare(): { readonly editor: string; readonly browser: string } {
  return { browser: findOnPath(BROWSERS) ?? installBrowser(), editor: installedEditor() };
}

/** The first of these programs that is on the PATH. */
export function findOnPath(names: readonly string[]): string | undefined {
  const folders = (process.env.PATH ?? '').split(delimiter);
  return names
    .flatMap((name) => folders.map((folder) => join(folder, name)))
    .find((file) => existsSync(file));
}

function installBrowser(): string {
  const asRoot = process.getuid?.() === 0;
  if (!asRoot || !findOnPath(['apt-get'])) {
    throw new Error(
      `The real-editor tests need a browser. Install one of: ${BROWSERS.join(', ')} (Debian: apt-get install chromium).`,
    );
  }
  console.log('installing chromium and neovim');
  debian('update', '-qq');
  debian('install', '-y', '-qq', '--no-install-recommends', 'chromium', 'neovim');
  const browser = findOnPath(BROWSERS);
  if (!browser) throw new Error('apt-get installed chromium, but it is not on the PATH.');
  return browser;
}

function debian(...args: readonly string[]): void {
  execFileSync('apt-get', args, {
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
}

/** Outside the project's lock file: it is a thousand packages that nobody needs who only builds. */
function installedEditor(): string {
  const stamp = join(EDITOR_FOLDER, 'installed');
  const wanted = `${EDITOR_PACKAGE.name}@${EDITOR_PACKAGE.version}`;
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return EDITOR_SERVER;
  console.log(`installing ${wanted}`);
  mkdirSync(EDITOR_FOLDER, { recursive: true });
  writeFileSync(join(EDITOR_FOLDER, 'package.json'), '{ "private": true }\n');
  npmInstall(EDITOR_FOLDER, '--save-exact', wanted);
  // What its own install script would do, less the native modules: none of them is needed. Versions are in its shrinkwrap.
  npmInstall(EDITOR_SERVER, '--omit=dev');
  writeFileSync(stamp, wanted);
  return EDITOR_SERVER;
}

function npmInstall(folder: string, ...args: readonly string[]): void {
  const quiet = ['--no-audit', '--no-fund', '--loglevel=error', '--ignore-scripts', '--engine-strict=false'];
  const { npm_config_local_prefix: _ours, ...env } = process.env;
  execFileSync('npm', ['install', '--prefix', folder, ...quiet, ...args], {
    cwd: folder,
    env,
    stdio: 'inherit',
  });
}
