/** Timing, points and depression. The figures' sources stand beside them. */
import { rows } from './found.ts';

const NINE = 'initial 9 deg | mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm';

// More than about 2 deg apart: common practice, no source.
rows('measured-differs', [
  [`${NINE} | total «37 deg» @ 3200 rpm`, '9 deg + 22 deg = 31 deg at 3200 rpm'],
  [`${NINE} | total «33.5 deg» @ 3200 rpm`],
  [`${NINE} | total 33 deg @ 3200 rpm`],
  [`${NINE} | total 29 deg @ 3200 rpm`],
  [`${NINE} | total «28 deg» @ 1600 dist rpm`],
  [`${NINE} | total ~33 deg @ 3200 rpm`],
  [`${NINE} | total 33..36 deg @ 3200 rpm`],
  [`${NINE} | total 37 deg`],
  [`${NINE} | timing 37 deg @ 3200 rpm`],
  [`${NINE} | timing «37 deg» @ 3200 rpm, vacuum plugged`],
  [`${NINE} | vacuum source plugged | timing «37 deg» @ 3200 rpm`],
  [
    `${NINE} | timing «10 deg ATDC» @ 800 rpm`,
    'Measured -10 deg, but the settings give 9 deg or more there, from no vacuum advance to all of it.',
  ],
  [`${NINE} | timing 2 deg @ 800 rpm static`],
  [`${NINE} | vacuum advance 0 deg @ 4 inHg, 12 deg @ 12 inHg, manifold | timing 21 deg @ 800 rpm`],
  [
    `${NINE} | vacuum advance 0 deg @ 4 inHg, 12 deg @ 12 inHg, manifold | timing «25 deg» @ 800 rpm`,
    '9..21 deg',
  ],
  ['initial 9 deg | total 37 deg @ 3200 rpm'],
]);
// A printed factory table, initial 6: 2000 rpm 6+14=20, 3000 rpm 6+21=27 (common practice: relayed in a public forum).
rows(
  'measured-differs',
  [
    ['total 20 deg @ 2000 rpm'],
    ['total 27 deg @ 3000 rpm'],
    ['total «24 deg» @ 2000 rpm', '6 deg + 14 deg = 20 deg'],
  ],
  'session 2026-05-02\n  initial 6 deg\n  mechanical 0 deg @ 500 rpm, 2 deg @ 1000 rpm, 9 deg @ 1600 rpm, 14 deg @ 2000 rpm, 21 deg @ 3000 rpm, 28 deg @ 4000 rpm, 32 deg @ 4600 rpm',
);

// 360 / cylinders in degrees of the distributor: four 90, six 60, eight 45 (geometry).
for (const [cylinders, most] of [
  [4, 90],
  [6, 60],
  [8, 45],
] as const) {
  rows(
    'dwell-too-long',
    [
      [`session 2026-05-02 | dwell «${most} deg»`, `only ${most} deg from spark to spark`],
      [`session 2026-05-02 | dwell «${most + 5} deg»`],
      [`session 2026-05-02 | dwell ${most - 1} deg`],
      ['session 2026-05-02 | dwell «100 %»', 'never open'],
      ['session 2026-05-02 | dwell 60 %'],
    ],
    `engine\n  cylinders ${cylinders}`,
  );
}
rows('dwell-too-long', [['dwell 94 deg']]);

rows('timing-after-dwell', [
  ['initial 9 deg | «points gap 0.016 in»', 'Check it again (common practice, no source).'],
  ['timing 9 deg @ 800 rpm | «dwell 50 deg»'],
  ['initial 9 deg | «points gap 0.016 in» | dwell 50 deg'],
  ['points gap 0.016 in | initial 9 deg | «dwell 50 deg»'],
  ['dwell 50 deg | initial 9 deg'],
  ['initial 9 deg | session 2026-05-03 | dwell 50 deg'],
]);

rows('curve-not-rising', [
  ['mechanical 0 deg @ 900 rpm, 8 deg @ «800 rpm»', '800 rpm is out of order after 900 rpm.'],
  ['mechanical 0 deg @ 900 rpm, 8 deg @ «900 rpm»'],
  ['vacuum advance 0 deg @ 12 inHg, 12 deg @ «4 inHg»'],
  ['mechanical 0 deg @ 900, 8 deg @ 1500 rpm'],
  [
    'mechanical 0 deg @ 900 rpm, 10 deg @ 1800 rpm, «2 deg» @ 2800 rpm',
    '2 deg after 10 deg: mechanical does not drop as speed rises.',
  ],
  ['mechanical 0 deg @ 900 rpm, 10 deg @ 1800 rpm, 10 deg @ 2800 rpm'],
  ['mechanical 0 deg @ 450 dist rpm, 8 deg @ 1500 rpm'],
]);

// 101325 Pa (International Standard Atmosphere) at 3386.389 Pa for each inHg (NIST SP 811) is 29.92 inHg.
rows('depression-above-barometer', [
  ['depression «30 inHg»', '29.92 inHg'],
  ['depression «102 kPa»', '101.3 kPa'],
  ['depression 29 inHg'],
  ['weather 14 C, 850 hPa | depression «26 inHg»', "this session's barometer, 25.1 inHg"],
  ['barometer 850 hPa | depression «26 inHg»'],
  // U.S. Standard Atmosphere 1976: 752.6 hPa, 22.22 inHg, at 8000 ft.
  ['altitude 8000 ft | depression «25 inHg»', "this session's altitude, ~22.22 inHg"],
  ['altitude 8000 ft | depression 22 inHg'],
  ['altitude 8000 ft | barometer 850 hPa | depression 25 inHg'],
  ['weather 14 C, 850 hPa | session 2026-05-03 | depression 26 inHg'],
  ['depression «17 psi»', '14.7 psi'],
]);

rows('idle-swapped', [
  [
    'idle 720 rpm in neutral | idle «850 rpm in drive»',
    'Idle in gear is the lower one: were the two swapped?',
  ],
  ['idle 850 rpm in drive | idle «720 rpm in park»'],
  ['idle 720 N | idle «850 D»'],
  ['idle 720 N | idle screw in 1/2 turn | idle 850 D'],
  ['idle 850 rpm in neutral | idle 720 rpm in drive'],
  ['idle 850 rpm in neutral | idle 850 rpm in drive'],
  ['idle 720 rpm in neutral | idle ~700..760 rpm in drive'],
  ['idle 720 rpm in neutral | session 2026-05-03 | idle 850 rpm in drive'],
  ['idle 720 rpm | idle 850 rpm in drive'],
]);
