/** What README.md says of its notebook, asked of that notebook. */
/// <reference types="node" />
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { ran } from '../cli/terminal.ts';
import { actionsAt, diagnosticsIn, foldTexts, hoverLines, outline } from '../harness/checks.ts';
import { hinted, lensed } from '../harness/remarks.ts';
import { listed } from '../harness/suggestions.ts';

const README = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
const NOTEBOOK = /```tappet\n([\s\S]*?)```/.exec(README)?.[1] ?? '';

/** The notebook with the cursor before a text that stands in it once. */
function at(text: string): string {
  expect(NOTEBOOK.split(text)).toHaveLength(2);
  return NOTEBOOK.replace(text, `‸${text}`);
}

test.each(['initial          9 deg', 'initial          +4 deg'])(
  '%s: three totals, each with its sum and its lines',
  (line) => {
    const lines = hoverLines(at(line));
    for (const total of ['timing at idle', 'total', 'cruise total'])
      expect(lines).toContainEqual(expect.stringMatching(RegExp(`^${total} [\\d.]+ deg = [\\d.]+ deg \\+ `)));
    expect(lines).toContainEqual(expect.stringMatching(/; maximum mechanical: line 12\b/));
  },
);

test('what is marked', () =>
  expect(
    diagnosticsIn(NOTEBOOK).map(({ code, range }) => [code, NOTEBOOK.split('\n')[range.start.line]]),
  ).toEqual([
    ['total-over-limit', '  initial          +4 deg'],
    ['road-run-open-fault', '  speed            19 kn'],
    ['road-run-check-due', '  speed            19 kn'],
    ['changed-together', '  speed            19 kn'],
  ]));

test('each session is one line when folded', () =>
  expect(foldTexts(NOTEBOOK).filter((fold) => fold.includes('session'))).toHaveLength(2));

test('the outline has sessions and open items', () => {
  const lines = outline(NOTEBOOK);
  expect(lines).toContain('2026-05-03 Leaner | 08:10');
  expect(lines).toContain('  fault bilge fan | does not start');
});

test.each([
  ['  ini', 'initial 13 deg | in force from 2026-05-03'],
  ['  done ', 'bilge fan | fault: does not start'],
])('typed on a new line: "%s"', (typed, offer) => expect(listed(`${NOTEBOOK}${typed}‸`)).toContain(offer));

test('above each session: what changed, what is open, a session from there', () =>
  expect(lensed(NOTEBOOK).slice(-2)).toEqual([
    '19: 2 settings changed, 1 item open, 1 safety',
    '19: Start a session from here',
  ]));

test('behind a setting: how far it moved, and the totals it makes', () =>
  expect(hinted(at('initial          +4 deg'), 'change', 'total')).toEqual([
    'initial          +4 deg «= 13 deg»',
    'initial          +4 deg «total 35, cruise 47, idle 25.3 deg»',
  ]));

test.each([
  ['initial          9 deg', 'About this rule', false],
  ['initial          +4 deg', 'About this rule', true],
  ['fault bilge fan', 'Mark bilge fan done today', true],
])('light bulb at "%s": %s', (line, title, isThere) =>
  expect(actionsAt(at(line)).some((action) => action.title.startsWith(title))).toBe(isThere),
);

/** As they stand there, each line of a block of commands up to its remark. */
const COMMANDS = [...README.matchAll(/^node dist\/cli\.cjs (.*?)\s*(?:#.*)?$/gm)].map(
  (match) => match[1] as string,
);

test('commands are told of', () => expect(COMMANDS.length).toBeGreaterThan(3));
test.each(COMMANDS)('tappet %s', (command) =>
  expect(ran(command, { 'marsh.tappet': NOTEBOOK })).toMatchObject({
    code: command.startsWith('check') ? 1 : 0,
    err: '',
  }),
);
