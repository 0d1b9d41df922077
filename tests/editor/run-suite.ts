/** Runs a suite of extension tests inside a real editor, in its Node or in its web-worker extension host. */
import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { extname, join, relative } from 'node:path';
import type { Page } from 'playwright-core';
import { allPassed, type Counts, suiteReader } from './evidence.ts';
import {
  type EditorServer,
  LIMIT_MS,
  openBrowser,
  type Profile,
  remoteFile,
  startServer,
  workbenchAddress,
} from './host.ts';

interface SuiteRun {
  readonly profile: Profile;
  /** The folder of the extension under development. */
  readonly extension: string;
  /** A script that exports `run()`. */
  readonly tests: string;
  /** The folder that the editor opens. */
  readonly folder: string;
  readonly host: 'node' | 'web worker';
  /** Where the log and, after a failure, a screenshot go. */
  readonly out: string;
  /** Gets each line that the suite prints, without its mark. */
  readonly onLine: (line: string) => void;
}

/** How a run ended. `ok` only if the editor said so and the suite was seen to come to its end. */
interface SuiteEnd {
  readonly ok: boolean;
  readonly reason: string;
  readonly counts: Counts | undefined;
}

/** For the whole suite. */
const SUITE_LIMIT_MS = 1_800_000;
/** For the result of a suite whose extension host has ended: the call that tells it may come later. */
const RESULT_LIMIT_MS = 60_000;

/** Starts an editor, lets it run the suite, and ends it again. */
export async function runSuite(run: SuiteRun): Promise<SuiteEnd> {
  mkdirSync(run.out, { recursive: true });
  const server = await startServer(run.profile);
  const browser = await openBrowser();
  const log: string[] = [];
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    page.setDefaultTimeout(LIMIT_MS);
    page.on('console', (message) => log.push(`[${message.type()}] ${message.text()}`));
    const { end } = await watch(page, server, run.onLine);
    if (run.host === 'web worker') await serveExtension(page, server, run);
    await page.goto(
      workbenchAddress(server, run.folder, run.host === 'node' ? nodePayload(server, run) : []),
    );
    const result = await end;
    if (!result.ok) await page.screenshot({ path: join(run.out, 'failure.png') }).catch(() => undefined);
    return result;
  } finally {
    writeFileSync(join(run.out, 'workbench.log'), log.join('\n'));
    await browser.close();
    server.stop();
  }
}

function nodePayload(server: EditorServer, run: SuiteRun): string[][] {
  return [
    ['extensionDevelopmentPath', remoteFile(server, run.extension)],
    ['extensionTestsPath', remoteFile(server, run.tests)],
  ];
}

/** The editor's window calls two globals, if it has them, for what the tests print and for their end. */
async function watch(page: Page, server: EditorServer, onLine: (line: string) => void) {
  let resolve: (end: SuiteEnd) => void = () => undefined;
  const end = new Promise<SuiteEnd>((settle) => {
    resolve = settle;
  });
  const suite = suiteReader(onLine);
  const finish = (ok: boolean, reason: string) =>
    resolve({ ok: ok && allPassed(suite.counts()), reason, counts: suite.counts() });
  await page.exposeFunction('codeAutomationLog', (_: string, args: readonly unknown[]) =>
    suite.take(args.join(' ')),
  );
  // It also exits with 0 when the extension host dies in the middle of a test; hence the suite's own summary.
  await page.exposeFunction('codeAutomationExit', (code: number) =>
    finish(code === 0, `the editor's exit status is ${code}`),
  );
  const late = setTimeout(() => finish(false, `no end after ${SUITE_LIMIT_MS / 1000} s`), SUITE_LIMIT_MS);
  end.then(() => clearTimeout(late));
  page.on('crash', () => finish(false, 'the page crashed'));
  server.ended.then((reason) => setTimeout(() => finish(false, reason), RESULT_LIMIT_MS).unref());
  return { end };
}

/**
 * An extension that the editor reads from its own machine can make no workers, so it is served over http from the same
 * origin, and the workbench's configuration is told so before the workbench reads it.
 */
async function serveExtension(page: Page, server: EditorServer, run: SuiteRun): Promise<void> {
  const prefix = '/extension-under-test/';
  const types: Record<string, string> = {
    '.js': 'text/javascript',
    '.cjs': 'text/javascript',
    '.json': 'application/json',
  };
  await page.context().route(
    (url) => url.pathname.startsWith(prefix),
    (route) => {
      const file = join(run.extension, new URL(route.request().url()).pathname.slice(prefix.length));
      if (!existsSync(file) || !statSync(file).isFile()) return route.fulfill({ status: 404 });
      return route.fulfill({ body: readFileSync(file), contentType: types[extname(file)] ?? 'text/plain' });
    },
  );
  const at = (path: string) => ({
    scheme: 'http',
    authority: `127.0.0.1:${server.port}`,
    path: prefix + path,
  });
  await page.addInitScript(configure, {
    extensions: [at('')],
    extensionTestsPath: at(relative(run.extension, run.tests)),
  });
}

/** Runs inside the page, before its own scripts. */
function configure(developmentOptions: object): void {
  // biome-ignore lint/suspicious/noExplicitAny: the page's names; the compiler's library for them is not loaded here.
  const { document, MutationObserver } = globalThis as any;
  new MutationObserver((_: unknown, observer: { disconnect(): void }) => {
    const meta = document.getElementById('vscode-workbench-web-configuration');
    if (!meta) return;
    observer.disconnect();
    meta.dataset.settings = JSON.stringify({ ...JSON.parse(meta.dataset.settings), developmentOptions });
  }).observe(document, { childList: true, subtree: true });
}
