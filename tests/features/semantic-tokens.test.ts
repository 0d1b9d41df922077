import { expect, test } from 'vitest';
import { meanings } from '../harness/checks.ts';

test.each<[line: string, ...told: string[]]>([
  ['session 2026-05-02  New springs', 'keyword session', 'value 2026-05-02', 'title New springs'],
  ['limits', 'keyword limits'],
  ['  initial 9 deg ; as found', 'setting initial', 'value 9', 'unit deg'],
  ['  idle 850 rpm in neutral', 'reading idle', 'value 850', 'unit rpm', 'condition neutral'],
  [
    '  mechanical 0 deg @ 900 rpm, 8 deg @ 1500 rpm',
    ...['setting mechanical', 'value 0', 'unit deg', 'value 900', 'unit rpm'],
    ...['value 8', 'unit deg', 'value 1500', 'unit rpm'],
  ],
  ['  mixture left in 1/4 turn', 'setting mixture', 'place left', 'value 1/4', 'unit turn'],
  ['  plug #4 "sooty"', 'reading plug', 'place #4', 'text "sooty"'],
  ['  tube 388 401 F', 'reading tube', 'value 388', 'value 401', 'unit F'],
  ['  todo strainer: clean it out [safety]', 'keyword todo', 'id strainer', 'note clean it out'],
  ['  fit carb twin', 'keyword fit', 'id carb twin'],
  ['  photo a b.jpg', 'keyword photo', 'text a b.jpg'],
  ['  note hunts; a little', 'keyword note', 'note hunts; a little'],
  ['  sparkle 7 rpm'],
  ['  5/32 in  14.5 psi', 'value 5/32', 'unit in', 'value 14.5', 'unit psi'],
])('%s', (line, ...told) => expect(meanings(`session 2026-05-01\n${line}`)).toEqual(told));

test('words of the notebook are what it says they are', () =>
  expect(meanings('words\n  sparkle: reading, 1..9\nsession 2026-05-02\n  sparkle 7', 2)).toEqual([
    'keyword session',
    'value 2026-05-02',
    'reading sparkle',
    'value 7',
  ]));
