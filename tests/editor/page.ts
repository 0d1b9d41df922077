/** What a person does to the workbench, and what can be seen of it. Every wait is for something to be there. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { LIMIT_MS } from './host.ts';
import { OUT } from './route.ts';

/** Between keys: a quick typist's. */
const KEY_MS = 40;

/** Opens a file of the folder with the cursor on a line, from one. */
export async function openFile(page: Page, name: string, line: number): Promise<void> {
  const rows = page.locator('.quick-input-list-row');
  const input = page.locator('.quick-input-widget input[type=text]');
  await page.keyboard.press('Control+P');
  // What is typed before the list stands there is not looked up.
  await rows.first().waitFor();
  await input.fill(`${name}:${line}`);
  await rows.filter({ hasText: name }).first().waitFor();
  await page.keyboard.press('Enter');
  await page.locator('.tab.active', { hasText: name }).waitFor();
}

export const type = (page: Page, text: string): Promise<void> => page.keyboard.type(text, { delay: KEY_MS });

/** Waits until the open list has `label` in front. */
export const offered = (page: Page, label: string): Promise<void> =>
  listed(page, '.monaco-list-row.focused', [label]);

/** Waits until the open list has these labels and no others. */
export const allOffered = (page: Page, labels: readonly string[]): Promise<void> =>
  listed(page, '.monaco-list-row', labels);

async function listed(page: Page, rows: string, labels: readonly string[]): Promise<void> {
  const names = page.locator(`.suggest-widget.visible ${rows} .label-name`);
  await until(
    () => `${labels} in the list`,
    async () => (await names.allTextContents()).join() === labels.join(),
  );
}

/** Saves, and waits until the file's lines, without their indentation, are as they must be from `from` on. */
export async function savedAs(
  page: Page,
  file: string,
  from: number,
  lines: readonly string[],
): Promise<void> {
  const wanted = lines.join('\n');
  const written = () =>
    readFileSync(file, 'utf8')
      .split('\n')
      .slice(from)
      .map((line) => line.trimStart())
      .join('\n')
      .trimEnd();
  await page.keyboard.press('Control+S');
  await until(
    () => `\n${wanted}\nin place of\n${written()}`,
    async () => written() === wanted,
  );
}

/** Looks again until it holds. */
export async function until(what: () => string, holds: () => Promise<boolean>): Promise<void> {
  for (const end = Date.now() + LIMIT_MS; !(await holds()); ) {
    if (Date.now() > end) throw new Error(`waited in vain for ${what()}`);
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
}

export async function picture(page: Page, name: string): Promise<void> {
  await page.screenshot({ path: join(OUT, `${name}.png`), animations: 'disabled' });
}
