/** Plain speech in the editor: what a line was taken for behind it and on hover, and how it is written out. */
import { expect, test } from 'vitest';
import { codeActionsAt } from '../../server/features/code-actions.ts';
import { DEFAULT_STYLE, formatEdits } from '../../server/features/formatting.ts';
import { hoverAt } from '../../server/features/hover.ts';
import { hintsOf } from '../../server/features/inlay-hints.ts';
import { semanticTokens } from '../../server/features/semantic-tokens.ts';
import { openNotebook } from '../../server/rules/check.ts';

const BOOK = [
  'Sat 3/14/26 - truck out of the shed',
  '  12 initial, 22 mech   ; by lamp',
  '  the rain   stopped',
  '  idle 800 rpm',
  '  back to 850',
  '  fuel line weeping at the pump',
];
const snapshot = openNotebook(BOOK.join('\r\n'));
const around = {
  levels: new Map(),
  units: new Map(),
  indent: 2,
  today: '2026-05-02',
  only: undefined,
  elsewhere: () => [],
};
const actions = (line: number, only?: readonly string[]) => {
  const at = { line, character: 3 };
  return codeActionsAt(snapshot, { start: at, end: at }, { ...around, only });
};
const hover = (line: number) => hoverAt(snapshot, { line, character: 4 }, new Map())?.text ?? '';

test('behind the line stands what it was taken for, behind a remark nothing', () =>
  expect(
    hintsOf(snapshot, 0, BOOK.length, { kinds: new Set(['spoken']), units: new Map() }).map(
      ({ position, text }) => [position, text],
    ),
  ).toEqual([
    [{ line: 0, character: 35 }, '→ session 2026-03-14'],
    [{ line: 1, character: 21 }, '→ initial 12 deg; mechanical limit 22 deg'],
  ]));

test('on hover too, with what there is to say of the first', () => {
  expect(hover(1)).toContain('**initial 12 deg**');
  expect(hover(1)).toContain('**mechanical limit 22 deg**');
});
test('a question has its readings on hover', () => expect(hover(4)).toContain('- idle 850 rpm'));

test('the light bulb writes a line as read, its comment behind it', () => {
  const [action] = actions(1, ['refactor']);
  expect(action?.title).toBe('Write it as read');
  expect(action?.edits).toEqual([
    {
      range: { start: { line: 1, character: 2 }, end: { line: 1, character: 21 } },
      text: 'initial 12 deg\r\n  mechanical limit 22 deg',
    },
  ]);
});
test('all of them in one step', () =>
  expect(actions(0, ['source.asRead']).map(({ title }) => title)).toEqual(['Write all as read (3)']));

test('each reading of what is asked is one step, none of them sure', () => {
  const offers = actions(4, ['quickfix']).filter(({ edits }) => edits.length > 0);
  expect(offers.map(({ title }) => title).slice(0, 2)).toEqual(['Write "idle 850 rpm"', 'Keep it as a note']);
  expect(offers.some(({ isSure }) => isSure)).toBe(false);
});
test('what may be dangerous is a fault first', () =>
  expect(actions(5, ['quickfix'])[0]?.title).toMatch(/^Write "fault .*\[safety\]"$/));

test('formatting leaves plain speech as it is typed', () =>
  expect(
    formatEdits(snapshot, DEFAULT_STYLE)
      .map(({ range }) => range.start.line)
      .filter((line) => line !== 3),
  ).toEqual([]));
test('its words are left to the colouring', () =>
  expect([...semanticTokens(snapshot)].filter(({ line }) => line !== 3)).toEqual([]));
