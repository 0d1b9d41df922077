/** A notebook in plain speech: what it was read as is shown behind it, remarks are left alone, and only the light bulb writes. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { openFile, picture, savedAs, type, until } from '../page.ts';

const NOTEBOOK = 'pencilled.tappet';
/** Lines of it, as text that only one of them has. */
const REMARK = /crisper off the bottom/;
const ASKED = /back to 850/;
const CHOSEN = 'wide open speed 850 rpm';

export function pencilledSteps(page: Page, folder: string): Readonly<Record<string, () => Promise<void>>> {
  const file = join(folder, NOTEBOOK);
  return {
    'opens a notebook in plain speech': () => openFile(page, NOTEBOOK, 1),
    'shows what a line was read as': () => showsReading(page),
    'underlines no remark': () => leavesRemark(page),
    'the first offer of the light bulb is taken': () => takesOffer(page, file),
    'Enter takes no offer': () => writesOn(page, file),
  };
}

const lineWith = (page: Page, text: RegExp): Locator =>
  page
    .locator('.editor-instance .view-line')
    .filter({ hasText: new RegExp(text.source.replaceAll(' ', '\\s')) });

async function showsReading(page: Page): Promise<void> {
  await lineWith(page, /12 initial, 22 mech.*→ initial 12 deg/)
    .first()
    .waitFor();
  await picture(page, 'pencilled');
}

/** Looked at once what is asked below it is underlined, so that the findings are there. */
async function leavesRemark(page: Page): Promise<void> {
  const marks = page.locator('.editor-instance .squiggly-info, .editor-instance .squiggly-warning');
  await marks.first().waitFor();
  const at = await lineWith(page, REMARK).first().boundingBox();
  const tops = await marks.evaluateAll((all) => all.map((each) => each.getBoundingClientRect().top));
  const under = tops.filter((top) => at && top >= at.y - 1 && top < at.y + at.height - 1);
  if (!at || under.length > 0) throw new Error('a remark is underlined');
}

async function takesOffer(page: Page, file: string): Promise<void> {
  await lineWith(page, ASKED).first().click();
  const rows = page.locator('.action-widget .monaco-list-row.action');
  await page.keyboard.press('Control+Period');
  await rows.first().waitFor();
  await picture(page, 'pencilled-offers');
  await page.keyboard.press('Enter');
  await rows.first().waitFor({ state: 'detached' });
  await page.keyboard.press('Control+S');
  await until(
    () => `"${CHOSEN}" in the file`,
    async () => linesOf(file).includes(CHOSEN),
  );
}

async function writesOn(page: Page, file: string): Promise<void> {
  const before = linesOf(file);
  await page.keyboard.press('Control+End');
  for (const line of ['back to 10', 'idl']) {
    await type(page, line);
    await page.keyboard.press('Enter');
  }
  await savedAs(page, file, before.length, ['back to 10', 'idl']);
}

const linesOf = (file: string): readonly string[] =>
  readFileSync(file, 'utf8')
    .trimEnd()
    .split('\n')
    .map((line) => line.trim());
