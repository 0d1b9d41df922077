import { expect, test } from 'vitest';
import { foundSymbols } from '../harness/checks.ts';

const BOAT = `
  parts
    carb twin  "side-draughts"
  words
    boost knob: setting, 0..10 turns, "bleed"
  session 2026-05-02  New springs
    initial 9 deg
    todo choke: hook the cable up
`;
const TRACTOR = `
  session 2026-05-04
    fault throttle: sticks [safety]
    done throttle
`;

test.each([
  ['carb', 'carb twin | parts'],
  ['KNOB', 'boost knob | words'],
  ['springs', '2026-05-02 New springs | '],
  ['cable choke', 'todo choke: hook the cable up | 2026-05-02 New springs'],
  ['throttle', 'fault throttle: sticks | 2026-05-04', 'done throttle | 2026-05-04'],
  ['2026', '2026-05-02 New springs | ', '2026-05-04 | '],
  ['initial'],
])('%s', (query, ...found) => expect(foundSymbols(query, BOAT, TRACTOR)).toEqual(found));

test('an empty query finds all, up to what a list can hold', () => {
  expect(foundSymbols('', BOAT, TRACTOR)).toHaveLength(7);
  expect(foundSymbols('', 'session 2026-05-04\n'.repeat(600))).toHaveLength(500);
});
