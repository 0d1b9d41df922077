import { describe, expect, test } from 'vitest';
import { compareWithPast, noiseOf } from '../../server/trade/sums/noise.ts';

describe('history', () => {
  const past = [17, 17.5, 16.8, 17.2, 17.1];

  test.each([
    [17.4, false],
    [19.5, true],
    [14, true],
  ])('a reading of %s against its past is odd: %s', (reading, odd) => {
    expect(compareWithPast(past, reading)?.odd).toBe(odd);
  });

  test('four past readings are too few, and a past without scatter measures nothing', () => {
    expect(compareWithPast(past.slice(1), 30)).toBeUndefined();
    expect(compareWithPast([17, 17, 17, 17, 17], 18)).toBeUndefined();
  });

  test('a past mostly of one value still has a scatter', () => {
    expect(compareWithPast([17, 17, 17, 17, 17.5], 17.2)?.odd).toBe(false);
    expect(compareWithPast([17, 17, 17, 17, 17.5], 19)?.odd).toBe(true);
  });

  test('noise is pooled over groups of repeats, and groups of one say nothing', () => {
    const noise = noiseOf([[10, 12], [20, 20, 23], [5]]);
    expect(noise).toEqual({ deviation: Math.sqrt((2 + 6) / 3), degrees: 3 });
    expect(noiseOf([[5], [6]])).toBeUndefined();
  });

  test('a group that strays far more than the others was no repeat', () => {
    const alike = [
      [142, 141],
      [139, 138],
      [145, 144],
      [140, 138],
      [138, 137],
    ];
    expect(noiseOf([...alike, [141, 104]])).toEqual(noiseOf(alike));
    const toTheFigure = [
      [7, 7],
      [8, 8],
      [6, 6],
      [8, 8],
      [9, 8],
      [9, 7.5],
    ];
    expect(noiseOf([...toTheFigure, [22, 7]])).toEqual(noiseOf(toTheFigure));
    expect(noiseOf([...alike.slice(0, 3), [141, 104]])?.deviation).toBeGreaterThan(10);
  });
});
