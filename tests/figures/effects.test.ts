import { describe, expect, test } from 'vitest';
import { leastReal } from '../../server/analysis/evidence/effects.ts';
import { figureIn, figuresIn, testFigures } from '../harness/figures.ts';

/** Two sessions with an idle each; the lines of the second stand before its idle. */
const twoDays = (first: string, second: string, idle = '860 rpm'): string => `
  session 2026-05-02
${indented(first)}
    idle 820 rpm in neutral
  session 2026-05-03
${indented(second)}
    idle ${idle} in neutral`;

const indented = (lines: string): string =>
  lines
    .split(' | ')
    .map((line) => `    ${line}`)
    .join('\n');

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

const REPEATS = `
    initial 9 deg
    idle 820 rpm in neutral
    idle 830 rpm in neutral
    idle 825 rpm in neutral`;

describe('noise and known effects', () => {
  testFigures([
    {
      say: 'repeats give the noise: deviation of 820, 830, 825 is 5',
      book: `session 2026-05-02${REPEATS}`,
      figure: 'repeatability of idle (neutral)',
      text: ["5 rpm; a change under 30 rpm can't be told from scatter"],
      working: 'deviation 5 rpm from 2 repeats; least real change 30.42 rpm',
      value: { low: 5, high: 5, off: 1e-9 },
      source: 'ISO 5725-6',
    },
    {
      say: 'an effect within the scatter is told as such',
      book: `session 2026-05-02${REPEATS}\n    initial 11 deg\n    idle 840 rpm in neutral`,
      figure: 'known effects',
      text: ['1 seen, 0 clear of the scatter'],
      rows: ['initial | idle (neutral) | +7.5 rpm per deg | 1 |  | within the scatter'],
    },
    {
      say: 'one that stands out of it is credited',
      book: `session 2026-05-02${REPEATS}\n    initial 11 deg\n    idle 885 rpm in neutral`,
      figure: 'known effects',
      text: ['1 seen, 1 clear of the scatter'],
      rows: ['initial | idle (neutral) | +30 rpm per deg | 1 |  | clear of the scatter'],
    },
    {
      say: 'nothing is credited on one reading whose noise is not known',
      book: twoDays('initial 9 deg', 'initial 11 deg'),
      figure: 'known effects',
      text: ['1 seen, 0 clear of the scatter; repeat a reading with nothing changed to measure its scatter'],
      rows: ['initial | idle (neutral) | +20 rpm per deg | 1 |  | scatter not known'],
    },
    {
      say: 'the same change seen thrice tells itself from noise',
      book: `
        session 2026-05-02
          initial 8 deg
          idle 800 rpm in neutral
          initial 10 deg
          idle 842 rpm in neutral
          initial 8 deg
          idle 802 rpm in neutral
          initial 10 deg
          idle 840 rpm in neutral`,
      figure: 'known effects',
      text: ['1 seen, 1 clear of the scatter'],
      rows: ['initial | idle (neutral) | +20 rpm per deg | 3 | 2 rpm | clear of the scatter'],
    },
    {
      say: 'one that goes both ways does not',
      book: `
        session 2026-05-02
          initial 8 deg
          idle 800 rpm in neutral
          initial 10 deg
          idle 842 rpm in neutral
          initial 8 deg
          idle 870 rpm in neutral`,
      figure: 'known effects',
      text: ['1 seen, 0 clear of the scatter'],
      rows: ['initial | idle (neutral) | +3.5 rpm per deg | 2 | 35 rpm | not consistent'],
    },
    {
      say: 'words there and back are one cause',
      book: `
        session 2026-05-02
          vacuum source manifold
          idle 800 rpm in neutral
          vacuum source ported
          idle 760 rpm in neutral
          vacuum source manifold
          idle 802 rpm in neutral`,
      figure: 'known effects',
      rows: [
        'vacuum source: manifold -> ported | idle (neutral) | -41 rpm | 2 | 2 rpm | clear of the scatter',
      ],
    },
    {
      say: 'told the way round in which it was done',
      book: twoDays('note as found', 'hose "clipped"'),
      figure: 'known effects',
      rows: ['hose: not written -> clipped | idle (neutral) | +40 rpm | 1 |  | scatter not known'],
    },
    {
      say: 'two words for one piece of work are one cause',
      book: twoDays('points gap 0.016 in | dwell 50 deg', 'points gap 0.014 in | dwell 53 deg'),
      figure: 'known effects',
      rows: [
        'points gap and dwell: 0.016 in, 50 deg -> 0.014 in, 53 deg | idle (neutral) | +40 rpm | 1 |  | scatter not known',
      ],
    },
    {
      say: 'confounded readings are in no table',
      book: twoDays('initial 9 deg | mixture 1 turn', 'initial 11 deg | mixture out 1/4 turn'),
      figure: 'known effects',
      text: [],
    },
  ]);

  test('a hover tells what belongs to its word', () => {
    const book = `session 2026-05-02${REPEATS}\n    depression 17 inHg at idle\n    initial‸ 11 deg\n    idle 885 rpm in neutral\n    depression 18 inHg at idle`;
    const names = (word: string) => figuresIn(book, word).map(({ name }) => name);
    expect(names('initial')).toContain('known effects');
    expect(names('initial')).not.toContain('repeatability of idle (neutral)');
    expect(names('plug gap')).toEqual([]);
  });

  // Student's t, 95 per cent, two-sided: 12.706, 4.303, 2.228 for 1, 2, 10 degrees (NBS Handbook of Mathematical
  // Functions, table 26.10); for many the multiple is the 2.8 of ISO 5725-6.
  test.each([
    [1, 12.706 * Math.SQRT2],
    [2, 4.303 * Math.SQRT2],
    [10, 2.228 * Math.SQRT2],
    [100_000, 2.8],
  ])('least real change after %i repeats', (degrees, multiple) => {
    expect(leastReal({ deviation: 1, degrees })).toBeCloseTo(multiple, degrees > 100 ? 1 : 2);
  });
});
