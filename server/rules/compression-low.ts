import { type CylinderSet, cylinderSets, numbersOf } from '../model/cylinders.ts';
import type { Context } from '../model/findings.ts';
import type { QuantityEntry } from '../model/notebook.ts';
import { type JudgedCompression, judgeSet } from '../model/sealing.ts';
import { formatNumber } from '../trade/format.ts';
import { cylinderSpan } from './cylinder-span.ts';
import { type Problem, rule } from './rule.ts';

export const compressionLow = rule({
  code: 'compression-low',
  severity: 'warning',
  title: 'A cylinder low on compression',
  why: 'Cylinders that seal alike read alike. Makers ask that the lowest be within 75 per cent of the highest; others 70 per cent and none under 100 psi. Read it again with the throttle open and a charged battery before taking anything apart; the manual of your engine overrules these rules.',
  standing: 'published',
  source: 'factory service manuals of several makers',
  good: 'session 2026-05-02\n  compression 150 148 152 149 psi\n',
  bad: 'session 2026-05-02\n  compression 150 148 108 149 psi\n',
  on: ['reading'],
  check(entry, context) {
    if (entry.quantity.name !== 'compression') return [];
    return cylinderSets(context.after, 'compression').flatMap((set) => lowIn(entry, context, set));
  },
});

function lowIn(entry: QuantityEntry, { after, where }: Context, set: CylinderSet): Problem[] {
  const judged = judgeSet(after, set);
  if (!judged) return [];
  const written = new Set(set.readings.filter(({ by }) => by === where).map(({ cylinder }) => cylinder));
  return numbersOf(set)
    .filter(({ cylinder }) => written.has(cylinder))
    .flatMap(({ cylinder, value }) => {
      const broken = judged.verdicts.filter(({ low }) => low.includes(cylinder));
      if (broken.length === 0) return [];
      return [{ span: cylinderSpan(entry, cylinder), message: messageOf(cylinder, value, judged, broken) }];
    });
}

function messageOf(
  cylinder: number,
  value: number,
  { highest, verdicts }: JudgedCompression,
  broken: JudgedCompression['verdicts'],
): string {
  const psi = (n: number) => `${formatNumber(n, undefined)} psi`;
  const share = Math.round((100 * value) / highest);
  const rules = broken.map(({ rule, allowed }) => `under the ${psi(allowed)} of the rule of ${rule.name}`);
  const kept = verdicts.filter((each) => !broken.includes(each)).map(({ rule }) => rule.name);
  const within = kept.length > 0 ? `, within that of ${kept.join(', ')}` : '';
  return `Cylinder ${cylinder} has ${psi(value)}, ${share} % of the highest ${psi(highest)}: ${rules.join(' and ')}${within} (published: factory service manuals).`;
}
