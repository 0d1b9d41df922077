import psychrolib from 'psychrolib';
import { describe, expect, test } from 'vitest';
import { figureIn, testFigures } from '../harness/figures.ts';
import { dedent } from '../harness/fixture.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

const day = (weather: string, date = '2026-05-02'): string => `session ${date}\n  ${weather}\n`;

describe('the air of a session', () => {
  testFigures([
    {
      say: 'the standard day (ICAO Doc 7488: 1.2250 kg/m3 at 15 C, 1013.25 hPa, dry)',
      book: day('weather 15 C, 1013.25 hPa, 0 %RH'),
      figure: 'air density',
      text: ['1.225 kg/m3'],
    },
    {
      say: 'which is worth no altitude',
      book: day('weather 15 C, 1013.25 hPa, 0 %RH'),
      figure: 'density altitude',
      text: ['0 ft (0 m)'],
    },
    {
      say: 'from readings of their own',
      book: `${day('air temperature 15 C')}  barometer 1013.25 hPa\n  humidity 0 %\n`,
      figure: 'air density',
      text: ['1.225 kg/m3'],
    },
    {
      say: 'humidity that is not written may be anything',
      book: day('weather 35 C, 950 hPa'),
      figure: 'air density',
      value: { low: densityOf(35, 950, 1), high: densityOf(35, 950, 0), off: 2e-4 },
    },
    {
      say: 'an altitude stands in for a pressure, roughly',
      book: `${day('weather 15 C, 0 %RH')}  altitude 0 ft\n`,
      figure: 'air density',
      text: ['~1.225 kg/m3'],
    },
    {
      say: 'frost (10 below: 1.342 kg/m3 by the gas law)',
      book: day('weather -10 C, 1013.25 hPa, 0 %RH'),
      figure: 'air density',
      value: { low: 101325 / (287.05 * 263.15), high: 101325 / (287.05 * 263.15), off: 1e-4 },
    },
    { say: 'nothing without a pressure', book: day('weather 15 C'), figure: 'air density', text: [] },
    {
      say: 'nothing without a temperature',
      book: day('barometer 1000 hPa'),
      figure: 'air density',
      text: [],
    },
  ]);

  test.each([
    [2, 1030, 0.3],
    [25, 1000, 0.5],
    [35, 950, 0.8],
    [30, 985, 1],
  ])('%d C, %d hPa, humidity %d as psychrolib has it', (celsius, hPa, humidity) => {
    const book = day(`weather ${celsius} C, ${hPa} hPa, ${humidity * 100} %RH`);
    expect(figureIn(book, 'air density').value?.low).toBeCloseTo(densityOf(celsius, hPa, humidity), 3);
  });
});

/** Mass of dry air and vapour over the volume, by psychrolib (ASHRAE Handbook Fundamentals). */
function densityOf(celsius: number, hPa: number, humidity: number): number {
  const ratio = psychrolib.GetHumRatioFromRelHum(celsius, humidity, hPa * 100);
  return psychrolib.GetMoistAirDensity(celsius, ratio, hPa * 100);
}

describe('corrections carry their names', () => {
  testFigures([
    {
      say: 'SAE J1349: 990 mbar dry and 25 C is 1',
      book: day('weather 25 C, 990 mbar, 0 %RH'),
      figure: 'correction SAE J1349 (JUN90)',
      text: ['x 1, to 990 mbar dry and 25 C'],
      source: 'published: SAE J1349 JUN90',
    },
    {
      say: 'SAE J1349: 850 mbar dry and 25 C is 1.194',
      book: day('weather 25 C, 850 mbar, 0 %RH'),
      figure: 'correction SAE J1349 (JUN90)',
      value: { low: 1.194, high: 1.194, off: 0.0005 },
    },
    {
      say: 'SAE J607, as worked in a public article: 85 F, 85 %RH, 28.85 inHg is 1.1005',
      book: day('weather 85 F, 28.85 inHg, 85 %RH'),
      figure: 'correction SAE J607 (older standard)',
      value: { low: 1.1005, high: 1.1005, off: 0.0008 },
      caution: 'never compare across two corrections',
    },
    {
      say: 'neither is for a blown engine',
      book: `${day('weather 25 C, 990 mbar, 0 %RH')}  boost 6 psi\n`,
      figure: 'correction SAE J1349 (JUN90)',
      text: ['Not for this engine'],
    },
  ]);
});

const TWO_DAYS = dedent(`
  engine
    jet sizes 115 118 120 122
  session 2026-05-02
    weather 15 C, 1013.25 hPa, 0 %RH
    main jet 120
  session 2026-06-02
    weather 15 C, 829.9 hPa, 0 %RH
`);

describe('against the reference day', () => {
  testFigures([
    {
      say: 'the first session with weather',
      book: TWO_DAYS,
      figure: 'relative density',
      text: ['81.9 % of 2026-05-02'],
    },
    {
      say: 'or the reference that is written',
      book: `engine\n  reference weather 15 C, 829.9 hPa, 0 %RH\n${TWO_DAYS}`,
      figure: 'relative density',
      text: ['100 % of the reference weather'],
    },
    {
      say: 'the jet: area with the square root of the density, bore with its fourth root',
      book: TWO_DAYS,
      figure: 'main jet for this air',
      text: ['114.2, nearest at hand 115: area -9.5 %, bore -4.9 % from 120 in the air of 2026-05-02'],
      caution: 'A starting point only',
    },
    {
      say: 'and the air the jet was set in, not the first day, is what it is told from',
      book: `${TWO_DAYS}  main jet 115\nsession 2026-06-03\n  weather 15 C, 829.9 hPa, 0 %RH\n`,
      figure: 'main jet for this air',
      text: ['115, nearest at hand 115: area 0 %, bore 0 % from 115 in the air of 2026-06-02'],
    },
    {
      say: 'nothing in the session that set it',
      book: `${TWO_DAYS}  main jet 115\n`,
      figure: 'main jet for this air',
      text: [],
    },
    {
      say: 'a jet known by flow goes with the area',
      book: dedent(`
        session 2026-05-02
          weather 15 C, 1000 hPa, 0 %RH
          main jet 200 cc/min
        session 2026-06-02
          weather 15 C, 810 hPa, 0 %RH
      `),
      figure: 'main jet for this air',
      value: { low: 180, high: 180, off: 0.001 },
    },
  ]);
});
