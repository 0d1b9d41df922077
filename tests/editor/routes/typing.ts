/** Writing in the notebook by keyboard: what is typed is what is there, and Tab goes where a person means it to go. */
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { today } from '../../../server/lsp/clock.ts';
import { allOffered, offered, openFile, picture, savedAs, type } from '../page.ts';

const NOTEBOOK = 'lines.tappet';
/** The first line that is written here, from zero; the notebook ends before it. */
const FROM = 12;

/** Lines as people write them, among them names that others go on from and words that begin a template. */
const LINES: readonly string[] = [
  'idle 850 rpm in neutral',
  'choke off',
  'initial 9 deg',
  'total 31 deg @ 3000 rpm',
  'mixture left 1 1/2 turns, right 1 1/4 turns',
  'water 180 F',
  'vacuum 18 inHg at idle',
  'fit carb single',
  'note a little rich, off idle',
  'todo choke: set the pull off',
  'check throttle return ok',
  'points gap 0.016"',
  'advance springs "two light ones"',
  'fault brake: drags [safety]',
  'revert to 2026-05-01',
  'keep',
  'limits',
  'total <= 34 deg',
];

/** Keys that type while a list is open. */
const KEYS = ['Enter', ' ', '9', '.', ',', '=', '/', ':', '-', '('];

/** What is typed, what the list then has on top, and what is written at each stop with a Tab between. */
const TEMPLATES: readonly (readonly [
  begun: string,
  top: string,
  stops: readonly string[],
  lines: readonly string[],
])[] = [
  [
    'limi',
    'limits',
    ['34', 'idle <= 1000 rpm'],
    ['limits', 'total            <= 34 deg', 'idle <= 1000 rpm'],
  ],
  [
    'targ',
    'targets',
    ['850', 'water 180 F'],
    ['targets', 'idle             850 rpm in neutral', 'water 180 F'],
  ],
  [
    'engi',
    'engine',
    ['4', '1-3-4-2', '84 mm', '80 mm', '9:1', 'petrol'],
    [
      'engine',
      'cylinders        4',
      'firing order     1-3-4-2',
      'bore             84 mm',
      'stroke           80 mm',
      'compression      9:1',
      'fuel             petrol',
    ],
  ],
  [
    'part',
    'parts',
    ['carb twin', 'pair', 'distributor  "points"'],
    ['parts', 'carb twin  "pair"', 'distributor  "points"'],
  ],
  [
    'spec',
    'specs',
    ['head bolts', '60 lb-ft', 'handbook', 'points gap 0.4 mm'],
    ['specs', 'head bolts  torque 60 lb-ft  source "handbook"', 'points gap 0.4 mm'],
  ],
  [
    'ports',
    'ports',
    ['manifold rear', 'brake booster', 'carb base  capped'],
    ['ports', 'manifold rear  brake booster', 'carb base  capped'],
  ],
  ['sess', 'session', ['Leaner', 'idle 800 rpm'], [`session ${today()}  Leaner`, 'idle 800 rpm']],
  [
    'word',
    'words',
    ['stop hole', 'setting', 'mm', 'in the stop', 'keep'],
    ['words', 'stop hole: setting, mm, "in the stop"', 'keep'],
  ],
  [
    'tria',
    'trial',
    ['initial', 'idle', '8 deg 780 rpm', '820 rpm'],
    ['trial initial -> idle', '8 deg 780 rpm', 'want 820 rpm'],
  ],
];

export function typingSteps(page: Page, folder: string): Readonly<Record<string, () => Promise<void>>> {
  const file = join(folder, NOTEBOOK);
  return {
    'opens a notebook to write in': () => openFile(page, NOTEBOOK, FROM + 1),
    'lines end at Enter as they were typed': () => writeLines(page, file),
    'the list begins with what is typed': () => sift(page, file),
    'no key that types takes an offer': () => typeOverOffers(page, file),
    ...Object.fromEntries(
      TEMPLATES.map(([begun, top, stops, lines]) => [
        `Tab walks the template of ${top}`,
        () => walk(page, file, { begun, top, stops, lines }),
      ]),
    ),
  };
}

async function writeLines(page: Page, file: string): Promise<void> {
  await startOver(page, file);
  for (const line of LINES) {
    await type(page, line);
    await page.keyboard.press('Enter');
  }
  await savedAs(page, file, FROM, LINES);
  await picture(page, 'lines');
}

async function sift(page: Page, file: string): Promise<void> {
  await startOver(page, file);
  await type(page, 'choke of');
  await allOffered(page, ['off']);
  await picture(page, 'list');
}

async function typeOverOffers(page: Page, file: string): Promise<void> {
  for (const key of KEYS) {
    await startOver(page, file);
    await type(page, 'idl');
    await offered(page, 'idle');
    await page.keyboard.press(key);
    await type(page, 'x');
    await savedAs(page, file, FROM, key === 'Enter' ? ['idl', 'x'] : [`idl${key}x`]);
  }
}

interface Walk {
  readonly begun: string;
  readonly top: string;
  readonly stops: readonly string[];
  readonly lines: readonly string[];
}

async function walk(page: Page, file: string, { begun, top, stops, lines }: Walk): Promise<void> {
  await startOver(page, file);
  await type(page, begun);
  await offered(page, top);
  await picture(page, `offer-${top}`);
  await page.keyboard.press('Tab');
  await page.locator('.suggest-widget.visible').waitFor({ state: 'detached' });
  await picture(page, `template-${top}`);
  for (const [i, stop] of stops.entries()) {
    if (i > 0) await page.keyboard.press('Tab');
    await type(page, stop);
  }
  await picture(page, `filled-${top}`);
  await savedAs(page, file, FROM, lines);
}

/** Takes away what was written here and begins a line below the head. */
async function startOver(page: Page, file: string): Promise<void> {
  const input = page.locator('.quick-input-widget');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+G');
  await input.locator('input[type=text]').fill(`:${FROM}:100`);
  await page.keyboard.press('Enter');
  await input.waitFor({ state: 'hidden' });
  await page.keyboard.press('Control+Shift+End');
  await page.keyboard.press('Delete');
  await savedAs(page, file, FROM, []);
  await page.keyboard.press('Enter');
}
