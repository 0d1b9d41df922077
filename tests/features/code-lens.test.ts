import { expect, test } from 'vitest';
import { lensed } from '../harness/remarks.ts';

const ROWS: readonly (readonly [what: string, text: string, ...lenses: readonly string[]])[] = [
  ['none outside sessions', 'engine\n  bore 86 mm\n'],
  [
    'a session in which nothing was done',
    'session 2026-05-02\n',
    '1: Nothing changed',
    '1: Start a session from here',
  ],
  [
    'what was changed and what is open',
    `
    session 2026-05-02
      fit carb single
      initial 9 deg
      mixture 1 turn
    session 2026-05-03
      initial 11 deg
      mixture 1 turn
      dwell 50 deg
      todo strainer: look
      fault steering: binds [safety]
    `,
    '1: 2 settings first written, 1 part fitted',
    '1: Start a session from here',
    '5: 1 setting changed, 1 setting first written, 2 items open, 1 safety',
    '5: Start a session from here',
  ],
  [
    'what is to be rechecked, until it is done',
    `
    specs
      head bolts torque 60 lb-ft
    session 2026-05-02
      recheck head bolts after 1 day
    session 2026-05-04
      head bolts torque 60 lb-ft
    session 2026-05-05
      recheck head bolts after 1 day
    session 2026-05-07
    `,
    '3: Nothing changed',
    '3: Start a session from here',
    '5: Nothing changed',
    '5: Start a session from here',
    '7: Nothing changed',
    '7: Start a session from here',
    '9: 1 recheck due',
    '9: Start a session from here',
  ],
  [
    'the last one kept, above',
    `
    session 2026-05-02
      keep
    session 2026-05-03
      keep
    session 2026-05-04
    `,
    '1: Nothing changed',
    '1: Start a session from here',
    '3: Nothing changed',
    '3: Compare with 2026-05-02, kept',
    '3: Start a session from here',
    '5: Nothing changed',
    '5: Compare with 2026-05-03, kept',
    '5: Start a session from here',
  ],
];

test.each(ROWS)('%s', (_what, text, ...lenses) => expect(lensed(text)).toEqual(lenses));
