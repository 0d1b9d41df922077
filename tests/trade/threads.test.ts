/** Threads and grades as they are written. */
import { expect, test } from 'vitest';
import { stressAreaMetric } from '../../server/trade/sums/fasteners.ts';
import { parseFastener } from '../../server/trade/sums/threads.ts';

test.each<[text: string, told: string | undefined]>([
  ['3/8-16 grade 5', 'inch 0.375 16 5 dry'],
  ['3/8 - 16 gr 8', 'inch 0.375 16 8 dry'],
  ['3/8"-24 Grade 2 oiled', 'inch 0.375 24 2 oiled'],
  ['.500-13 grade 5', 'inch 0.5 13 5 dry'],
  ['M10x1.25 class 8.8', 'metric 10 1.25 8.8 dry'],
  ['M10 x 1.5 10.9, lubricated', 'metric 10 1.5 10.9 oiled'],
  ['m8 8.8', 'metric 8 1.25 8.8 dry'],
  ['M6 class 12.9', 'metric 6 1 12.9 dry'],
  ['3/8-16', undefined],
  ['grade 5', undefined],
  ['M10', undefined],
  ['M11 8.8', undefined],
  ['M10 grade 5', undefined],
  ['M8x9 8.8', undefined],
  ['0/8-16 grade 5', undefined],
  ['3/8-1 grade 5', undefined],
  ['manual, table 4', undefined],
  ['', undefined],
])('%j', (text, told) => {
  const found = parseFastener(text);
  const { system, diameter, thread, grade, lubrication } = found ?? {};
  expect(found && [system, diameter, thread, grade, lubrication].join(' ')).toBe(told);
});

/** Stress areas of ISO 898-1, which hold only for the coarse pitches of ISO 261. */
test.each<[diameter: number, mm2: number]>([
  [3, 5.03],
  [4, 8.78],
  [5, 14.2],
  [6, 20.1],
  [8, 36.6],
  [10, 58],
  [12, 84.3],
  [14, 115],
  [16, 157],
  [18, 192],
  [20, 245],
  [22, 303],
  [24, 353],
])('coarse M%d has a stress area of %d mm2', (diameter, mm2) => {
  const { thread = Number.NaN } = parseFastener(`M${diameter} 8.8`) ?? {};
  expect(Math.abs(stressAreaMetric(diameter, thread) / mm2 - 1)).toBeLessThan(0.005);
});
