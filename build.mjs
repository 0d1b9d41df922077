/**
 * The build: `node build.mjs STEP`.
 * Starts on plain Node 20 with nothing installed; installs what is missing and goes on with the project's own Node.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { failuresIn, summarize } from './tests/harness/summary.mjs';

const ROOT = fileURLToPath(new URL('.', import.meta.url));
const ON_WINDOWS = process.platform === 'win32';
/** There npm and code are batch files, which only a shell can start. */
const SHELL = { shell: ON_WINDOWS };
const OWN_NODE = join(ROOT, 'node_modules/node/bin', ON_WINDOWS ? 'node.exe' : 'node');
const OWN_TOOLS = join(ROOT, 'node_modules/.bin');
const OWN_NODE_MAJOR = 24;
const SAMPLE = 'samples/marsh-runner.tappet';
const VSIX = 'dist/tappet.vsix';

const STEPS = {
  try: tryIt,
  test,
  'test:quick': quickTest,
  bench,
  fuzz,
  build,
  generate,
  package: pack,
  lint,
  check,
};

const NODE_BUNDLE = { platform: 'node', format: 'cjs', target: 'node20' };
const WEB_BUNDLE = { platform: 'browser', target: 'es2022' };
const BUNDLES = [
  { ...NODE_BUNDLE, entryPoints: ['client/desktop.ts'], outfile: 'dist/client.cjs', external: ['vscode'] },
  {
    ...WEB_BUNDLE,
    entryPoints: ['client/web.ts'],
    outfile: 'dist/client.web.cjs',
    format: 'cjs',
    external: ['vscode'],
  },
  { ...NODE_BUNDLE, entryPoints: ['server/main.node.ts'], outfile: 'dist/server.cjs' },
  { ...WEB_BUNDLE, entryPoints: ['server/main.worker.ts'], outfile: 'dist/server.worker.js', format: 'iife' },
  { ...NODE_BUNDLE, entryPoints: ['server/main.cli.ts'], outfile: 'dist/cli.cjs' },
];

await main(process.argv[2]);

async function main(name) {
  const step = Object.hasOwn(STEPS, name ?? '') ? STEPS[name] : undefined;
  if (!step) stop(`usage: node build.mjs ${Object.keys(STEPS).join('|')}`, 2);
  process.chdir(ROOT);
  if (!installed()) install();
  if (Number.parseInt(process.versions.node, 10) < OWN_NODE_MAJOR) return restartOnOwnNode();
  process.env.PATH = OWN_TOOLS + delimiter + process.env.PATH;
  await step();
}

// ---- The steps ----

/** What a newcomer sees first: a notebook checked and totalled in the terminal, then the extension in the editor. */
async function tryIt() {
  await build();
  for (const command of ['check', 'show']) {
    title(`dist/cli.cjs ${command} ${SAMPLE}`);
    const colour = { env: { ...process.env, FORCE_COLOR: process.env.NO_COLOR ? '0' : '1' } };
    // Findings are what the sample is there to show; only "could not be read" is a failure.
    need(`tappet ${command}`, run(process.execPath, ['dist/cli.cjs', command, SAMPLE], colour), [0, 1]);
  }
  packInto(VSIX);
  title('In the editor');
  const code = onPath('code');
  if (!code) {
    console.log(
      `The extension is ${VSIX}: install VS Code, then "code --install-extension ${VSIX}", and open ${SAMPLE}.`,
    );
    return;
  }
  need('installing the extension', run(code, ['--install-extension', VSIX, '--force'], SHELL));
  need('opening the sample', run(code, [SAMPLE], SHELL));
}

/** Types, lint, unit and law tests, then the real editor. Every part runs, so that one failure does not hide another. */
async function test() {
  await pack();
  summarize([
    { name: 'types', ...oneCheck(typecheck()) },
    { name: 'lint', ...oneCheck(biome()) },
    { name: 'unit and law tests', ...unitTests() },
    { name: 'real editor', ...editorTests() },
  ]);
}

/** Types, lint, and the unit tests and laws that take no editor, no built program and no long notebook. */
async function quickTest() {
  const { FEW_RUNS, SLOW_TESTS } = await import('./tests/harness/quick.mjs');
  const env = { ...process.env, ...FEW_RUNS };
  const left = ['tests/editor/**', ...SLOW_TESTS].map((pattern) => `--exclude=${pattern}`);
  summarize([
    { name: 'types', ...oneCheck(typecheck()) },
    { name: 'lint', ...oneCheck(biome()) },
    { name: 'unit tests and few runs of the laws', ...unitTests(left, { env }) },
  ]);
}

function bench() {
  need(
    'the benchmark',
    run(process.execPath, ['--expose-gc', 'tests/bench/main.ts', ...process.argv.slice(3)]),
  );
}

function fuzz() {
  need('fuzzing', run(process.execPath, ['tests/fuzz/main.ts', ...process.argv.slice(3)]));
}

