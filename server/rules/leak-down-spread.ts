import { numbersOf, setsOfLine } from '../model/cylinders.ts';
import { leakDown } from '../trade/compression.ts';
import { formatNumber } from '../trade/format.ts';
import { cylinderSpan } from './cylinder-span.ts';
import { rule } from './rule.ts';

/** Points of per cent between best and worst: a sound cylinder loses under 10, a worn one over 20. Common practice, no source. */
const WIDE = 10;

export const leakDownSpread = rule({
  code: 'leak-down-spread',
  severity: 'information',
  title: 'One cylinder leaks far more than the best',
  why: 'Testers differ, so what counts is how cylinders compare on one tester. Listen where the air comes out: intake, exhaust, oil filler or the cooling water. It is no fault by itself; the maker gives the limit.',
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
      const told = (n: number) => `${formatNumber(n, undefined)} %`;
      return [
        {
          span: cylinderSpan(entry, worst.cylinder),
          message: `Cylinder ${worst.cylinder} leaks ${told(worst.value)}, the best ${told(test.best)}: a spread of ${told(test.spread)}, usual up to ${WIDE} % (common practice, no source).`,
        },
      ];
    });
  },
});
