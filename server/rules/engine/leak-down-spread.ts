import { numbersOf, setsOfLine } from '../../analysis/engine/cylinder-readings.ts';
import { formatNumber } from '../../trade/measure/format.ts';
import { leakDown } from '../../trade/sums/compression.ts';
import { cylinderSpan } from '../lib/cylinder-span.ts';
import { rule } from '../rule.ts';

/** Largest typical spread between best and worst, in percentage points: a sound cylinder leaks under 10 %, a worn one over 20. Common practice, no source. */
const WIDE = 10;

export const leakDownSpread = rule({
  code: 'leak-down-spread',
  severity: 'information',
  title: 'One cylinder leaks far more than the best',
  why: 'Testers differ, so compare cylinders on the same tester. Listen for where the air escapes: intake, exhaust, oil filler or coolant. It is not a fault by itself; the maker gives the limit.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  leak down 8 7 9 12 %\n',
  bad: 'session 2026-05-02\n  leak down 8 7 9 24 %\n',
  on: ['reading'],
  about: ({ name }) => name === 'leak down',
  check(entry, { after, where }) {
    return setsOfLine(after, 'leak down', where).flatMap((set) => {
      const numbers = numbersOf(set);
      const test = leakDown(numbers.map(({ value }) => value));
      const worst = test && numbers[test.worstCylinder - 1];
      const here = set.readings.some(({ cylinder, by }) => cylinder === worst?.cylinder && by === where);
      if (!test || !worst || !here || test.spread <= WIDE) return [];
      const percent = (n: number) => `${formatNumber(n, undefined)} %`;
      return [
        {
          span: cylinderSpan(entry, worst.cylinder),
          message: `Cylinder ${worst.cylinder} leaks ${percent(worst.value)}, the best ${percent(test.best)}: ${formatNumber(test.spread, undefined)} points apart; up to ${WIDE} is typical (common practice, no source).`,
        },
      ];
    });
  },
});
