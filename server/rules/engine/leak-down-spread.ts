import {
  type CylinderSet,
  numbersOf,
  setsOfLine,
  shownByLine,
} from '../../analysis/engine/cylinder-readings.ts';
import { formatNumber } from '../../trade/measure/format.ts';
import { leakDown } from '../../trade/sums/compression.ts';
import type { CylinderValue } from '../../trade/sums/cylinders.ts';
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
  check(entry, context) {
    return setsOfLine(context, 'leak down').flatMap((line) =>
      shownByLine(line, worstIn, ({ cylinder }) => [cylinder]).map(({ cylinder, value, best, spread }) => ({
        span: cylinderSpan(entry, cylinder),
        message: `Cylinder ${cylinder} leaks ${percent(value)}, the best ${percent(best)}: ${formatNumber(spread, undefined)} points apart; up to ${WIDE} is typical (common practice, no source).`,
      })),
    );
  },
});

/** The worst cylinder, where it is far from the best. */
function worstIn(
  set: CylinderSet,
): readonly (CylinderValue & { readonly best: number; readonly spread: number })[] {
  const numbers = numbersOf(set);
  const test = leakDown(numbers.map(({ value }) => value));
  const worst = test && numbers[test.worstCylinder - 1];
  return test && worst && test.spread > WIDE ? [{ ...worst, best: test.best, spread: test.spread }] : [];
}

const percent = (n: number): string => `${formatNumber(n, undefined)} %`;
