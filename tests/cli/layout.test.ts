/** What stands on the terminal: widths, wrapping, excerpts, colours. */
import { describe, expect, it, test } from 'vitest';
import { widthOf } from '../../grammar/index.ts';
import { excerpt } from '../../server/cli/excerpt.ts';
import { visible, wrap } from '../../server/cli/layout.ts';
import { painter, useColours } from '../../server/cli/paint.ts';

describe('width in columns', () => {
  it.each<[string, number]>([
    ['', 0],
    ['9 deg', 5],
    ['9°', 2],
    ['é', 1],
    ['e\u0301', 1],
    ['水温', 4],
    ['🔧', 2],
    ['👨‍🔧', 2],
    ['⚠️', 2],
  ])('%j is %i wide', (text, width) => expect(widthOf(text)).toBe(width));
});

describe('nothing in a notebook steers the terminal', () => {
  it.each<[string, string]>([
    ['idle 820', 'idle 820'],
    ['idle\t820', 'idle 820'],
    ['\u001B[31mred', '␛[31mred'],
    ['a\u0000b', 'a␀b'],
    ['a\u202Eb\u2066c', 'a\uFFFDb\uFFFDc'],
    ['\u009B31m', '\uFFFD31m'],
  ])('%j', (text, seen) => {
    expect(visible(text)).toBe(seen);
    expect(seen).toHaveLength(text.length);
  });
});

describe('wrapping', () => {
  it.each<[string, number | undefined, number, readonly string[]]>([
    ['one two three four five six', 24, 2, ['one two three four five', '  six']],
    ['one two three four five six', undefined, 2, ['one two three four five six']],
    ['a-single-word-that-is-longer-than-all', 24, 2, ['a-single-word-that-is-longer-than-all']],
    ['    moved in far enough to wrap', 24, 4, ['    moved in far enough', '    to wrap']],
    ['', 80, 0, ['']],
    ['as far as possible, at 3400 rpm', 24, 2, ['as far as possible, at', '  3400 rpm']],
    ['the mixture screws are 1 1/2 turns out', 24, 2, ['the mixture screws are', '  1 1/2 turns out']],
    ['tubes 388 401 384 226 396 410 F', 24, 2, ['tubes 388 401 384 226', '  396 410 F']],
    ['fitted                   carb', 24, 2, ['fitted', '  carb']],
  ])('%j in %s columns', (text, columns, indent, lines) =>
    expect(wrap(text, columns, indent)).toEqual(lines),
  );
});

describe('an excerpt', () => {
  const LONG = `note ${'x'.repeat(500)} here ${'y'.repeat(500)}`;
  it.each<[string, [number, number], number | undefined, string, string]>([
    ['initial 9 F', [8, 11], 80, 'initial 9 F', '        ^^^'],
    ['initial', [7, 7], 80, 'initial', '       ^'],
    ['水温 9 F', [3, 6], 80, '水温 9 F', '     ^^^'],
    ['a\tb', [2, 3], 80, 'a b', '  ^'],
  ])('%j', (line, [from, to], columns, text, marks) => {
    const spot = excerpt(line, { from, to }, columns);
    expect([spot.text, ' '.repeat(spot.before) + '^'.repeat(spot.width)]).toEqual([text, marks]);
  });

  it.each([24, 40, 80, undefined])('of a long line fits %s columns and shows the spot', (columns) => {
    const from = LONG.indexOf('here');
    const spot = excerpt(LONG, { from, to: from + 4 }, columns);
    expect(spot.text.slice(spot.before, spot.before + spot.width)).toBe('here');
    expect(widthOf(spot.text)).toBeLessThanOrEqual(columns === undefined ? 162 : Math.max(columns - 4, 22));
  });
});

describe('colours', () => {
  it.each<[Record<string, string>, string[], boolean, boolean]>([
    [{}, [], true, true],
    [{}, [], false, false],
    [{ TERM: 'dumb' }, [], true, false],
    [{ NO_COLOR: '1' }, [], true, false],
    [{ NO_COLOR: '' }, [], true, true],
    [{ FORCE_COLOR: '1' }, [], false, true],
    [{ FORCE_COLOR: '' }, [], false, true],
    [{ FORCE_COLOR: '0' }, [], true, false],
    [{ FORCE_COLOR: 'false' }, [], true, false],
    [{ FORCE_COLOR: '1', NO_COLOR: '1' }, [], false, true],
    [{ FORCE_COLOR: '1' }, ['check', '--no-color'], true, false],
  ])('%j %j on a terminal: %s', (env, args, isTerminal, wanted) =>
    expect(useColours(env, args, isTerminal)).toBe(wanted),
  );

  test('paint only when they are wanted', () => {
    expect(painter(false)('error', 'x')).toBe('x');
    expect(painter(true)('error', 'x')).toBe('\u001B[31mx\u001B[39m');
  });
});
