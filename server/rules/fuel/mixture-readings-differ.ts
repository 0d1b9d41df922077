import { fuelOf } from '../../analysis/fuel/lambda.ts';
import { inWords } from '../../analysis/inputs.ts';
import { readingKey } from '../../model/state/reading-key.ts';
import type { SessionReading } from '../../model/state/state.ts';
import { type Interval, monotone } from '../../trade/measure/interval.ts';
import { lambdaOf } from '../../trade/sums/carburation.ts';
import { valueIn } from '../lib/statement-values.ts';
import { NO_PROBLEMS, problemsIn, rule } from '../rule.ts';

const OTHER: ReadonlyMap<string, string> = new Map(
  Object.entries({ lambda: 'air fuel ratio', 'air fuel ratio': 'lambda' }),
);

/** Largest accepted difference in lambda between two readings of one mixture. Common practice, no source. */
const APART = 0.05;

export const mixtureReadingsDiffer = rule({
  code: 'mixture-readings-differ',
  severity: 'information',
  title: 'Lambda and air-fuel ratio that do not agree',
  why: 'Both describe the same mixture: lambda is the ratio divided by the stoichiometric ratio of the fuel. Where they differ, the meter is set for another fuel, or the two were not read at the same moment.',
  standing: 'common practice',
  good: 'engine\n  fuel gasoline\nsession 2026-05-02\n  lambda 0.85\n  air fuel ratio 12.5\n',
  bad: 'engine\n  fuel gasoline\nsession 2026-05-02\n  lambda 0.85\n  air fuel ratio 14.0\n',
  on: ['reading'],
  about: ({ name }) => OTHER.get(name) !== undefined,
  check({ quantity, statements: said }, { before, after }) {
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
          message: `${inWords(ratio, 'ratio')} on ${burnt.fuel.name} is lambda ${inWords(worked, 'number', 0.01)}, but the lambda reading is ${inWords(lambda, 'number')}, more than ${APART} apart. Is the meter set for another fuel? (common practice, no source)`,
          related: [{ origin: taken.by, message: `${other} under the same conditions` }],
        },
      ];
    });
  },
});

const inOne = ({ statement: said, quantity }: SessionReading, unit: string): Interval | undefined =>
  valueIn(said, unit, quantity);

/** The smallest possible difference between two intervals. */
const gap = (a: Interval, b: Interval): number => Math.max(a.low - b.high, b.low - a.high, 0);
