import psychrolib from 'psychrolib';
import {
  type Air,
  airDensity,
  type Correction,
  correctionJ607,
  correctionJ1349,
  densityAltitude,
  dryPressure,
  relativeDensity,
  saturationVapourPressure,
  standardAtmosphere,
} from '../../../server/trade/sums/air.ts';
import { type Check, check } from './check.ts';

const INCH_OF_MERCURY = 3386.389;
const FOOT = 0.3048;
const POUND_PER_SQUARE_INCH = 6894.757;

psychrolib.SetUnitSystem(psychrolib.SI);

function celsiusOf(fahrenheit: number): number {
  return (fahrenheit - 32) / 1.8;
}

function factorOf(correction: Correction): number {
  return correction.kind === 'factor' ? correction.factor : Number.NaN;
}

function dry(pascals: number, celsius: number): Air {
  return { pascals, celsius, humidity: 0 };
}

function day(fahrenheit: number, humidity: number, inchesOfMercury: number): Air {
  return { pascals: inchesOfMercury * INCH_OF_MERCURY, celsius: celsiusOf(fahrenheit), humidity };
}

const SATURATION: readonly (readonly [number, number, number])[] = [
  [30, 42.43, 0.0005],
  [20, 23.373, 0.0005],
  [10, 12.272, 0.0005],
  [0, 6.1078, 0.00005],
  [-10, 2.8627, 0.00005],
  [-30, 0.5088, 0.00005],
];

const MOIST_DAYS: readonly Air[] = [
  { pascals: 103000, celsius: 2, humidity: 0.3 },
  { pascals: 100000, celsius: 25, humidity: 0.5 },
  { pascals: 95000, celsius: 35, humidity: 0.8 },
];

/** Altitude in feet, pressure ratio, density ratio, as printed. */
const RATIOS: readonly (readonly [number, number, number])[] = [
  [1000, 0.9644, 0.9711],
  [3000, 0.8962, 0.9151],
  [5000, 0.832, 0.8617],
  [7500, 0.7571, 0.7983],
];

/** Altitude in feet, degF, psia, as printed. */
const FEET_TABLE: readonly (readonly [number, number, number])[] = [
  [-1000, 62.6, 15.236],
  [1000, 55.4, 14.175],
  [5000, 41.2, 12.23],
  [10000, 23.4, 10.108],
];

/** Geopotential metres, Pa, kg/m3. */
const METRE_TABLE: readonly (readonly [number, number, number])[] = [
  [1000, 89874.6, 1.11164],
  [2000, 79495.2, 1.00649],
  [3000, 70108.5, 0.909122],
];

export const AIR_CHECKS: readonly Check[] = [
  ...SATURATION.map(([celsius, hPa, rounding]) =>
    check(
      'smithsonian',
      `saturation vapour pressure at ${celsius} degC, hPa`,
      hPa,
      rounding,
      () => saturationVapourPressure(celsius) / 100,
    ),
  ),
  ...[5, 25, 40].map((celsius) => {
    const pascals = psychrolib.GetSatVapPres(celsius);
    return check(
      'psychrolib',
      `saturation vapour pressure at ${celsius} degC, Pa`,
      pascals,
      pascals * 0.001,
      () => saturationVapourPressure(celsius),
    );
  }),
  ...MOIST_DAYS.map((air) => {
    const ratio = psychrolib.GetHumRatioFromRelHum(air.celsius, air.humidity, air.pascals);
    // The package counts moist air by the volume of its dry part and adds the water, with other gas constants: 0.1 per cent.
    const density = psychrolib.GetMoistAirDensity(air.celsius, ratio, air.pascals);
    const what = `density at ${air.celsius} degC, ${air.pascals / 100} hPa, ${air.humidity * 100} %RH, kg/m3`;
    return check('psychrolib', what, density, density * 0.001, () => airDensity(air));
  }),
  check(
    'psychrolib',
    'dry part of 950 hPa at 35 degC and 80 %RH, Pa',
    95000 - psychrolib.GetVapPresFromRelHum(35, 0.8),
    10,
    () => dryPressure({ pascals: 95000, celsius: 35, humidity: 0.8 }),
  ),
  check(
    'psychrolib',
    'standard pressure at 1500 m, Pa',
    psychrolib.GetStandardAtmPressure(1500),
    20,
    () => standardAtmosphere(1500).pascals,
  ),
  check('icao-7488', 'density at 15 degC and 101325 Pa, kg/m3', 1.225, 0.00005, () =>
    airDensity(dry(101325, 15)),
  ),
  ...METRE_TABLE.flatMap(([metres, pascals, density]) => [
    check(
      'icao-7488',
      `pressure at ${metres} m, Pa`,
      pascals,
      0.1,
      () => standardAtmosphere(metres).pascals,
      'from memory',
    ),
    check(
      'icao-7488',
      `density at ${metres} m, kg/m3`,
      density,
      1e-5,
      () => standardAtmosphere(metres).density,
      'from memory',
    ),
  ]),
  ...RATIOS.flatMap(([feet, pressure, density]) => [
    check(
      'us-std-1976',
      `pressure ratio at ${feet} ft`,
      pressure,
      0.0001,
      () => standardAtmosphere(feet * FOOT).pascals / 101325,
    ),
    check('us-std-1976', `density ratio at ${feet} ft`, density, 0.0001, () =>
      relativeDensity(standardAtmosphere(feet * FOOT).density),
    ),
  ]),
  ...FEET_TABLE.flatMap(([feet, fahrenheit, psi]) => [
    check(
      'us-std-1976',
      `temperature at ${feet} ft, degF`,
      fahrenheit,
      0.1,
      () => standardAtmosphere(feet * FOOT).celsius * 1.8 + 32,
    ),
    check(
      'us-std-1976',
      `pressure at ${feet} ft, psi`,
      psi,
      0.005,
      () => standardAtmosphere(feet * FOOT).pascals / POUND_PER_SQUARE_INCH,
    ),
  ]),
  check(
    'us-std-1976',
    'altitude of density ratio 0.8617, ft',
    5000,
    3,
    () => densityAltitude(0.8617 * 1.225) / FOOT,
  ),
  check(
    'faa-phak',
    'density altitude at 5718 ft pressure altitude and 70 degF, ft (read off a chart)',
    7700,
    100,
    () => densityAltitude(airDensity(dry(standardAtmosphere(5718 * FOOT).pascals, celsiusOf(70)))) / FOOT,
  ),
  check('sae-j1349', 'correction at 990 mbar dry and 25 degC', 1, 0.0005, () =>
    factorOf(correctionJ1349(dry(99000, 25))),
  ),
  check('sae-j1349', 'correction at 850 mbar dry and 25 degC', 1.194, 0.0005, () =>
    factorOf(correctionJ1349(dry(85000, 25))),
  ),
  check('sae-j607', 'correction at 85 degF, 85 %RH, 28.85 inHg', 1.1005, 0.001, () =>
    factorOf(correctionJ607(day(85, 0.85, 28.85))),
  ),
  check('sae-j607', 'correction at 55 degF, 35 %RH, 30.10 inHg', 0.994, 0.0005, () =>
    factorOf(correctionJ607(day(55, 0.35, 30.1))),
  ),
];
