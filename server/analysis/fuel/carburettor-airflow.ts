/** Airflow: what the engine draws, and the carburettor's rating at the usual test depressions. */

import { amountIn } from '../../model/entry/amount.ts';
import { settingText } from '../../model/state/setting-text.ts';
import type { State } from '../../model/state/state.ts';
import { exact, type Interval, middle, monotoneEach } from '../../trade/measure/interval.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import { airflowDemand, RATING_DEPRESSIONS, ratingAt } from '../../trade/sums/carburation.ts';
import { displacementOf, topSpeedOf } from '../engine/engine-facts.ts';
import { type Figure, figure, type Input, type Working } from '../figure.ts';
import { inWords } from '../inputs.ts';

export const AIRFLOW: Working = {
  topic: 'fuel',
  about: ['displacement', 'carb rating', 'venturi', 'red line', 'rev limit'],
  work: ({ state }) => [...demand(state), ...rating(state)],
};

/** Volumetric efficiencies shown: 80 per cent as in TM 9-8000, 100 for full cylinders. */
const SHARES = [0.8, 0.9, 1] as const;
const CFM = unitById('cfm');

const cfm = (value: Interval): string => inWords(value, 'cfm', 1);

function demand(state: State): readonly Figure[] {
  const size = displacementOf(state);
  if (!size) return [];
  const cubicInches = convertInterval(size.value, unitById('cc'), unitById('cu-in'));
  const top = topSpeedOf(state);
  const fastest = top?.value ?? exact(6000);
  const at = (rpm: Interval, share: number): Interval =>
    monotoneEach([cubicInches, rpm] as const, (inches, speed) => airflowDemand(inches, speed, share));
  const value = at(fastest, 1);
  return [
    figure({
      topic: 'fuel',
      name: 'engine airflow',
      text: `${cfm(value)} at ${inWords(fastest, 'rpm')} at 100 % volumetric efficiency, ${cfm(at(fastest, 0.8))} at 80 %`,
      value,
      unit: CFM,
      formula: 'displacement in cu in x rpm x volumetric efficiency / 3456',
      working: `${inWords(cubicInches, 'cu-in')} x ${inWords(fastest, 'rpm')} x 1 / 3456 = ${cfm(value)}`,
      inputs: [
        ...size.inputs,
        top?.input ?? { name: 'top speed', value: '6000 rpm, assumed', by: undefined },
      ],
      standing: 'published',
      source: 'public handbooks; 80 per cent volumetric efficiency as in TM 9-8000',
      rows: [
        ['at', ...SHARES.map((share) => `${100 * share} % efficiency`)],
        ...thousands(fastest).map((rpm) => [
          inWords(exact(rpm), 'rpm'),
          ...SHARES.map((share) => cfm(at(exact(rpm), share))),
        ]),
      ],
    }),
  ];
}

function thousands(fastest: Interval): readonly number[] {
  const count = Math.min(15, Math.max(1, Math.floor(middle(fastest) / 1000)));
  return Array.from({ length: count }, (_, i) => 1000 * (i + 1));
}

interface Rating {
  readonly flow: Interval;
  readonly at: Interval;
  readonly input: Input;
}

/** Rating at the depressions two-barrel and four-barrel carburettors are quoted at, so that any two can be compared. */
function rating(state: State): readonly Figure[] {
  const rated = ratingOf(state);
  if (!rated) return [];
  const at = (depression: number): Interval =>
    monotoneEach([rated.flow, rated.at] as const, (flow, from) => ratingAt(flow, from, depression));
  const value = at(RATING_DEPRESSIONS.fourBarrel);
  return [
    figure({
      topic: 'fuel',
      name: 'carburettor rating at 1.5 inHg',
      text: `${cfm(value)} at 1.5 inHg, ${cfm(at(RATING_DEPRESSIONS.twoBarrel))} at 3 inHg`,
      value,
      unit: CFM,
      formula: 'rating x square root of (1.5 inHg / rated depression)',
      working: `${cfm(rated.flow)} x sqrt(1.5 / ${inWords(rated.at, 'inHg')}) = ${cfm(value)}`,
      inputs: [rated.input],
      standing: 'published',
      source: 'public handbooks: four-barrels are rated at 1.5 inHg, two-barrels at 3.0',
    }),
  ];
}

/** Rating in force, only with its depression: without that the number cannot be compared. */
function ratingOf({ settings }: State): Rating | undefined {
  const setting = settings.get('carb rating|');
  const point = setting?.points[0];
  const flow = amountIn(point?.value, 'cfm');
  const at = amountIn(point?.at, 'inHg');
  if (!setting || !flow || !at || !(at.low > 0)) return undefined;
  return { flow, at, input: { name: 'carb rating', value: settingText(setting), by: setting.by } };
}
