import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { about, atMost, contains, exact, type Interval, range } from '../../server/trade/measure/interval.ts';
import * as ignition from '../../server/trade/sums/ignition.ts';
import {
  coilOnTime,
  dwellAvailable,
  dwellDegrees,
  dwellPercent,
  sparkInterval,
} from '../../server/trade/sums/points.ts';
import type { CurvePoint } from '../../server/trade/vocabulary/quantity.ts';

/** The distributor table of a factory marine four, in distributor degrees at distributor rpm (a printed table, relayed). */
const DISTRIBUTOR_TABLE = [
  [250, 0],
  [500, 1],
  [800, 4.5],
  [1000, 7],
  [1500, 10.5],
  [2000, 14],
  [2300, 16],
] as const;
const FACTORY = DISTRIBUTOR_TABLE.map(([rpm, deg]) => ({
  at: 2 * rpm,
  value: exact(2 * deg),
}));
/** The same maker's totals with an initial of 6 deg, engine rpm, crank degrees. */
const FACTORY_TOTALS = [
  [500, 6],
  [1000, 8],
  [1600, 15],
  [2000, 20],
  [3000, 27],
  [4000, 34],
  [4600, 38],
] as const;

const SAMPLE = curve([900, 0], [1500, 8], [3200, 22]);

describe('the factory table', () => {
  it.each(FACTORY_TOTALS)('at %d rpm gives %d', (rpm, expected) => {
    expect(totalAt(exact(6), FACTORY, rpm)).toEqual(exact(expected));
  });

  it("runs straight: the points at 3000 and 4000 rpm lie on their neighbours' line", () => {
    const without = FACTORY.filter((point) => point.at !== 3000 && point.at !== 4000);
    expect(totalAt(exact(6), [...without, ...curve([4000, 28])], 3000)?.low).toBeCloseTo(27, 12);
  });

  it('is all in where its last point stands', () => expect(ignition.allInSpeed(FACTORY)).toBe(4600));

  it('TM 10-3930-623-12 par. 4-21: 15 to 19 crank degrees at 2000 rpm, as a range into the total', () => {
    const truck = [
      { at: 400, value: exact(0) },
      { at: 2000, value: range(15, 19) },
    ];
    expect(totalAt(exact(5), truck, 2600)).toEqual(range(20, 24));
  });
});

