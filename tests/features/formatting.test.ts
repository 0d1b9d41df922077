import { expect, test } from 'vitest';
import type { FormatStyle } from '../../server/features/formatting.ts';
import { formatted } from '../harness/checks.ts';
import { dedent } from '../harness/fixture.ts';

const ROWS: readonly (readonly [
  what: string,
  before: string,
  after: string,
  style?: Partial<FormatStyle>,
])[] = [
  [
    'names and values in columns, lines moved in',
    `
      engine
      cylinders 4
          firing order  1-3-4-2
      session 2026-05-02 New springs
      initial 9 deg
        mixture  left 1 1/2 turns ,right 1 turn
    `,
    `
      engine
        cylinders        4
        firing order     1-3-4-2
      session 2026-05-02  New springs
        initial          9 deg
        mixture          left 1 1/2 turns, right 1 turn
    `,
  ],
  [
    'a long name moves the others of its section, a very long one stands out',
    `
      session 2026-05-02
        idle 850 rpm
        accelerator pump "long hole"
      session 2026-05-03
        idle 850 rpm
        the quite extraordinary knob "a"
      words
        the quite extraordinary knob of mine: setting, mm
    `,
    `
      session 2026-05-02
        idle              850 rpm
        accelerator pump  "long hole"
      session 2026-05-03
        idle             850 rpm
        the quite extraordinary knob "a"
      words
        the quite extraordinary knob of mine:  setting, mm
    `,
  ],
  [
    'where figures are printed stands in a column of its own, comments behind it',
    `
      specs
        head bolts torque 58..62 lb-ft source "table 4"
        plug gap 0.028 in source "plate" ; worn
        idle 850 rpm ; no source
    `,
    `
      specs
        head bolts       torque 58..62 lb-ft  source "table 4"
        plug gap         0.028 in             source "plate"  ; worn
        idle             850 rpm                              ; no source
    `,
  ],
  [
    'a place right after the name belongs to it, a time stands before it',
    `
      session 2026-05-02
        plug #4 "sooty"
        +35 min tube 388 401 384 F
        09:30 note  hunts;  a little
    `,
    `
      session 2026-05-02
        plug #4          "sooty"
        +35 min  tube    388 401 384 F
        09:30  note hunts;  a little
    `,
  ],
  [
    'comments below each other; whole lines of comment at the edge stay there',
    `
      ; the boat
      limits
        total <= 34 deg ; knocked
        water <= 195 F    ;hot
         ; moved in
      ; at the edge
    `,
    `
      ; the boat
      limits
        total            <= 34 deg  ; knocked
        water            <= 195 F   ;hot
        ; moved in
      ; at the edge
    `,
  ],
  [
    'the rows of a trial further in, in columns of their own',
    `
      session 2026-05-02
      trial feed restrictor  ->  oil pressure
      1/8 in 12 psi
      note warm by now
      3/16 in 16.5 psi
      want 13 psi
      note done
    `,
    `
      session 2026-05-02
        trial feed restrictor -> oil pressure
          1/8 in   12 psi
          note warm by now
          3/16 in  16.5 psi
          want 13 psi
        note done
    `,
  ],
  [
    'parts, ports, specs and own words',
    `
      parts
      carb twin "pair"
      ports
      carb base  distributor canister
      manifold rear capped
      coolant : pump -> block
      specs
      head bolts torque 60 lb-ft source "manual"
    `,
    `
      parts
        carb twin        "pair"
      ports
        carb base        distributor canister
        manifold rear    capped
        coolant:         pump -> block
      specs
        head bolts       torque 60 lb-ft  source "manual"
    `,
  ],
  [
    'work lines keep their words and prose as it stands',
    `
      session 2026-05-02
          todo   strainer :  clean  it out   [safety]
       check   throttle return   ok
      photo   a  b.jpg
    `,
    `
      session 2026-05-02
        todo strainer: clean  it out [safety]
        check throttle return ok
        photo a  b.jpg
    `,
  ],
  [
    'a broken line stays as it stands, and the lines around it do not mind',
    `
      session 2026-05-02
      initial 9 deg
           ~~  ??   ..
      sparkle    7
      idle   850 rpm "open
    `,
    `
      session 2026-05-02
        initial          9 deg
           ~~  ??   ..
      sparkle    7
      idle   850 rpm "open
    `,
  ],
  [
    'room is what a sign takes, not how many units it has',
    `
      session 2026-05-02
        plug "🔧🔧" ; a
        knock "none" ; b
    `,
    `
      session 2026-05-02
        plug             "🔧🔧"  ; a
        knock            "none"  ; b
    `,
  ],
  [
    'units as the table prints them, if asked',
    `
      session 2026-05-02
        points gap  0.016"
        initial     9 °
        depression  17 in. Hg at idle
        mixture     1 turns
        weather     57 deg F, 62% RH
    `,
    `
      session 2026-05-02
        points gap       0.016 in
        initial          9 deg
        depression       17 inHg at idle
        mixture          1 turns
        weather          57 F, 62 %RH
    `,
    { unitSpelling: 'table' },
  ],
  ['no indentation, if asked', 'engine\n   cylinders 4\n', 'engine\ncylinders        4\n', { indent: 0 }],
  [
    'blanks at the end of a line go, line breaks stay',
    'engine  \r\n\t\r\n cylinders 4 \r',
    'engine\r\n\r\n  cylinders        4\r',
  ],
  ['nothing of nothing', '', ''],
];

test.each(ROWS.map((row) => [row[0], row] as const))('%s', (_what, [, before, after, style]) =>
  expect(formatted(before, style)).toBe(dedent(after)),
);

const CONFLICT =
  'session 2026-05-02\n  initial          9 deg\n<<<<<<< bench\n  idle 850   rpm\n||||||| base\n=======\nsession 2026-05-03\nidle   900 rpm\n>>>>>>> yard\n';

test('the markers of a merge, and what stands between them, stay as they are', () =>
  expect(formatted(`${CONFLICT}  dwell 49 deg`, { unitSpelling: 'table' })).toBe(
    `${CONFLICT}  dwell            49 deg`,
  ));

test('in a range the columns that are there are kept to', () =>
  expect(
    formatted(`
      session 2026-05-02
        initial    9 deg
        mixture    1 turn
      «  idle 850 rpm
      »  dwell  49 deg
    `),
  ).toBe(
    dedent(`
      session 2026-05-02
        initial    9 deg
        mixture    1 turn
        idle       850 rpm
        dwell  49 deg
    `),
  ));

test('a line that would be too long to be read stays as it stands', () => {
  const long = `plug "${'x'.repeat(1990)}"`;
  expect(formatted(`session 2026-05-02\n${long}\nidle 850 rpm`)).toBe(
    `session 2026-05-02\n${long}\n  idle             850 rpm`,
  );
});
