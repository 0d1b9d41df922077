/** Air of the day: density, density altitude, comparison with the reference day, and power corrections. */

import { type Interval, monotone, monotoneEach, scale } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import {
  type Air,
  type Correction,
  correctionJ607,
  correctionJ1349,
  densityAltitude,
  relativeDensity,
} from '../../trade/sums/air.ts';
import { isBoosted } from '../boost.ts';
import { type Figure, type FigureContext, figure, type Working } from '../figure.ts';
import { inWords } from '../inputs.ts';
import { referenceDay } from './reference-day.ts';
import { airOf, type DayAir, densityOf } from './session-air.ts';

const ABOUT = ['weather', 'air temperature', 'barometer', 'humidity', 'altitude', 'reference weather'];

export const AIR: Working = { topic: 'air', about: [...ABOUT, 'power', 'run time'], work: airFigures };

function airFigures(moment: FigureContext): readonly Figure[] {
  const air = airOf(moment.state);
  if (!air) return [];
  return [...againstReference(air, moment), density(air), altitude(air), ...corrections(air, moment)];
}

const kgPerM3 = (value: Interval): string => `${inWords(value, 'number')} kg/m3`;

const day = ({ celsius, pascals, humidity }: DayAir): string =>
  `${inWords(celsius, 'C')}, ${inWords(scale(pascals, 0.01), 'hPa')}, ${inWords(scale(humidity, 100), '%RH')}`;

function density(air: DayAir): Figure {
  const value = densityOf(air);
  return figure({
    topic: 'air',
    name: 'air density',
    text: kgPerM3(value),
    value,
    formula: 'dry pressure / (287.05 T) + vapour pressure / (461.495 T)',
    working: `${day(air)}: ${kgPerM3(value)}`,
    inputs: air.inputs,
    standing: 'published',
    source: 'ideal gases; vapour pressure as in the Smithsonian Meteorological Tables',
  });
}

function altitude(air: DayAir): Figure {
  const value = monotone(densityOf(air), (each) => densityAltitude(each) / 0.3048);
  return figure({
    topic: 'air',
    name: 'density altitude',
    text: `${inWords(value, 'ft', 10)} (${inWords(scale(value, 0.3048), 'm', 5)})`,
    value,
    unit: unitById('ft'),
    formula: 'the altitude at which the standard atmosphere is as thin',
    working: `${kgPerM3(densityOf(air))}: ${inWords(value, 'ft', 10)}`,
    inputs: air.inputs,
    standing: 'published',
    source: 'ICAO Doc 7488, Manual of the ICAO Standard Atmosphere',
  });
}

function againstReference(air: DayAir, moment: FigureContext): readonly Figure[] {
  const reference = referenceDay(moment);
  if (!reference) return [];
  const value = monotoneEach([densityOf(air), densityOf(reference.air)] as const, relativeDensity);
  return [
    figure({
      topic: 'air',
      name: 'relative density',
      text: `${inWords(scale(value, 100), '%', 0.1)} of ${reference.name}`,
      value: scale(value, 100),
      unit: unitById('%'),
      formula: 'density / density on the reference day',
      working: `${kgPerM3(densityOf(air))} / ${kgPerM3(densityOf(reference.air))} = ${inWords(scale(value, 100), '%', 0.1)}`,
      inputs: [...air.inputs, ...reference.air.inputs],
      standing: 'published',
      source: 'follows from the densities',
    }),
  ];
}

/** Both corrections, each under its name: a corrected figure means nothing without the name of its correction. */
function corrections(air: DayAir, { state }: FigureContext): readonly Figure[] {
  const boosted = isBoosted(state);
  return [
    correction(air, (each) => correctionJ1349(each, boosted), {
      formula: '1.18 x (990 / dry pressure in mbar) x square root of ((C + 273) / 298) - 0.18',
      about: 'to 990 mbar dry and 25 C',
    }),
    correction(air, (each) => correctionJ607(each, boosted), {
      caution:
        'Reads a few per cent higher than J1349. Always quote the correction with the power, and never compare across two corrections.',
      formula: '(1013.25 / dry pressure in mbar) x square root of ((C + 273.15) / 288.71)',
      about: 'to 29.92 inHg dry and 60 F',
    }),
  ];
}

interface Words {
  readonly caution?: string;
  readonly formula: string;
  readonly about: string;
}

function correction(
  air: DayAir,
  correct: (air: Air) => Correction,
  { formula, about, caution }: Words,
): Figure {
  const named = correct({ pascals: air.pascals.low, celsius: air.celsius.low, humidity: air.humidity.low });
  const words = { topic: 'air', name: `correction ${named.name}`, inputs: air.inputs, formula } as const;
  if (named.kind === 'refused')
    return figure({
      ...words,
      text: 'Not for this engine',
      working: named.reason,
      ...SAE,
      source: named.source,
    });
  const value = monotoneEach(
    [air.pascals, air.celsius, air.humidity] as const,
    (pascals, celsius, humidity) => factorOf(correct({ pascals, celsius, humidity })),
  );
  const factor = `x ${inWords(value, 'number', 0.001)}`;
  return figure({
    ...words,
    text: `${factor}, ${about}`,
    value,
    working: `${day(air)}: ${factor}`,
    standing: 'published',
    source: named.source,
    caution,
  });
}

const SAE = { standing: 'published', source: 'SAE J1349 JUN90' } as const;

const factorOf = (correction: Correction): number =>
  correction.kind === 'factor' ? correction.factor : Number.NaN;