describe('a curve', () => {
  it.each<[string, readonly CurvePoint[], number, Interval | undefined]>([
    ['has nothing without points', [], 900, undefined],
    ['is flat before the first', SAMPLE, 300, exact(0)],
    ['is flat after the last', SAMPLE, 6000, exact(22)],
    ['is itself at a point', SAMPLE, 1500, exact(8)],
    ['runs straight in between', SAMPLE, 1200, exact(4)],
    ['does not mind the order', SAMPLE.toReversed(), 1200, exact(4)],
    [
      'keeps a range',
      [
        { at: 0, value: exact(0) },
        { at: 1000, value: range(10, 20) },
      ],
      500,
      range(5, 10),
    ],
    [
      'keeps a rough value',
      [
        { at: 0, value: exact(0) },
        { at: 1000, value: about(10) },
      ],
      500,
      about(5),
    ],
    [
      'keeps a bound',
      [
        { at: 0, value: exact(0) },
        { at: 1000, value: atMost(10) },
      ],
      500,
      atMost(5),
    ],
    ['of one point is flat', curve([1000, 7]), 3000, exact(7)],
    ['takes the first of two at one speed', curve([1000, 7], [1000, 9]), 1000, exact(7)],
  ])('%s', (_, points, at, expected) => expect(ignition.curveAt(points, at)).toEqual(expected));

  it('over a stretch takes every value of it', () => {
    expect(ignition.curveOver(SAMPLE, 1200, 3200)).toEqual(range(4, 22));
    expect(ignition.curveOver(curve([1000, 5], [2000, 25], [3000, 15]), 3000, 1000)).toEqual(range(5, 25));
    expect(ignition.curveOver([], 1, 2)).toBeUndefined();
  });

  it('has a greatest value, wherever it stands', () => {
    expect(ignition.greatestOn(curve([1000, 5], [2000, 25], [3000, 15]))).toEqual(exact(25));
    expect(ignition.greatestOn([])).toBeUndefined();
  });

  it.each<[string, readonly CurvePoint[], Interval | undefined, number | undefined]>([
    ['at its last point', SAMPLE, undefined, 3200],
    ['sooner where it goes flat', curve([900, 0], [2800, 22], [4000, 22]), undefined, 2800],
    ['sooner where the stop comes first', SAMPLE, exact(15), 2350],
    ['not later for a stop beyond it', SAMPLE, exact(30), 3200],
    ['from the first point if that is all', curve([900, 3]), undefined, 900],
    ['nowhere without points', [], undefined, undefined],
  ])('is all in %s', (_, points, limit, expected) =>
    expect(ignition.allInSpeed(points, limit)).toBe(expected),
  );

  it('has a slope on each leg', () => {
    const legs = ignition.slopes(SAMPLE).map(({ from, to, slope }) => [from, to, slope.low.toFixed(3)]);
    expect(legs).toEqual([
      [900, 1500, '13.333'],
      [1500, 3200, '8.235'],
    ]);
    expect(ignition.steepest(SAMPLE)?.to).toBe(1500);
    expect(ignition.steepest(curve([900, 0]))).toBeUndefined();
    expect(ignition.slopes(curve([900, 0], [900, 4]))).toEqual([]);
  });

  const points = fc.array(
    fc.tuple(fc.integer({ min: 0, max: 7000 }), fc.double({ min: 0, max: 40, noNaN: true })),
    {
      minLength: 1,
      maxLength: 6,
    },
  );
  const speed = fc.integer({ min: 0, max: 8000 });

  it('that never falls gives totals that never fall', () => {
    fc.assert(
      fc.property(points, speed, speed, (drawn, a, b) => {
        const speeds = drawn.map(([rpm]) => rpm).toSorted((x, y) => x - y);
        const degrees = drawn.map(([, deg]) => deg).toSorted((x, y) => x - y);
        const rising = curve(...speeds.map((rpm, i): [number, number] => [rpm, degrees[i] ?? 0]));
        const [slow, fast] = [Math.min(a, b), Math.max(a, b)];
        const low = totalAt(exact(9), rising, slow)?.low ?? Number.NaN;
        const high = totalAt(exact(9), rising, fast)?.low ?? Number.NaN;
        expect(low).toBeLessThanOrEqual(high + 1e-9);
      }),
    );
  });

  it('with rough points holds every curve the points allow', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(points, share, speed, (drawn, part, at) => {
        const wide = drawn.map(([rpm, deg]) => ({ at: rpm, value: range(deg, deg + 3) }));
        const one = drawn.map(([rpm, deg]) => ({ at: rpm, value: exact(deg + part * 3) }));
        const { low, high } = ignition.curveAt(wide, at) ?? exact(Number.NaN);
        const value = ignition.curveAt(one, at)?.low ?? Number.NaN;
        expect(value).toBeGreaterThanOrEqual(low - 1e-9);
        expect(value).toBeLessThanOrEqual(high + 1e-9);
      }),
    );
  });

  it('is nowhere above its greatest', () => {
    fc.assert(
      fc.property(points, speed, (drawn, at) => {
        const most = ignition.greatestOn(curve(...drawn))?.high ?? Number.NaN;
        expect(ignition.curveAt(curve(...drawn), at)?.high).toBeLessThanOrEqual(most + 1e-9);
      }),
    );
  });
});

