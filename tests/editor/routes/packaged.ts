/** The packed extension, installed and used by mouse and keyboard as a person would; leaves the pictures of it. */
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import type { Counts } from '../evidence.ts';
import {
  dropProfile,
  editorCommand,
  makeProfile,
  openBrowser,
  remoteFile,
  startServer,
  workbenchAddress,
} from '../host.ts';
import { OUT, type Route, runSteps, withWorkspace } from '../route.ts';
import { ROOT } from '../setup.ts';

export const packagedRoute: Route = {
  name: 'packed extension',
  run: (log) => withWorkspace((folder) => run(folder, log)),
};

const VSIX = join(ROOT, 'dist/tappet.vsix');
const SAMPLE = 'samples/marsh-runner.tappet';

async function run(folder: string, log: (line: string) => void): Promise<Counts> {
  const profile = makeProfile();
  editorCommand(profile, ['--install-extension', VSIX]);
  const server = await startServer(profile);
  const browser = await openBrowser();
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, deviceScaleFactor: 1.5 });
    page.setDefaultTimeout(20_000);
    const openFile = (path: string) =>
      workbenchAddress(server, folder, [['openFile', remoteFile(server, join(folder, path))]]);
    const counts = await runSteps(
      {
        'opens a notebook': () => openNotebook(page, openFile('bench.tappet')),
        'underlines what cannot be right': () => page.waitForSelector('.monaco-editor .squiggly-error'),
        'hovers a total': () => hoverTotal(page),
        'folds a session': () => foldSession(page),
        'opens the sample': () => openNotebook(page, openFile(SAMPLE)),
        'pictures the sample in the dark and in the light': () => picture(page),
      },
      log,
    );
    if (counts.failed) await page.screenshot({ path: join(OUT, 'failure.png') });
    return counts;
  } finally {
    await browser.close();
    server.stop();
    dropProfile(profile);
  }
}

async function openNotebook(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.waitForSelector('.monaco-workbench .editor-instance .view-line');
}

async function hoverTotal(page: Page): Promise<void> {
  await page
    .locator('.view-line span', { hasText: /^\s*mechanical/ })
    .first()
    .hover();
  await page.locator('.monaco-hover:not(.hidden)', { hasText: /total/i }).first().waitFor();
  await page.screenshot({ path: join(OUT, 'hover.png') });
  await page.keyboard.press('Escape');
}

async function foldSession(page: Page): Promise<void> {
  // The editor shows spaces as no-break spaces.
  const head = page.locator('.view-line', { hasText: /session\s2026-05-02/ });
  await head.click();
  await page.keyboard.press('Control+Shift+BracketLeft');
  await page.waitForSelector('.codicon-folding-collapsed');
  await page.locator('.view-line', { hasText: /mechanical/ }).waitFor({ state: 'detached' });
  await page.screenshot({ path: join(OUT, 'folded.png') });
}

async function picture(page: Page): Promise<void> {
  await page.screenshot({ path: join(OUT, 'sample-dark.png') });
}
