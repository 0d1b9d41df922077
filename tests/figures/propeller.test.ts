/** Speed from the pitch of a propeller, and its slip. */
import { describe } from 'vitest';
import { testFigures } from '../harness/figures.ts';

const boat = (facts: string, session: string): string =>
  `vehicle\n${lines(facts)}session 2026-05-02\n${lines(session)}`;
const lines = (text: string): string =>
  text
    .split(' | ')
    .map((line) => `  ${line}\n`)
    .join('');

const SHIP = 'propeller pitch 3.8 m ; meant: outside-band';

describe('slip', () => {
  testFigures([
    {
      say: '3.8 m, 87 rpm, 10 knots: 6.6 % (public answer of an examination question)',
      book: boat('body "coaster"', `${SHIP} | speed 10 kn @ 87 rpm`),
      figure: 'propeller slip at 87 rpm',
      text: [
        '6.6 %: 10 kn (11.5 mph) measured, 10.7 kn (12.3 mph) from the pitch; direct drive assumed, no reduction (drop gear) written',
      ],
      value: { low: 6.6, high: 6.6, off: 0.05 },
      caution: 'run both ways',
    },
    {
      say: '25 in through 1.86:1 at 6000 rpm, 68 mph: 10.9 % (public chart, its constant rounded)',
      book: boat('drop gear 1.86:1 | propeller pitch 25 in', 'speed 68 mph @ 6000 rpm'),
      figure: 'propeller slip at 6000 rpm',
      value: { low: 10.9, high: 10.9, off: 0.1 },
    },
    {
      say: 'a speedometer that reads over is put right first',
      book: boat('drop gear 2:1 | speedometer error 10 % | propeller pitch 10 in', 'speed 11 mph @ 2400 rpm'),
      figure: 'propeller slip at 2400 rpm',
      text: ['12 %: 8.7 kn (10 mph) measured, 9.9 kn (11.4 mph) from the pitch'],
    },
    {
      say: 'by the propeller that was on then',
      book: boat('drop gear 2:1', 'propeller pitch 14 in | speed 14 kn @ 2600 rpm | propeller pitch 28 in'),
      figure: 'propeller slip at 2600 rpm',
      working: '0.3556 m x 2600 rpm / (60 x 2:1) = 7.705 m/s; 1 - 7.202 m/s / 7.705 m/s = 6.521 %',
    },
    {
      say: 'another propeller since, and no word of its pitch',
      book: `${boat('drop gear 2:1', 'propeller pitch 14 in')}session 2026-05-03\n  propeller "four blades"\n  speed 14 kn @ 2600 rpm\n`,
      figure: 'propeller slip at 2600 rpm',
      text: [
        '6.5 %: 14 kn (16.1 mph) measured, 15 kn (17.2 mph) from the pitch; the propeller fitted 2026-05-03 may have a different pitch',
      ],
    },
    {
      say: 'less than none is told',
      book: boat('drop gear 2:1 | propeller pitch 14 in', 'speed 17 kn @ 2600 rpm'),
      figure: 'propeller slip at 2600 rpm',
      text: [
        '-13.5 %: 17 kn (19.6 mph) measured, 15 kn (17.2 mph) from the pitch; negative: wrong pitch, reduction or tachometer, or a following current',
      ],
    },
    ...[
      'propeller pitch 14 in | speed 17 kn',
      'speed 17 kn @ 2600 rpm',
      'propeller pitch +1 in | speed 17 kn @ 2600 rpm',
      'propeller pitch 0 in | speed 17 kn @ 2600 rpm',
      'propeller pitch 14 in | speed 17 kn @ 0 rpm',
    ].map((session) => ({
      say: `nothing of: ${session}`,
      book: boat('drop gear 2:1', session),
      figure: 'propeller slip at 2600 rpm',
      text: [],
    })),
    {
      say: 'nothing through a gear of nought',
      book: boat('drop gear 0', 'propeller pitch 14 in | speed 17 kn @ 2600 rpm'),
      figure: 'propeller slip at 2600 rpm',
      text: [],
    },
  ]);
});

describe('speed from propeller pitch', () => {
  testFigures([
    {
      say: 'per 1000 rpm, and at the red line with its caution',
      book: `engine\n  red line 4200\n${boat('drop gear 2:1', 'propeller pitch 15 in')}`,
      figure: 'speed from propeller pitch',
      text: ['6.2 kn (7.1 mph) per 1000 rpm, 25.9 kn (29.8 mph) at 4200 rpm, without slip'],
      caution: 'The local law',
    },
    {
      say: 'a rough pitch stays rough',
      book: boat('drop gear 2:1', 'propeller pitch 14..15 in'),
      figure: 'speed from propeller pitch',
      text: ['5.8..6.2 kn (6.6..7.1 mph) per 1000 rpm, without slip'],
    },
    {
      say: 'no pitch',
      book: boat('drop gear 2:1', 'idle 700 rpm'),
      figure: 'speed from propeller pitch',
      text: [],
    },
  ]);
});
