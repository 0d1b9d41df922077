import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { curveAt, knotsOf, monotone } from '../../server/trade/measure/curves.ts';
import { airDensity, densityAltitude, standardAtmosphere } from '../../server/trade/sums/air.ts';
import { airFuelRatioOf, FUELS, lambdaOf, ratingAt } from '../../server/trade/sums/carburation.ts';
import { displacement } from '../../server/trade/sums/compression.ts';
import { coldCylinders, numbered } from '../../server/trade/sums/cylinders.ts';
import { DRILLS, drillNamed, nearestDrill } from '../../server/trade/sums/drills.ts';
import { compareWithPast } from '../../server/trade/sums/noise.ts';
import { engineSpeed, roadSpeed } from '../../server/trade/sums/road.ts';
import { studentT, withinT } from '../../server/trade/sums/student-t.ts';
import { fitTrial, knobFor, responseAt } from '../../server/trade/sums/trials.ts';

const size = fc.double({ min: 0.01, max: 100, noNaN: true });
const reading = fc.integer({ min: -2000, max: 2000 }).map((thousandths) => thousandths / 10);
const rows = fc.array(fc.record({ knob: fc.integer({ min: 0, max: 40 }), response: reading }), {
  minLength: 2,
  maxLength: 9,
});

function law<T>(name: string, values: fc.Arbitrary<T>, holds: (value: T) => void): void {
  test(name, () => fc.assert(fc.property(values, holds)));
}

function close(value: number, expected: number): void {
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(1e-7 * Math.max(1, Math.abs(expected)));
}

describe('round trips', () => {
  law('altitude and the standard atmosphere', fc.integer({ min: -500, max: 5000 }), (metres) => {
    const air = standardAtmosphere(metres);
    close(densityAltitude(air.density), metres);
  });
  law('a rating at another depression and back', fc.tuple(size, size, size), ([flow, rated, wanted]) => {
    close(ratingAt(ratingAt(flow, rated, wanted), wanted, rated), flow);
  });
  law('lambda and air-fuel ratio', fc.tuple(size, fc.constantFrom(...FUELS)), ([ratio, fuel]) => {
    close(airFuelRatioOf(lambdaOf(ratio, fuel), fuel), ratio);
  });
  law('road speed and engine speed', fc.tuple(size, size, size), ([rpm, ratio, tyre]) => {
    close(engineSpeed(roadSpeed(rpm, ratio, tyre), ratio, tyre), rpm);
  });
  law('a drill by its name and by its size', fc.constantFrom(...DRILLS), (drill) => {
    expect(drillNamed(drill.name)).toBe(drill);
    expect(nearestDrill(drill.inches)?.over).toBe(0);
  });
  law(
    't and its probability',
    fc.tuple(fc.integer({ min: 1, max: 120 }), fc.double({ min: 0.5, max: 0.999, noNaN: true })),
    ([degrees, probability]) => {
      close(withinT(studentT(degrees, probability), degrees), probability);
    },
  );
});

describe('the same in any unit', () => {
  law('displacement of sizes in inches or mm', fc.tuple(size, size), ([bore, stroke]) => {
    close(displacement(bore * 25.4, stroke * 25.4, 4) / 25.4 ** 3 / displacement(bore, stroke, 4), 1);
  });
  law(
    'cold tubes in degC or degF',
    fc.array(fc.integer({ min: 60, max: 700 }), { minLength: 3, maxLength: 8 }),
    (tubes) => {
      const cold = (scale: number, zero: number) =>
        coldCylinders(numbered(tubes.map((each) => each * scale + zero)), 20 * scale + zero).map(
          (each) => each.cylinder,
        );
      // A power of two keeps the arithmetic exact, so that no tube changes sides by rounding.
      expect(cold(2, 32)).toEqual(cold(1, 0));
    },
  );
  law(
    'a reading against its past',
    fc.tuple(
      fc.array(fc.integer({ min: 0, max: 500 }), { minLength: 5, maxLength: 12 }),
      fc.integer({ min: 0, max: 500 }),
    ),
    ([past, value]) => {
      const scaled = compareWithPast(
        past.map((each) => each * 4),
        value * 4,
      );
      expect(scaled?.odd).toBe(compareWithPast(past, value)?.odd);
    },
  );
  law('a trial with its knob and response in other units', fc.tuple(rows, reading), ([given, wanted]) => {
    const fit = fitTrial(given);
    const other = fitTrial(given.map((row) => ({ knob: row.knob * 2, response: row.response * 4 })));
    expect(other?.model.kind).toBe(fit?.model.kind);
    expect(other?.flat).toBe(fit?.flat);
    if (fit === undefined || other === undefined) return;
    const [answer, same] = [knobFor(fit, wanted), knobFor(other, wanted * 4)];
    expect(same.kind).toBe(answer.kind);
    if (answer.kind === 'found' && same.kind === 'found') close(same.value / 2, answer.value);
  });
});

