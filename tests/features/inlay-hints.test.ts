import { expect, test } from 'vitest';
import { hinted } from '../harness/remarks.ts';

const FIRST = `
session 2026-05-02
  initial  9 deg
  mechanical  0 deg @ 900 rpm, 22 deg @ 3200 rpm
  mixture  left 1 turn, right 1 1/4 turns
  idle  850 rpm in neutral
  egt  640 C
session 2026-05-03
`;

const CHANGES: readonly (readonly [what: string, line: string, ...shown: readonly string[]])[] = [
  ['a whole value', 'initial 11 deg‸', 'initial 11 deg «2 deg more»'],
  ['a change, and what it comes to', 'initial +2 deg‸', 'initial +2 deg «= 11 deg»'],
  [
    'each place',
    'mixture left 3/4 turn, right 1 1/2 turns‸',
    'mixture left 3/4 turn, right 1 1/2 turns «left 1/4 turn less, right 1/4 turn more»',
  ],
  ['a whole value below nought', 'initial at -2 deg‸', 'initial at -2 deg «11 deg less»'],
  ['a change past nought', 'initial -11 deg‸', 'initial -11 deg «= -2 deg»'],
  ['before the comment', 'initial 11 deg ; better‸', 'initial 11 deg «2 deg more»'],
  [
    'a reading under the same conditions',
    'idle 800 rpm in neutral‸',
    'idle 800 rpm in neutral «50 rpm less»',
  ],
  [
    'the mean of a list',
    'tube 400 410 420 430 F\ntube 410 420 430 440 F‸',
    'tube 410 420 430 440 F «mean 10 F more»',
  ],
  ['a reading in the unit it was written in', 'egt 1200 F‸', 'egt 1200 F «16 F more»'],
  ['not a reading under others', 'idle 800 rpm in drive‸'],
  ['not the same again', 'initial 9 deg‸'],
  ['not the first of its kind', 'dwell 50 deg‸'],
  ['not a change from an unknown start', 'dwell +2 deg‸'],
];

test.each(CHANGES)('change: %s', (_what, line, ...shown) =>
  expect(hinted(FIRST + line, 'change')).toEqual(shown),
);

const TOTALS: readonly (readonly [what: string, line: string, ...shown: readonly string[]])[] = [
  ['after what changes it', 'initial 11 deg‸', 'initial 11 deg «total 33, idle 11 deg»'],
  ['not after what does not', 'initial 9 deg‸'],
  ['not after a setting of another kind', 'mixture left 1 turn‸'],
];

test.each(TOTALS)('total: %s', (_what, line, ...shown) =>
  expect(hinted(FIRST + line, 'total')).toEqual(shown),
);

test.each<readonly [line: string, ...shown: readonly string[]]>([
  ['egt 640 C‸', 'egt 640 C «= 1184 F»'],
  ['tube 388 401 F‸', 'tube 388 401 F «= 198 205 C»'],
  ['idle 800 rpm‸'],
])('unit: %s', (line, ...shown) => expect(hinted(FIRST + line, 'unit')).toEqual(shown));

test('only what is asked for', () => expect(hinted(`${FIRST}initial 11 deg`)).toEqual([]));

test('a line that cannot be read has none, and spoils no other', () =>
  expect(hinted(`${FIRST}~~ ?? ..\ninitial 11 deg`, 'change')).toEqual(['initial 11 deg «2 deg more»']));
