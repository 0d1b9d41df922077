import { describe, expect, test } from 'vitest';
import { leastReal } from '../../server/analysis/evidence/effects.ts';
import { figuresIn, testFigures } from '../harness/figures.ts';
import { twoDays } from '../harness/two-days.ts';

const REPEATS = `
    initial 9 deg
    idle 820 rpm in neutral
    idle 830 rpm in neutral
    idle 825 rpm in neutral`;

/** A change of 60 rpm, which stands out of the noise, and one of 5 rpm back. */
const HALF_OUT = `${REPEATS}
    initial 11 deg
    idle 885 rpm in neutral
    initial 9 deg
    idle 880 rpm in neutral`;

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
      say: 'one seen twice, of which half stands out of the noise, is credited',
      book: `session 2026-05-02${HALF_OUT}`,
      figure: 'known effects',
      rows: ['initial | idle (neutral) | +16.25 rpm per deg | 2 | 27.5 rpm | clear of the scatter'],
    },
    {
      say: 'one seen thrice, of which a third does, is not',
      book: `session 2026-05-02${HALF_OUT}\n    initial 11 deg\n    idle 890 rpm in neutral`,
      figure: 'known effects',
      rows: ['initial | idle (neutral) | +12.5 rpm per deg | 3 | 27.5 rpm | within the scatter'],
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
