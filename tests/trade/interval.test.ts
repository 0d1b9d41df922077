import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as iv from '../../server/trade/measure/interval.ts';

type Interval = iv.Interval;

const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
/** An interval with a point inside it, ends open now and then. */
const holding = fc
  .tuple(
    number,
    number,
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.constantFrom('both', 'low', 'high', 'none'),
    fc.boolean(),
  )
  .map(([a, b, share, ends, rough]) => {
    const [low, high] = a <= b ? [a, b] : [b, a];
    const point = Math.min(high, Math.max(low, low + share * (high - low)));
    const made = {
      low: ends === 'low' || ends === 'both' ? low : -Infinity,
      high: ends === 'high' || ends === 'both' ? high : Infinity,
      about: rough,
    };
    return { made, point };
  });

const TWO: Record<string, [(a: Interval, b: Interval) => Interval, (a: number, b: number) => number]> = {
  add: [iv.add, (a, b) => a + b],
  subtract: [iv.subtract, (a, b) => a - b],
  multiply: [iv.multiply, (a, b) => a * b],
  least: [iv.least, Math.min],
  greatest: [iv.greatest, Math.max],
  'hull, first': [iv.hull, (a) => a],
  'hull, second': [iv.hull, (_, b) => b],
};

const ONE: Record<string, [(a: Interval, k: number) => Interval, (a: number, k: number) => number]> = {
  scale: [iv.scale, (a, k) => a * k],
  shift: [iv.shift, (a, k) => a + k],
  'monotone, rising': [(a, k) => iv.monotone(a, (x) => Math.atan(x) + k), (a, k) => Math.atan(a) + k],
  'monotone, falling': [(a, k) => iv.monotone(a, (x) => k - x * x * x), (a, k) => k - a * a * a],
};

function sound(result: Interval, point: number): void {
  expect(Number.isNaN(result.low) || Number.isNaN(result.high)).toBe(false);
  expect(result.low).toBeLessThanOrEqual(result.high);
  expect(iv.contains(result, point)).toBe(true);
}

describe('the result holds what the points would give', () => {
  it.each(Object.entries(TWO))('%s', (_, [onIntervals, onPoints]) => {
    fc.assert(
      fc.property(holding, holding, (a, b) => {
        const result = onIntervals(a.made, b.made);
        sound(result, onPoints(a.point, b.point));
        expect(result.about).toBe(a.made.about || b.made.about);
      }),
    );
  });

  it.each(Object.entries(ONE))('%s', (_, [onInterval, onPoint]) => {
    fc.assert(
      fc.property(holding, number, (a, k) => {
        const result = onInterval(a.made, k);
        sound(result, onPoint(a.point, k));
        expect(result.about).toBe(a.made.about);
      }),
    );
  });

  it('divide', () => {
    fc.assert(
      fc.property(holding, holding, (a, b) => {
        fc.pre(b.point !== 0);
        sound(iv.divide(a.made, b.made), a.point / b.point);
      }),
    );
  });
});

describe('by hand', () => {
  const { exact, about, range, atMost, atLeast } = iv;
  const anything = { low: -Infinity, high: Infinity, about: false };
  it.each<[string, Interval, Interval]>([
    ['range puts its ends in order', range(12, 4), { low: 4, high: 12, about: false }],
    ['roughness is catching', iv.add(exact(9), about(22)), { low: 31, high: 31, about: true }],
    ['at most and at least', iv.add(atMost(9), exact(22)), { low: -Infinity, high: 31, about: false }],
    ['open less open the same way', iv.subtract(atMost(3), atMost(2)), anything],
    ['open times nought', iv.multiply(atLeast(5), exact(0)), exact(0)],
    ['two minus signs', iv.multiply(range(-3, -2), range(-5, -4)), range(8, 15)],
    ['across nought', iv.multiply(range(-2, 3), range(-5, 4)), range(-15, 12)],
    ['over an open end', iv.divide(atLeast(5), atLeast(2)), atLeast(0)],
    ['over what may be nought', iv.divide(exact(1), range(0, 4)), anything],
    ['scale turns the ends round', iv.scale(range(1, 2), -3), range(-6, -3)],
    ['a root of what may be negative', iv.monotone(range(-1, 4), Math.sqrt), anything],
    ['a falling function of an open end', iv.monotone(atLeast(2), (x) => 1 / x), range(0, 0.5)],
    ['not a number is anything', exact(Number.NaN), anything],
    ['hull spans the hole', iv.hull(range(1, 2), range(5, 6)), range(1, 6)],
    ['least goes end by end', iv.least(range(1, 9), range(3, 4)), range(1, 4)],
    ['greatest goes end by end', iv.greatest(range(1, 9), range(3, 4)), range(3, 9)],
    [
      'two numbers too large',
      iv.add(exact(Number.MAX_VALUE), exact(Number.MAX_VALUE)),
      { low: Number.MAX_VALUE, high: Infinity, about: false },
    ],
  ])('%s', (_, result, expected) => expect(result).toEqual(expected));

  it.each<[string, unknown, unknown]>([
    ['exact is exact', iv.isExact(exact(9)), true],
    ['about is not', iv.isExact(about(9)), false],
    ['a range is not', iv.isExact(range(1, 2)), false],
    ['ends are inside', iv.contains(range(1, 2), 2), true],
    ['beyond is not', iv.contains(range(1, 2), 2.01), false],
    ['width', iv.width(range(190, 220)), 30],
    ['width of an open one', iv.width(atLeast(1)), Infinity],
    ['middle', iv.middle(range(190, 220)), 205],
    ['middle of at most', iv.middle(atMost(34)), 34],
    ['middle of at least', iv.middle(atLeast(800)), 800],
    ['middle of anything', iv.middle(anything), 0],
    ['middle of large ends', iv.middle(range(1e308, 1.5e308)), 1.25e308],
    ['surely above', iv.surelyAbove(range(35, 36), atMost(34)), true],
    ['touching is not above', iv.surelyAbove(range(34, 36), atMost(34)), false],
    ['surely below', iv.surelyBelow(exact(3), range(4, 5)), true],
    ['overlapping is not below', iv.surelyBelow(exact(4.5), range(4, 5)), false],
    ['equal', iv.equal(range(1, 2), range(2, 1)), true],
    ['rough differs from exact', iv.equal(exact(1), about(1)), false],
  ])('%s', (_, result, expected) => expect(result).toBe(expected));
});
