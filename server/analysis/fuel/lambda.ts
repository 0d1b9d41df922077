/** Mixture readings both as air-fuel ratio and as lambda, for the fuel in use. */

import { amountIn } from '../../model/entry/amount.ts';
import { statementText } from '../../model/entry/as-written.ts';
import type { SessionReading, State } from '../../model/state/state.ts';
import { hull, type Interval, monotone } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import { airFuelRatioOf, type Fuel, fuelNamed, lambdaOf } from '../../trade/sums/carburation.ts';
import { type Figure, figure, type Input, type Working } from '../figure.ts';
import { inWords } from '../inputs.ts';

export const MIXTURE_READING: Working = {
  topic: 'fuel',
  about: ['air fuel ratio', 'lambda', 'fuel'],
  work: ({ state }) => mixtureReadings(state),
};

/** Fuel of the engine, and the line that says so; gasoline where none is written. */
export function fuelOf({ facts }: State): { readonly fuel: Fuel; readonly input: Input } | undefined {
  const stated = facts.get('fuel|');
  const written = stated?.text?.toLowerCase();
  const fuel = fuelNamed(written === undefined || written === 'petrol' ? 'gasoline' : written);
  if (!fuel) return undefined;
  return { fuel, input: { name: 'fuel', value: written ?? 'gasoline, assumed', by: stated?.by } };
}

/** An air-fuel ratio or a lambda of one reading, in both forms. */
interface Mixture {
  readonly taken: SessionReading;
  readonly ratio: Interval;
  readonly lambda: Interval;
}

function mixtureReadings(state: State): readonly Figure[] {
  const burnt = fuelOf(state);
  const readings = [...state.readings.values()];
  if (!burnt) return [];
  const mixtures = readings.flatMap((taken) => mixtureOf(taken, burnt.fuel) ?? []);
  return mixtures.map(({ taken, ratio, lambda }) => {
    const given = taken.quantity.name === 'lambda';
    const [air, as] = [inWords(ratio, 'ratio', 0.1), inWords(lambda, 'number', 0.001)];
    const balance = `${burnt.fuel.stoichiometric}:1`;
    return figure({
      topic: 'fuel',
      name: given ? 'air fuel ratio' : 'lambda',
      text: `${given ? air : as}, ${leanOrRich(lambda)} on ${burnt.fuel.name}`,
      value: given ? ratio : lambda,
      unit: unitById(given ? 'ratio' : 'number'),
      formula: given ? 'lambda x stoichiometric ratio' : 'air-fuel ratio / stoichiometric ratio',
      working: given ? `${as} x ${balance} = ${air}` : `${air} / ${balance} = ${as}`,
      inputs: [
        {
          name: taken.quantity.name,
          value: statementText(taken.statement, taken.quantity.unit),
          by: taken.by,
        },
        burnt.input,
      ],
      standing: burnt.fuel.standing,
      source: burnt.fuel.source,
    });
  });
}

function mixtureOf(taken: SessionReading, fuel: Fuel): Mixture | undefined {
  const { name } = taken.quantity;
  if (name === 'lambda') {
    const lambda = allOf(taken, 'number');
    return lambda && { taken, lambda, ratio: monotone(lambda, (each) => airFuelRatioOf(each, fuel)) };
  }
  const ratio = name === 'air fuel ratio' ? allOf(taken, 'ratio') : undefined;
  return ratio && { taken, ratio, lambda: monotone(ratio, (each) => lambdaOf(each, fuel)) };
}

/** Range of a list by cylinder, from its lowest to its highest. */
function allOf({ statement: said }: SessionReading, unit: string): Interval | undefined {
  const values = said.values.flatMap((value) => amountIn(value, unit) ?? []);
  return values.length > 0 ? values.reduce(hull) : undefined;
}

function leanOrRich(lambda: Interval): string {
  if (lambda.low > 1) return 'lean of stoichiometric';
  if (lambda.high < 1) return 'rich of stoichiometric';
  return lambda.low === lambda.high ? 'stoichiometric' : 'either side of stoichiometric';
}
