/** The packed extension, installed and used by mouse and keyboard as a person would; leaves the pictures of it. */
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import type { Counts } from '../evidence.ts';
import {
  dropProfile,
  editorCommand,
  LIMIT_MS,
  makeProfile,
  openBrowser,
  remoteFile,
  startServer,
  workbenchAddress,
} from '../host.ts';
import { openFile, picture } from '../page.ts';
import { type Route, runSteps, withWorkspace } from '../route.ts';
import { ROOT } from '../setup.ts';
import { pencilledSteps } from './pencilled.ts';
import { typingSteps } from './typing.ts';

export const packagedRoute: Route = {
  name: 'packed extension',
  run: (log) => withWorkspace((folder) => run(folder, log)),
};

const VSIX = join(ROOT, 'dist/tappet.vsix');
const SAMPLE = 'marsh-runner.tappet';
/** After which the pointer is moved once more. */
const HOVER_MS = 10_000;
/** Brings the first session to the top, so that the picture has room for what is shown below the pointer. */
const LINE = 42;
const WINDOW = { viewport: { width: 1280, height: 800 }, deviceScaleFactor: 1.5 };

async function run(folder: string, log: (line: string) => void): Promise<Counts> {
  const profile = makeProfile({ 'window.autoDetectColorScheme': true, 'editor.hover.above': false });
  await editorCommand(profile, ['--install-extension', VSIX]);
  const server = await startServer(profile);
  const browser = await openBrowser();
  try {
    const page = await browser.newPage({ ...WINDOW, colorScheme: 'dark' });
    page.setDefaultTimeout(LIMIT_MS);
    const opened = remoteFile(server, join(folder, 'bench.tappet'));
    const address = workbenchAddress(server, folder, [['openFile', opened]]);
    const counts = await runSteps(
      {
        'opens a notebook': () => openWorkbench(page, address),
        'colours it': () => page.waitForSelector('.view-line .mtkb'),
        'underlines what cannot be right': () => page.waitForSelector('.squiggly-warning, .squiggly-error'),
        'hovers a total': () => hoverTotal(page, 'hover'),
        'folds a session': () => foldSession(page),
        'opens the sample': () => openFile(page, SAMPLE, LINE),
        'shows hints and what changed in the sample': () => remarksOf(page),
        'hovers a total in the sample': () => hoverTotal(page, 'sample-dark'),
        'shows it in the light too': () => inTheLight(page),
      },
      log,
    );
    if (counts.failed) await picture(page, 'failure');
    const typed = await runSteps(typingSteps(page, folder), log);
    if (typed.failed) await picture(page, 'failure-typing');
    const pencilled = await runSteps(pencilledSteps(page, folder), log);
    if (pencilled.failed) await picture(page, 'failure-pencilled');
    return {
      passed: counts.passed + typed.passed + pencilled.passed,
      failed: counts.failed + typed.failed + pencilled.failed,
    };
  } finally {
    await browser.close();
    server.stop();
    dropProfile(profile);
  }
}

async function openWorkbench(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.waitForSelector('.monaco-workbench .editor-instance .view-line');
}

/** Points again while nothing is shown: the editor does not ask a second time for a pointer that rests. */
async function hoverTotal(page: Page, name: string): Promise<void> {
  const setting = page.locator('.editor-instance .view-line span span', { hasText: /^mechanical$/ }).first();
  const hover = page.locator('.monaco-hover:not(.hidden)', { hasText: /total/i }).first();
  for (const end = Date.now() + LIMIT_MS; !(await hover.isVisible()); ) {
    if (Date.now() > end) throw new Error('no hover with a total');
    await page.mouse.move(0, 0);
    await setting.hover();
    await hover.waitFor({ timeout: HOVER_MS }).catch(() => undefined);
  }
  await picture(page, name);
  await page.keyboard.press('Escape');
}

/** They come behind the text, and the picture shows them. */
async function remarksOf(page: Page): Promise<void> {
  const shown = (selector: string, hasText: RegExp) =>
    page.locator(selector, { hasText }).filter({ visible: true }).first().waitFor();
  await shown('.view-line', /total\s31\sdeg/);
  await shown('.codelens-decoration', /start\sa\ssession/i);
}

async function foldSession(page: Page): Promise<void> {
  // The editor shows spaces as no-break spaces, which \s matches.
  await page.locator('.view-line', { hasText: /session\s+2026-05-02/ }).click();
  await page.keyboard.press('Control+Shift+BracketLeft');
  await page.waitForSelector('.codicon-folding-collapsed');
  await page.locator('.view-line', { hasText: /mechanical/ }).waitFor({ state: 'detached' });
  await picture(page, 'folded');
}

async function inTheLight(page: Page): Promise<void> {
  await page.emulateMedia({ colorScheme: 'light' });
  await page.waitForSelector('.monaco-workbench.vs:not(.vs-dark)');
  await picture(page, 'sample-light');
}