async function build() {
  const esbuild = await import('esbuild');
  const bundles = BUNDLES.map((bundle) =>
    esbuild.build({ bundle: true, minify: true, logLevel: 'warning', ...bundle }),
  );
  // esbuild itself prints what is wrong and where.
  await Promise.all(bundles).catch(() => stop('the build failed'));
}

/** Rewrites the files that are made from the tables; a tidy test fails when one of them is stale. */
async function generate() {
  const { writeGenerated } = await import('./tests/tidy/generated.ts');
  for (const path of writeGenerated(ROOT)) console.log(`wrote ${path}`);
}

async function pack() {
  await build();
  packInto(VSIX);
}

function lint() {
  need('lint', biome());
}

function check() {
  need('types', typecheck());
}

// ---- What the steps are made of ----

function typecheck() {
  title('Types');
  return tool('typescript/bin/tsc', ['--project', '.']);
}

function biome() {
  title('Lint');
  return tool('@biomejs/biome/bin/biome', ['check', '--error-on-warnings', '.']);
}

function packInto(vsix) {
  title(`Packing ${vsix}`);
  const options = [
    'package',
    '--no-dependencies',
    '--allow-missing-repository',
    '--no-rewrite-relative-links',
    '--out',
    vsix,
  ];
  need('packing', tool('@vscode/vsce/vsce', options, { stdio: ['ignore', 'ignore', 'inherit'] }));
  console.log(vsix);
}

function unitTests(more = [], options = {}) {
  title('Unit and law tests');
  const report = freshReport('out/unit.json');
  const args = [
    'run',
    // None of them measures time: on a busy machine one may take as long as it needs.
    '--testTimeout=600000',
    '--hookTimeout=600000',
    '--reporter=dot',
    '--reporter=json',
    `--outputFile.json=${report}`,
    ...more,
  ];
  const status = tool('vitest/vitest.mjs', args, options);
  const { numPassedTests: passed = 0, numFailedTests: failed = 0, testResults = [] } = readReport(report);
  return { ...counted(status, passed, failed), failures: failuresIn(testResults, ROOT) };
}

function editorTests() {
  title('Real editor');
  const report = freshReport('out/editor/result.json');
  const status = run(process.execPath, ['tests/editor/main.ts', report]);
  const { passed = 0, failed = 0 } = readReport(report);
  return counted(status, passed, failed);
}

/** A part that broke without a failed test of its own, or ran none, still counts as one failure. */
function counted(status, passed, failed) {
  const broke = status !== 0 || passed === 0;
  return { passed, failed: broke ? Math.max(failed, 1) : failed };
}

function oneCheck(status) {
  return { passed: status === 0 ? 1 : 0, failed: status === 0 ? 0 : 1 };
}

/** An old report must never pass for the one of this run. */
function freshReport(path) {
  rmSync(path, { force: true });
  mkdirSync(join(path, '..'), { recursive: true });
  return path;
}

function readReport(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : {};
}

// ---- Installing, and the project's own Node ----

/** True when every package of the lock file is there in its version; what is for another platform may be missing. */
function installed() {
  const have = readReport('node_modules/.package-lock.json').packages;
  if (!have || !existsSync(OWN_NODE)) return false;
  const wanted = Object.entries(readReport('package-lock.json').packages).filter(([path]) => path !== '');
  return wanted.every(([path, { version, optional }]) =>
    have[path] ? have[path].version === version : optional,
  );
}

function install() {
  title('Installing the packages of package-lock.json');
  // Not on the Node that lies in the very folder which npm is about to replace.
  const path = process.env.PATH.split(delimiter)
    .filter((folder) => folder !== OWN_TOOLS)
    .join(delimiter);
  const status = run('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    env: { ...process.env, PATH: path },
    ...SHELL,
  });
  need('npm ci', status);
  if (existsSync(OWN_NODE)) return;
  stop(
    'npm ci left no node_modules/node/bin/node. Its install script fetches it: allow scripts ("npm config set ignore-scripts false") and try again.',
  );
}

function restartOnOwnNode() {
  process.exitCode = run(OWN_NODE, [process.argv[1], ...process.argv.slice(2)]);
}

// ---- Processes ----

function tool(script, args, options) {
  return run(process.execPath, [join('node_modules', script), ...args], options);
}

/** Runs a program in the foreground. @returns its exit status, or 1 with a message when it cannot be started. */
function run(program, args, options = {}) {
  const { status, error } = spawnSync(program, args, { stdio: 'inherit', ...options });
  if (error) console.error(`${program} could not be started: ${error.message}`);
  return status ?? 1;
}

function need(what, status, good = [0]) {
  if (!good.includes(status)) stop(`${what} failed (exit ${status})`, status || 1);
}

function onPath(name) {
  const names = ON_WINDOWS ? [`${name}.cmd`, `${name}.exe`] : [name];
  const folders = (process.env.PATH ?? '').split(delimiter);
  return folders
    .flatMap((folder) => names.map((file) => join(folder, file)))
    .find((file) => existsSync(file));
}

function title(text) {
  console.log(`\n== ${text}`);
}

function stop(message, status = 1) {
  console.error(message);
  process.exit(status);
}
