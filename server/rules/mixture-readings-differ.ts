import type { Taken } from '../model/carry.ts';
import { inWords } from '../model/figures/known.ts';
import { fuelOf } from '../model/figures/mixture-reading.ts';
import { readingKey } from '../model/reading-key.ts';
import { lambdaOf } from '../trade/carburation.ts';
import { type Interval, monotone } from '../trade/interval.ts';
import { NO_PROBLEMS, problemsIn, rule } from './rule.ts';
import { valueIn } from './said.ts';

const OTHER: ReadonlyMap<string, string> = new Map(
  Object.entries({ lambda: 'air fuel ratio', 'air fuel ratio': 'lambda' }),
);

/** What two readings of one mixture may lie apart. Common practice, no source. */
const APART = 0.05;

export const mixtureReadingsDiffer = rule({
  code: 'mixture-readings-differ',
  severity: 'information',
  title: 'Lambda and air-fuel ratio that do not go together',
  why: 'Both tell one mixture: the ratio over the one at which the fuel burns exactly is lambda. Where they differ, the meter counts for another fuel, or the two were not read at one moment.',
  standing: 'common practice',
  good: 'engine\n  fuel gasoline\nsession 2026-05-02\n  lambda 0.85\n  air fuel ratio 12.5\n',
  bad: 'engine\n  fuel gasoline\nsession 2026-05-02\n  lambda 0.85\n  air fuel ratio 14.0\n',
  on: ['reading'],
  about: ({ name }) => OTHER.get(name) !== undefined,
  check({ quantity, said }, { before, after }) {
    const other = OTHER.get(quantity.name);
    const burnt = other === undefined ? undefined : fuelOf(after);
    if (other === undefined || !burnt) return NO_PROBLEMS;
    return problemsIn(said, (each) => {
      const taken = before.readings.get(readingKey(other, each));
      const [ratio, lambda] =
        other === 'lambda'
          ? [valueIn(each, 'ratio', quantity), taken && inOne(taken, 'number')]
          : [taken && inOne(taken, 'ratio'), valueIn(each, 'number', quantity)];
      if (!taken || !ratio || !lambda) return [];
      const worked = monotone(ratio, (n) => lambdaOf(n, burnt.fuel));
      if (gap(worked, lambda) <= APART) return [];
      return [
        {
          span: each.span,
          message: `${inWords(ratio, 'ratio')} on ${burnt.fuel.name} is lambda ${inWords(worked, 'number', 0.01)}, and lambda was ${inWords(lambda, 'number')}: more than ${APART} apart (common practice, no source). Is the meter set for another fuel?`,
          related: [{ origin: taken.by, message: `${other} under the same conditions` }],
        },
      ];
    });
  },
});

const inOne = ({ said, quantity }: Taken, unit: string): Interval | undefined =>
  valueIn(said, unit, quantity);

/** How far two values are apart at the least. */
const gap = (a: Interval, b: Interval): number => Math.max(a.low - b.high, b.low - a.high, 0);