describe('totals', () => {
  it.each<[string, Interval | undefined, Interval | undefined]>([
    ['wide open', totalAt(exact(9), SAMPLE, 3200), exact(31)],
    ['wide open with a stop', totalAt(exact(9), SAMPLE, 3200, exact(14)), exact(23)],
    ['wide open from a rough initial', totalAt(about(9), SAMPLE, 3200), about(31)],
    ['wide open without a curve', totalAt(exact(9), [], 3200), undefined],
    ['initial for a total', ignition.initialFor(exact(32), exact(14)), exact(18)],
    ['stop for a total', ignition.mechanicalLimitFor(exact(32), range(9, 10)), range(22, 23)],
    ['boost, 1 deg per psi', ignition.boostRetard(exact(34), exact(6)), exact(28)],
    ['boost, 1 to 1.5 deg per psi', ignition.boostRetard(exact(34), exact(6), range(1, 1.5)), range(25, 28)],
  ])('%s', (_, total, expected) => expect(total).toEqual(expected));

  it('by speed: a row every 250 rpm, the greatest and where it is reached', () => {
    const totals = ignition.totalOver(exact(9), SAMPLE, 900, 3600);
    expect(totals?.rows.map((row) => row.rpm)).toEqual([
      1000, 1250, 1500, 1750, 2000, 2250, 2500, 2750, 3000, 3250, 3500,
    ]);
    expect(totals?.maximum).toEqual(exact(31));
    expect(totals?.at).toBe(3200);
  });

  it('by speed: the greatest between two rows is not missed', () => {
    const humped = curve([1000, 5], [2100, 25], [3000, 15]);
    const totals = ignition.totalOver(exact(9), humped, 1000, 3000);
    expect([totals?.maximum, totals?.at]).toEqual([exact(34), 2100]);
  });

  it('by speed: a stop is reached between two rows', () => {
    const totals = ignition.totalOver(exact(9), SAMPLE, 1000, 4000, exact(15));
    expect([totals?.maximum, totals?.at]).toEqual([exact(24), 2350]);
  });

  it.each<[string, readonly CurvePoint[], number, number, number]>([
    ['no curve', [], 1000, 3000, 250],
    ['a range turned round', SAMPLE, 3000, 1000, 250],
    ['no step', SAMPLE, 1000, 3000, 0],
  ])('by speed: nothing for %s', (_, points, from, to, step) => {
    expect(ignition.totalOver(exact(9), points, from, to, undefined, step)).toBeUndefined();
  });

  it('by speed: no endless table', () => {
    expect(ignition.totalOver(exact(9), SAMPLE, 0, 1e15)?.rows).toHaveLength(1000);
  });
});

describe('marks and stops (geometry)', () => {
  it('ten per cent of the circumference is 36 deg', () => {
    expect(ignition.damperDistance(152, 36)).toBeCloseTo((Math.PI * 152) / 10, 12);
  });

  it('one quarter of a circle of diameter 8 is 6.2832 long', () => {
    expect(ignition.damperDistance(8, 90)).toBeCloseTo(6.2832, 4);
  });

  it('a travel as long as the radius is a radian (57.2958 deg) of the cam, twice that of the crank', () => {
    expect(ignition.crankDegreesForStopTravel(10, 10)).toBeCloseTo(2 * 57.2958, 3);
    expect(ignition.stopTravelForCrankDegrees(10, 2 * 57.2958)).toBeCloseTo(10, 4);
  });

  it('come back to where they began', () => {
    const size = fc.double({ min: 1, max: 500, noNaN: true });
    const degrees = fc.double({ min: 0, max: 60, noNaN: true });
    fc.assert(
      fc.property(size, degrees, (length, deg) => {
        const travel = ignition.stopTravelForCrankDegrees(length, deg);
        expect(ignition.crankDegreesForStopTravel(length, travel)).toBeCloseTo(deg, 9);
      }),
    );
  });
});

describe('points', () => {
  it.each([
    [4, 90],
    [6, 60],
    [8, 45],
  ])('%d cylinders leave %d deg', (cylinders, expected) => expect(dwellAvailable(cylinders)).toBe(expected));

  /** Standard textbook relation: 45 deg on a four is 50 %, 50 deg 56 %. */
  it.each([
    [45, 50],
    [50, 56],
  ])('%d deg of dwell on a four is %d per cent', (dwell, expected) => {
    expect(Math.round(dwellPercent(exact(dwell), 4).low)).toBe(expected);
    expect(contains(dwellDegrees(dwellPercent(range(dwell - 0.001, dwell + 0.001), 4), 4), dwell)).toBe(true);
  });

  /** Public page on ignition physics, "the dwell angle": 6 ms between sparks, 4 ms shut. */
  it('a four with two thirds dwell at 5000 rpm', () => {
    expect(sparkInterval(exact(5000), 4).low).toBeCloseTo(0.006, 12);
    expect(coilOnTime(dwellDegrees(exact(200 / 3), 4), exact(5000)).low).toBeCloseTo(0.004, 12);
  });

  it('a speed that may be nought leaves the time open', () => {
    expect(sparkInterval(range(0, 600), 4).high).toBe(Infinity);
  });
});

/** Wide open, at one speed. */
const totalAt = (initial: Interval, mechanical: readonly CurvePoint[], rpm: number, limit?: Interval) =>
  ignition.totalOver(initial, mechanical, rpm, rpm, limit)?.maximum;

function curve(...points: readonly (readonly [number, number])[]): readonly CurvePoint[] {
  return points.map(([at, value]) => ({ at, value: exact(value) }));
}
