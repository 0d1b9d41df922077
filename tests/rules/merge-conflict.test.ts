/** What is said of a merge that was not finished: once, and nothing else of the lines in it. */
import { expect, test } from 'vitest';
import { found, rows } from './found.ts';

rows('merge-conflict', [
  ['«<<<<<<< bench» | initial 9 deg | ======= | initial 9 F | >>>>>>> yard', 'Choose one side'],
  ['«<<<<<<< bench» | initial 9 deg | ||||||| | ======= | initial 9 F | >>>>>>> yard', 'nothing is in force'],
  ['«<<<<<<<» | >>>>>>> | «<<<<<<<» | >>>>>>>'],
  ['«<<<<<<< a» | «<<<<<<< b» | ======= | >>>>>>> b'],
  ['«=======» | initial 9 deg', 'behind a ";"'],
  ['«>>>>>>> yard»', 'delete this one'],
  ['note <<<<<<< bench | ; ======='],
]);

test('of what is between the markers nothing else is said', () => {
  const lines = [
    'initial 9 F $ "x',
    'idle 1,5',
    'nonsense',
    'session 2026-02-30',
    'use ../../x',
    '+5 ; meant: no',
  ];
  const text = ['session 2026-05-02', '<<<<<<< a', ...lines, '=======', ...lines, '>>>>>>> b', ''].join('\n');
  expect(found(text).map(({ code, at }) => [code, at])).toEqual([['merge-conflict', 1]]);
});
