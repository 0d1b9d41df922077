import { describe, expect, test } from 'vitest';
import { figureIn, testFigures } from '../harness/figures.ts';
import { twoDays } from '../harness/two-days.ts';

const AGAINST = 'idle (neutral), against 2026-05-02';
const NOT_KNOWN = 'scatter not known, so nothing can be credited on one reading';

describe('a reading against the last comparable one', () => {
  testFigures([
    {
      say: 'one change has an effect for each unit of it',
      book: twoDays('initial 9 deg', 'initial 11 deg'),
      figure: AGAINST,
      text: [`40 rpm more after one change, initial 9 deg -> 11 deg: +20 rpm per deg; ${NOT_KNOWN}`],
      working: '860 rpm - 820 rpm = 40 rpm; 40 rpm / 2 deg = +20 rpm per deg',
      rows: ['initial | 9 deg | 11 deg | 2 deg more'],
      value: { low: 40, high: 40, off: 0 },
    },
    {
      say: 'several changes are confounded and named',
      book: twoDays('initial 9 deg | mixture 1 turn', 'initial 11 deg | mixture out 1/4 turn'),
      figure: AGAINST,
      text: ['40 rpm more, but 2 changes (initial, mixture): confounded, so credited to none'],
      rows: ['initial | 9 deg | 11 deg | 2 deg more', 'mixture | 1 turn | 1 1/4 turns | 1/4 turn more'],
    },
    {
      say: 'two screws turned alike, by a step in the unit they were written in',
      book: twoDays(
        'initial 9 deg | mixture left 12 flats, right 12 flats',
        'mixture left 13 flats, right 13 flats',
      ),
      figure: AGAINST,
      text: [expect.stringContaining('mixture left and right 12 flats -> 13 flats') as never],
      rows: ['mixture left and right | 12 flats | 13 flats | 1 flat more'],
    },
    {
      say: 'written again the same, in another unit, is no change',
      book: twoDays('plug gap 0.035 in | initial 9 deg', 'plug gap 35 thou | initial 11 deg'),
      figure: AGAINST,
      text: [`40 rpm more after one change, initial 9 deg -> 11 deg: +20 rpm per deg; ${NOT_KNOWN}`],
    },
    {
      say: 'a change from an unknown start has its size all the same',
      book: twoDays('note as found', 'mixture in 1/4 turn'),
      figure: AGAINST,
      text: [
        expect.stringContaining('not written -> -1/4 turn from an unknown start: -160 rpm per turn') as never,
      ],
    },
    {
      say: 'a setting written for the first time cannot be measured',
      book: twoDays('note as found', 'mixture 1 turn'),
      figure: AGAINST,
      text: [`40 rpm more after one change, mixture not written -> 1 turn; ${NOT_KNOWN}`],
    },
    {
      say: 'a part carries its own settings with it',
      book: twoDays('fit carb single | mixture 1 turn', 'fit carb twin | mixture 2 turns'),
      figure: AGAINST,
      text: [`40 rpm more after one change, carburettor carb single -> carb twin; ${NOT_KNOWN}`],
    },
    {
      say: 'both sides turned alike are one change',
      book: twoDays(
        'mixture left 1 turn, right 1 1/4 turns',
        'mixture left in 1/4 turn | mixture right in 1/4 turn',
      ),
      figure: AGAINST,
      text: [
        `40 rpm more after one change, mixture left and right 1 turn and 1 1/4 turns -> 3/4 turn and 1 turn: -160 rpm per turn; ${NOT_KNOWN}`,
      ],
    },
    {
      say: 'given for all of them they are one change too',
      book: twoDays('mixture 1 turn | mixture left 1 turn', 'mixture 3/4 turns'),
      figure: AGAINST,
      text: [`40 rpm more after one change, mixture 1 turn -> 3/4 turn: -160 rpm per turn; ${NOT_KNOWN}`],
    },
    {
      say: 'weather that moved is told',
      book: twoDays('weather 5 C, 1020 hPa | initial 9 deg', 'weather 32 C, 1000 hPa | initial 11 deg'),
      figure: AGAINST,
      text: [expect.stringContaining('the air changed too: 11 % thinner') as never],
    },
    {
      say: 'weather that did not is not',
      book: twoDays('weather 14 C, 1011 hPa | initial 9 deg', 'weather 16 C, 1009 hPa | initial 11 deg'),
      figure: AGAINST,
      text: [`40 rpm more after one change, initial 9 deg -> 11 deg: +20 rpm per deg; ${NOT_KNOWN}`],
    },
    // 3 % of the air is the trade's: about 1000 ft, one small jet step. Common practice, no source.
    {
      say: 'of the air under 3 % is not told',
      book: twoDays('weather 15 C, 1000 hPa | initial 9 deg', 'weather 15 C, 970.5 hPa | initial 11 deg'),
      figure: AGAINST,
      text: [`40 rpm more after one change, initial 9 deg -> 11 deg: +20 rpm per deg; ${NOT_KNOWN}`],
    },
    {
      say: 'of the air over 3 % is told',
      book: twoDays('weather 15 C, 1000 hPa | initial 9 deg', 'weather 15 C, 969.5 hPa | initial 11 deg'),
      figure: AGAINST,
      text: [expect.stringContaining('the air changed too: 3') as never],
    },
    {
      say: 'an altitude is a pressure as a barometer is',
      book: `
        session 2026-05-02
          air temperature 70 F
          altitude 0 ft
          power 100 hp
        session 2026-05-09
          air temperature 70 F
          altitude 6000 ft
          power 82 hp`,
      figure: 'power, against 2026-05-02',
      text: [expect.stringContaining('the air changed too: 20 % thinner') as never],
    },
    {
      say: 'other conditions are not comparable',
      book: twoDays('initial 9 deg', 'initial 11 deg').replace('860 rpm in neutral', '760 rpm in drive'),
      figure: AGAINST,
      text: [],
    },
    {
      say: 'nor is the cold engine with the warm one',
      book: twoDays('water 190 F', 'water 80 F'),
      figure: AGAINST,
      text: [],
    },
    {
      say: 'a bound has no difference that could be credited',
      book: twoDays('initial 9 deg', 'initial 11 deg', '> 860 rpm'),
      figure: AGAINST,
      text: [`>= 40 rpm more after one change, initial 9 deg -> 11 deg; ${NOT_KNOWN}`],
    },
    {
      say: 'a list is told as its mean and cylinder by cylinder',
      book: `
        session 2026-05-02
          tube 400 410 390 400 F at idle
        session 2026-05-03
          initial +2 deg
          tube 410 420 400 370 F at idle`,
      figure: 'tube (idle), against 2026-05-02',
      value: { low: 0, high: 0, off: 1e-9 },
      rows: ['#1 | 400 F | 410 F | 10 F more', '#4 | 400 F | 370 F | 30 F less'],
    },
  ]);

  test('told in the unit it was written in', () => {
    const book = `
      session 2026-05-02
        initial 9 deg
        water 190 F
      session 2026-05-03
        initial 7 deg
        water 93 C`;
    const figure = figureIn(book, 'water, against 2026-05-02');
    expect(figure.text).toContain('5 C more after one change, initial 9 deg -> 7 deg: -2.61 C per deg');
    expect(figure.working).toContain('93 C - 88 C = 5 C');
  });

  test('a cylinder told by itself is held against its place in the list', () => {
    const book = `
      session 2026-05-02
        tube 400 410 390 240 F at idle
      session 2026-05-03
        tube #4 380 F at idle`;
    expect(figureIn(book, 'tube #4 (idle), against 2026-05-02').text).toBe('140 F more with nothing changed');
  });
});