describe('curves', () => {
  const points = fc.array(fc.record({ x: fc.integer({ min: 0, max: 50 }), y: reading }), {
    minLength: 2,
    maxLength: 12,
  });
  const places = fc.array(fc.double({ min: -10, max: 60, noNaN: true }), { minLength: 2, maxLength: 8 });

  law('a monotone curve stays monotone', fc.tuple(points, places, fc.boolean()), ([given, at, falling]) => {
    const knots = monotone(knotsOf(given), falling);
    fc.pre(knots.length >= 2);
    const values = at
      .toSorted((one, other) => one - other)
      .map((x) => curveAt(knots, x) * (falling ? -1 : 1));
    for (const [index, value] of values.slice(1).entries())
      expect(value).toBeGreaterThanOrEqual((values[index] ?? value) - 1e-9);
  });
  law(
    'a curve through any knots keeps between the two it lies between',
    fc.tuple(points, fc.double({ min: 0, max: 1, noNaN: true })),
    ([given, share]) => {
      const knots = knotsOf(given);
      for (const [index, right] of knots.slice(1).entries()) {
        const left = knots[index] ?? right;
        const y = curveAt(knots, left.x + share * (right.x - left.x));
        expect(y).toBeGreaterThanOrEqual(Math.min(left.y, right.y) - 1e-9);
        expect(y).toBeLessThanOrEqual(Math.max(left.y, right.y) + 1e-9);
      }
    },
  );
  law('values already in order are left as they are', points, (given) => {
    const once = monotone(knotsOf(given));
    for (const [index, knot] of monotone(once).entries()) close(knot.y, once[index]?.y ?? Number.NaN);
  });
  law('drawing together keeps the weighted sum', points, (given) => {
    const sum = (knots: readonly { y: number; weight: number }[]) =>
      knots.reduce((total, knot) => total + knot.y * knot.weight, 0);
    close(sum(monotone(knotsOf(given))), sum(knotsOf(given)));
  });
});

describe('intervals hold their point', () => {
  law('of a response', fc.tuple(rows, fc.integer({ min: -20, max: 60 })), ([given, knob]) => {
    const fit = fitTrial(given);
    if (fit === undefined) return;
    const { value, low = value, high = value } = responseAt(fit, knob);
    expect(low).toBeLessThanOrEqual(value);
    expect(high).toBeGreaterThanOrEqual(value);
  });
  law('of a knob', fc.tuple(rows, reading), ([given, wanted]) => {
    const fit = fitTrial(given);
    const answer = fit && knobFor(fit, wanted);
    if (answer?.kind !== 'found') return;
    expect(answer.low ?? answer.value).toBeLessThanOrEqual(answer.value);
    expect(answer.high ?? answer.value).toBeGreaterThanOrEqual(answer.value);
  });
  law(
    'a line meets the wanted response at the ends of its knob interval',
    fc.tuple(rows, reading),
    ([given, wanted]) => {
      const fit = fitTrial(given);
      const answer = fit && knobFor(fit, wanted);
      if (fit?.model.kind !== 'line' || answer?.kind !== 'found' || answer.low === undefined) return;
      const { low = Number.NaN, high = Number.NaN } = responseAt(fit, answer.low);
      const miss = Math.min(Math.abs(low - wanted), Math.abs(high - wanted));
      expect(miss).toBeLessThanOrEqual(1e-4 * Math.max(1, Math.abs(wanted), high - low));
    },
  );
});

describe('air', () => {
  law(
    'is thinner warm, damp or high',
    fc.tuple(fc.integer({ min: -20, max: 40 }), fc.integer({ min: 0, max: 90 })),
    ([celsius, percent]) => {
      const air = { pascals: 100000, celsius, humidity: percent / 100 };
      expect(airDensity({ ...air, celsius: celsius + 1 })).toBeLessThan(airDensity(air));
      expect(airDensity({ ...air, humidity: air.humidity + 0.1 })).toBeLessThan(airDensity(air));
      expect(airDensity({ ...air, pascals: 99000 })).toBeLessThan(airDensity(air));
    },
  );
});
