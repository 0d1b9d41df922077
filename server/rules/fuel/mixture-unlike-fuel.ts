import { fuelOf } from '../../analysis/fuel/lambda.ts';
import { inWords } from '../../analysis/inputs.ts';
import { type Interval, monotone } from '../../trade/measure/interval.ts';
import { type Fuel, fuelNamed, lambdaOf } from '../../trade/sums/carburation.ts';
import { VOCABULARY } from '../../trade/vocabulary/vocabulary.ts';
import { valueIn } from '../lib/statement-values.ts';
import { NO_PROBLEMS, problemsIn, rule } from '../rule.ts';

const GASOLINE = fuelNamed('gasoline');
const BAND = VOCABULARY.find((quantity) => quantity.name === 'lambda')?.band;

export const mixtureUnlikeFuel = rule({
  code: 'mixture-unlike-fuel',
  severity: 'information',
  title: 'An air-fuel ratio that does not fit the fuel',
  why: 'Each fuel has its own stoichiometric ratio. Many meters show every fuel on the gasoline scale: convert what they show to the fuel in use, or read lambda instead.',
  standing: 'published',
  source: 'US Department of Energy, Alternative Fuels Data Center, properties of fuels',
  good: 'engine\n  fuel methanol\nsession 2026-05-02\n  air fuel ratio 5.5\n',
  bad: 'engine\n  fuel methanol\nsession 2026-05-02\n  air fuel ratio 12.5\n',
  on: ['reading'],
  about: ({ name }) => name === 'air fuel ratio',
  check({ quantity, statements: said }, { after }) {
    const burnt = fuelOf(after);
    if (!burnt || !GASOLINE || burnt.fuel.name === GASOLINE.name) return NO_PROBLEMS;
    return problemsIn(said, (each) => {
      const ratio = valueIn(each, 'ratio', quantity);
      if (!ratio || burns(ratio, burnt.fuel) || !burns(ratio, GASOLINE)) return [];
      const lambda = inWords(
        monotone(ratio, (n) => lambdaOf(n, burnt.fuel)),
        'number',
        0.01,
      );
      const by = burnt.input.by;
      return [
        {
          span: each.span,
          message: `Stoichiometric for ${burnt.fuel.name} is ${burnt.fuel.stoichiometric}:1, so this is lambda ${lambda}. Is the meter on its gasoline scale? (${burnt.fuel.standing}, ${burnt.fuel.source})`,
          related: by ? [{ origin: by, message: 'Fuel' }] : [],
        },
      ];
    });
  },
});

/** Whether any part of the ratio is one that engines run at on this fuel. */
const burns = (ratio: Interval, fuel: Fuel): boolean =>
  BAND === undefined || (lambdaOf(ratio.high, fuel) >= BAND.low && lambdaOf(ratio.low, fuel) <= BAND.high);
