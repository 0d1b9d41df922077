/** What rises or falls with each of several numbers has its least and its most at the corners (interval arithmetic, IEEE 1788). */
import { expect, test } from 'vitest';
import {
  about,
  atLeast,
  exact,
  type Interval,
  monotoneEach,
  range,
} from '../../server/trade/measure/interval.ts';

type Row = readonly [say: string, of: Interval, low: number, high: number, rough: boolean];

const product = (a: Interval, b: Interval): Interval => monotoneEach([a, b] as const, (x, y) => x * y);
const quotient = (a: Interval, b: Interval): Interval => monotoneEach([a, b] as const, (x, y) => x / y);

const ROWS: readonly Row[] = [
  ['one value each', product(exact(3), exact(4)), 12, 12, false],
  ['rising with both', product(range(2, 3), range(4, 5)), 8, 15, false],
  ['rising with one, falling with the other', quotient(range(2, 3), range(4, 8)), 0.25, 0.75, false],
  ['of either sign', product(range(-2, 3), range(-1, 4)), -8, 12, false],
  ['rough where any is', product(about(3), range(1, 2)), 3, 6, true],
  ['open where any is', product(atLeast(2), exact(3)), 6, Number.POSITIVE_INFINITY, false],
];

test.each(ROWS)('%s', (_, { low, high, about: rough }, ...expected) =>
  expect([low, high, rough]).toEqual(expected),
);

test('what cannot be told is anything', () => {
  const root = monotoneEach([range(-1, 4)] as const, Math.sqrt);
  expect([root.low, root.high]).toEqual([Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]);
});
