import { expect, test } from 'vitest';
import { symbolsOf } from '../../server/features/symbols.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { outline } from '../harness/checks.ts';

const ROWS: readonly (readonly [what: string, text: string, ...outline: readonly string[]])[] = [
  [
    'nothing between the markers of a merge',
    `
      engine
        cylinders  4
      <<<<<<< bench
        bore  86 mm
      session 2026-05-02
      =======
      >>>>>>> yard
        stroke  84 mm
    `,
    'engine',
    '  cylinders | 4',
    '  stroke | 84 mm',
  ],
  [
    'sections with what they say',
    `
      notebook  Bench stand
      engine
        cylinders  4
        firing order  1-3-4-2
      parts
        carb two-Barrel  "one-barrel"
      limits
        total  <= 34 deg
      ports
        manifold front  capped
    `,
    'notebook | Bench stand',
    'engine',
    '  cylinders | 4',
    '  firing order | 1-3-4-2',
    'parts',
    '  carb two-Barrel | one-barrel',
    'limits',
    '  total | <= 34 deg',
    'ports',
    '  manifold front | capped',
  ],
  [
    'sessions with their entries, parts and items',
    `
      session 2026-05-02 09:30  New springs
        weather  14 C, 1011 hPa
        fit carb single
        mechanical  0 deg @ 900 rpm, 8 deg @ 1500 rpm
        mixture  left 1 turn, right 1 1/4 turns
        plug #4  "sooty, wet"
        todo strainer: brush the basket out
        fault steering: binds [safety]
        check throttle return ok
        trial feed restrictor -> oil pressure
          1/8 in  12 psi
        note hunts a little
        keep
      session 2026-05-03
        done strainer
    `,
    '2026-05-02 New springs | 09:30',
    '  weather | 14 C, 1011 hPa',
    '  fit carb single',
    '  mechanical | 0 deg @ 900 rpm, 8 deg @ 1500 rpm',
    '  mixture | left 1 turn, right 1 1/4 turns',
    '  plug #4 | sooty, wet',
    '  todo strainer | brush the basket out',
    '  fault steering | binds',
    '  check throttle return | ok',
    '  trial | feed restrictor -> oil pressure',
    '  note | hunts a little',
    '  keep',
    '2026-05-03',
    '  done strainer',
  ],
  ['lines before any section', 'initial 9 deg\nsession 2026-05-02\n', 'initial | 9 deg', '2026-05-02'],
  ['a session without a date has a name all the same', 'session\n', 'session'],
  [
    'what cannot be read is there as it stands',
    'session 2026-05-02\n  wobble 3\n',
    '2026-05-02',
    '  wobble 3',
  ],
];

test.each(ROWS)('%s', (_what, text, ...lines) => expect(outline(text)).toEqual(lines));

test('every range lies inside the text, the selection inside the range, and no name is empty', () => {
  const text = 'notebook  A\r\nengine\r\n  cylinders 4\r\nsession\r\n  ~~\r\n  todo\r\n  plug #4 "😀"\r\n';
  const lines = text.split('\r\n');
  const all = [...symbolsOf(openNotebook(text))].flatMap((symbol) => [symbol, ...symbol.children]);
  expect(all.length).toBe(7);
  for (const { name, range, selection } of all) {
    expect(name).not.toBe('');
    expect(range.end.character).toBeLessThanOrEqual((lines[range.end.line] as string).length);
    expect(selection.start.line).toBe(range.start.line);
    expect(selection.end.character).toBeLessThanOrEqual((lines[selection.end.line] as string).length);
  }
});
