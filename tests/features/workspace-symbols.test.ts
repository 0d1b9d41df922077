import { expect, test } from 'vitest';
import { foundSymbols } from '../harness/checks.ts';

const BOAT = `
  parts
    carb twin  "side-draughts"
  words
    boost knob: setting, 0..10 turns, "bleed"
  session 2026-05-02  New springs
    initial 9 deg
    todo strainer: brush the basket out
`;
const TRACTOR = `
  session 2026-05-04
    fault steering: binds [safety]
    done steering
`;

test.each([
  ['carb', 'carb twin | parts'],
  ['KNOB', 'boost knob | words'],
  ['springs', '2026-05-02 New springs | '],
  ['basket strainer', 'todo strainer: brush the basket out | 2026-05-02 New springs'],
  ['steering', 'fault steering: binds | 2026-05-04', 'done steering | 2026-05-04'],
  ['2026', '2026-05-02 New springs | ', '2026-05-04 | '],
  ['initial'],
])('%s', (query, ...found) => expect(foundSymbols(query, BOAT, TRACTOR)).toEqual(found));

test('an empty query finds all, up to what a list can hold', () => {
  expect(foundSymbols('', BOAT, TRACTOR)).toHaveLength(7);
  expect(foundSymbols('', 'session 2026-05-04\n'.repeat(600))).toHaveLength(500);
});
