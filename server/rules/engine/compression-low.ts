import { inPsi, judgeSet } from '../../analysis/engine/compression-test.ts';
import {
  type CylinderSet,
  numbersOf,
  setsOfLine,
  shownByLine,
} from '../../analysis/engine/cylinder-readings.ts';
import type { State } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { exact } from '../../trade/measure/interval.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import { COMPRESSION_RULES } from '../../trade/sums/compression.ts';
import type { CylinderValue } from '../../trade/sums/cylinders.ts';
import { cylinderSpan } from '../lib/cylinder-span.ts';
import { rule } from '../rule.ts';

export const compressionLow = rule({
  code: 'compression-low',
  severity: 'warning',
  title: 'A cylinder low on compression',
  why: 'Cylinders that seal alike read alike. Some makers specify the lowest within 75 per cent of the highest; others 70 per cent and none under 100 psi. Test again with the throttle open and a charged battery before taking anything apart; the manual for your engine overrules these rules.',
  standing: 'published',
  source: 'factory service manuals of several makers',
  good: 'session 2026-05-02\n  compression 150 148 152 149 psi\n',
  bad: 'session 2026-05-02\n  compression 150 148 108 149 psi\n',
  on: ['reading'],
  about: ({ name }) => name === 'compression',
  check(entry, context) {
    return setsOfLine(context, 'compression').flatMap((line) =>
      shownByLine(
        line,
        (set) => lowIn(set, context.after),
        ({ cylinder }) => [cylinder],
      ).map(({ cylinder, value, highest }) => ({
        span: cylinderSpan(entry, cylinder),
        message: messageOf(cylinder, value, highest, line.set.unit),
      })),
    );
  },
});

/** Cylinders under the stricter of the two fractions. The floor of 100 psi is left to the figure: a sound engine of low ratio may be under it. */
function lowIn(set: CylinderSet, state: State): readonly (CylinderValue & { readonly highest: number })[] {
  const highest = judgeSet(state, set)?.highest;
  if (highest === undefined) return [];
  return numbersOf(inPsi(set))
    .filter(({ value }) => value < STRICTEST * highest)
    .map((low) => ({ ...low, highest }));
}

const FRACTIONS = COMPRESSION_RULES.map(({ fraction }) => fraction);
const STRICTEST = Math.max(...FRACTIONS);

function messageOf(cylinder: number, value: number, highest: number, unit = 'psi'): string {
  const inUnit = (psi: number) =>
    formatValue(convertInterval(exact(psi), unitById('psi'), unitById(unit)), unitById(unit));
  const rules = FRACTIONS.map((fraction) => {
    const allowed = inUnit(fraction * highest);
    return `${value < fraction * highest ? 'under' : 'within'} the ${allowed} of the ${Math.round(100 * fraction)} % rule`;
  });
  return `Cylinder ${cylinder} is low at ${inUnit(value)}, ${Number(((100 * value) / highest).toFixed(1))} % of the highest (${inUnit(highest)}): ${rules.join(', ')} (published: factory service manuals).`;
}
