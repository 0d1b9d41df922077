/** Speed and engine speed by gear, slip, and runs on corrected time. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exact, type Interval } from '../../server/trade/measure/interval.ts';
import { correctionJ1349 } from '../../server/trade/sums/air.ts';
import { figuresIn, testFigures } from '../harness/figures.ts';

const vehicle = (facts: string, session = 'idle 800 rpm'): string =>
  `vehicle\n${lines(facts)}session 2026-05-02\n${lines(session)}`;
const lines = (text: string): string =>
  text
    .split(' | ')
    .map((line) => `  ${line}\n`)
    .join('');

describe('speed in each gear', () => {
  testFigures([
    {
      say: '71.8 mph at 3000 rpm, 3.73 overall, 30 in tyre (public handbook): 23.9 for 1000',
      book: vehicle('tyre diameter 30 in | final drive 3.73 | gear ratios 2.5 1.5 1'),
      figure: 'speed in each gear',
      text: ['top (third): 23.9 mph (38.5 km/h) per 1000 rpm, without slip'],
      value: { low: (71.8 / 3) * 1.609344, high: (71.8 / 3) * 1.609344, off: 0.02 },
      rows: ['gear | overall | at 1000 rpm', 'third | 3.73:1 | 23.9 mph (38.5 km/h)'],
      caution: '',
    },
    {
      say: 'at the red line, with the caution that belongs to it',
      book: `engine\n  red line 3000\n${vehicle('tyre diameter 26 in | final drive 3.00 | gear ratios 2 1')}`,
      figure: 'speed in each gear',
      rows: ['second | 3:1 | 25.8 mph (41.5 km/h) | 77.3 mph (124.5 km/h)'],
      caution: 'The local law',
    },
    {
      say: '195/65R15 is 634.5 mm (UN ECE Regulation 30)',
      book: vehicle('tyre 195/65R15 | final drive 4'),
      figure: 'speed in each gear',
      text: [
        'direct drive (no gear ratios written): 18.6 mph (29.9 km/h) per 1000 rpm, unloaded tyre, without slip: a few per cent less on the road',
      ],
      working: 'pi x 0.6345 m x 1000 rpm / (60 x 4:1) = 8.306 m/s',
    },
    {
      say: 'the rolling diameter goes before the size',
      book: vehicle('tyre 195/65R15 | tyre diameter 24 in | final drive 4'),
      figure: 'speed in each gear',
      working: 'pi x 0.6096 m x 1000 rpm / (60 x 4:1) = 7.98 m/s',
    },
    {
      say: 'an overdrive behind top',
      book: vehicle('tyre diameter 25 in | final drive 4 | gear ratios 2 1 | overdrive 0.75'),
      figure: 'speed in each gear',
      rows: ['overdrive | 3:1 | 24.8 mph (39.9 km/h)'],
    },
    {
      say: 'a rough diameter stays rough',
      book: vehicle('tyre diameter 24..26 in | final drive 4'),
      figure: 'speed in each gear',
      rows: ['direct | 4:1 | 17.8..19.3 mph (28.7..31.1 km/h)'],
    },
    { say: 'no tyre', book: vehicle('final drive 4'), figure: 'speed in each gear', text: [] },
    { say: 'no final drive', book: vehicle('tyre 195/65R15'), figure: 'speed in each gear', text: [] },
    {
      say: 'a size that tells no diameter',
      book: vehicle('tyre "big blocks" | final drive 4'),
      figure: 'speed in each gear',
      text: [],
    },
    {
      say: 'a final drive of nought',
      book: vehicle('tyre 195/65R15 | final drive 0'),
      figure: 'speed in each gear',
      text: [],
    },
  ]);
});

const CAR = 'tyre diameter 25 in | final drive 4 | gear ratios 3.5 2 1.3 1';

describe('slip and engine speed', () => {
  testFigures([
    {
      say: 'in the gear that is named',
      book: vehicle(CAR, 'speed 55 mph @ 3000 rpm in fourth'),
      figure: 'slip in fourth',
      text: ['1.4 %: 55 mph (88.5 km/h) measured, 55.8 mph (89.8 km/h) calculated'],
    },
    {
      say: 'top is the last',
      book: vehicle(CAR, 'speed 55 mph @ 3000 rpm in top gear'),
      figure: 'slip in fourth',
    },
    {
      say: 'where none is named the one that fits, and it says so',
      book: vehicle(CAR, 'speed 42 mph @ 3000 rpm'),
      figure: 'slip, third fits best (no gear written)',
      text: ['2.1 %: 42 mph (67.6 km/h) measured, 42.9 mph (69.1 km/h) calculated'],
    },
    {
      say: 'a speedometer that reads over is put right first',
      book: vehicle(`${CAR} | speedometer error 10 %`, 'speed 55 mph @ 3000 rpm in fourth'),
      figure: 'slip in fourth',
      text: ['10.4 %: 50 mph (80.5 km/h) measured, 55.8 mph (89.8 km/h) calculated'],
    },
    {
      say: 'without an engine speed: what it must have been, in each gear',
      book: vehicle(CAR, 'speed 55 mph'),
      figure: 'engine speed at 55 mph',
      text: ['2958 rpm in top (fourth), without slip'],
      rows: ['second | 5916 rpm', 'fourth | 2958 rpm'],
    },
    {
      say: 'a speed that fits no gear tells no slip',
      book: vehicle(CAR, 'speed 120 mph @ 3000 rpm'),
      figure: 'slip, fourth fits best (no gear written)',
      text: [],
    },
  ]);

  const rpmAt = (tyre: string, speed: string): Interval => {
    const book = vehicle(`tyre diameter ${tyre} | final drive 4`, `speed ${speed}`);
    const found = figuresIn(book).find(({ name }) => name.startsWith('engine speed at'));
    return found?.value ?? exact(Number.NaN);
  };
  const mph = fc.integer({ min: 5, max: 150 });

  test('the unit that is typed does not count', () => {
    fc.assert(
      fc.property(mph, (speed) => {
        const inMiles = rpmAt('25 in', `${speed} mph`).low;
        expect(rpmAt('635 mm', `${speed * 1.609344} km/h`).low / inMiles).toBeCloseTo(1, 9);
      }),
    );
  });

  test('a range gives a range that holds every point of it', () => {
    fc.assert(
      fc.property(
        mph,
        fc.integer({ min: 0, max: 20 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (speed, more, share) => {
          const whole = rpmAt('24..26 in', `${speed}..${speed + more} mph`);
          const point = rpmAt(`${24 + 2 * share} in`, `${speed + more * share} mph`).low;
          expect(whole.low).toBeLessThanOrEqual(point * (1 + 1e-9));
          expect(whole.high).toBeGreaterThanOrEqual(point * (1 - 1e-9));
        },
      ),
    );
  });
});

const run = (date: string, weather: string, time: string): string =>
  `session ${date}\n  weather ${weather}\n  run time ${time}\n`;

describe('runs compared', () => {
  testFigures([
    {
      say: 'on corrected time: in the air of the correction a run keeps its own (SAE J1349: 990 mbar dry, 25 C)',
      book:
        run('2026-05-02', '25 C, 990 hPa, 0 %RH', '10 s') +
        run('2026-05-03', '25 C, 850 hPa, 0 %RH', '10.5 s'),
      figure: 'run time compared',
      text: [
        `fastest ${(10.5 / Math.cbrt(1.194)).toFixed(2).replace(/0$/, '')} s on 2026-05-03, corrected by SAE J1349 (JUN90), cube root of power`,
      ],
      rows: ['2026-05-02 | 10 s | 1.000 | 10 s | 1 %'],
      source: 'common practice',
      caution: 'same stretch',
    },
    {
      say: 'a day without its weather is told and left out',
      book:
        run('2026-05-02', '25 C, 990 hPa, 0 %RH', '10 s') +
        run('2026-05-03', '20 C, 990 hPa, 0 %RH', '10.5 s') +
        'session 2026-05-04\n  run time 9 s\n',
      figure: 'run time compared',
      text: [
        'fastest 10 s on 2026-05-02, corrected by SAE J1349 (JUN90), cube root of power; 1 not compared: no weather written',
      ],
      rows: ['2026-05-04 | 9 s | none |  | '],
    },
    {
      say: 'a blown engine has no such correction, and it is said',
      book: `engine\n  aspiration supercharged\n${run('2026-05-02', '25 C, 990 hPa', '10 s')}${run('2026-05-03', '5 C, 990 hPa', '9.8 s')}`,
      figure: 'run time compared',
      text: ['fastest 9.8 s on 2026-05-03, as run'],
    },
    {
      say: 'one run is no comparison',
      book: run('2026-05-02', '25 C, 990 hPa', '10 s'),
      figure: 'run time compared',
      text: [],
    },
    {
      say: 'runs under other words are another kind',
      book:
        run('2026-05-02', '25 C, 990 hPa', '10 s in third') +
        run('2026-05-03', '25 C, 990 hPa', '9 s in second'),
      figure: 'run time compared, in third',
      text: [],
    },
    {
      say: 'a speed is better when it is higher',
      book: `session 2026-05-02\n  weather 25 C, 990 hPa, 0 %RH\n  speed 20 kn @ 3000 rpm\nsession 2026-05-03\n  weather 25 C, 990 hPa, 0 %RH\n  speed 21 kn @ 3000 rpm\n`,
      figure: 'speed compared, @ 3000 rpm',
      text: ['highest 21 kn on 2026-05-03, corrected by SAE J1349 (JUN90), cube root of power'],
    },
    {
      say: 'runs below the line that is asked about are not yet run',
      book: `${run('2026-05-02', '25 C, 990 hPa', '10 s')}${run('2026-05-03', '25 C, 990 hPa', '10 s')}  note ‸ here\n${run('2026-05-04', '25 C, 990 hPa', '1 s')}`,
      figure: 'run time compared',
      rows: ['2026-05-02 | 10 s | 1.000 | 10 s | 0 %'].map((row) =>
        row
          .replaceAll('1.000', `${factor(25, 99000, 0.5).toFixed(3)} (50 % humidity assumed)`)
          .replace('| 10 s | 0', `| ${inTenMilli(10 / Math.cbrt(factor(25, 99000, 0.5)))} s | 0`),
      ),
    },
  ]);
});

function factor(celsius: number, pascals: number, humidity: number): number {
  const correction = correctionJ1349({ celsius, pascals, humidity });
  return correction.kind === 'factor' ? correction.factor : Number.NaN;
}

const inTenMilli = (n: number): string => String(Number(n.toFixed(2)));
