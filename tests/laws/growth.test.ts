/** A law of growth: four times as many lines of any sort are opened in little more than four times the steps, and no edit takes more than opening. */
import { expect, test } from 'vitest';
import { lineCount } from '../../server/model/snapshot/locate.ts';
import { edit, type Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { stepsOf } from '../harness/steps.ts';
import { growth, MOST, notebookOf, SHAPES, SHORT, TIMES, WARM } from './shapes.ts';

/** Reading all anew, and comparing with what was. */
const EDIT_TO_OPENING = 3.6;
const LONGEST = 120_000;

test.each(SHAPES.map((shape) => [shape.name, shape] as const))(
  'law 11: %s',
  (_, shape) => {
    openNotebook(notebookOf(shape, WARM));
    const [short, long] = [SHORT, TIMES * SHORT].map((n) => opened(notebookOf(shape, n)));
    expect(growth(short?.steps, long?.steps)).toBeLessThan(MOST);
    for (const steps of editsOf(long?.snapshot as Snapshot))
      expect(steps).toBeLessThan(EDIT_TO_OPENING * (long?.steps ?? 0));
  },
  LONGEST,
);

function opened(text: string): { readonly steps: number; readonly snapshot: Snapshot } {
  let snapshot: Snapshot | undefined;
  const steps = stepsOf(() => {
    snapshot = openNotebook(text);
  });
  return { steps, snapshot: snapshot as unknown as Snapshot };
}

/** A figure typed behind a line near the top, in the middle, and the last. */
function editsOf(snapshot: Snapshot): readonly number[] {
  const lines = lineCount(snapshot);
  return [Math.min(5, lines - 2), lines >> 1, lines - 2].map((line) => {
    const end = { line, character: Number.MAX_SAFE_INTEGER };
    return stepsOf(() => edit(snapshot, { range: { start: end, end }, text: '1' }));
  });
}

test.each<[name: string, work: (n: number) => unknown, exponent: number]>([
  ['a copy', (n) => [...Array(n).fill(0)], 1],
  [
    'a map copied at each step',
    (n) => [...Array(n).keys()].reduce((map, i) => new Map(map).set(i, i), new Map()),
    2,
  ],
  [
    'a look through all at each step',
    (n) => [...Array(n).keys()].map((_, i, all) => all.find((each) => each === i)),
    2,
  ],
])('steps are counted: %s', (_, work, exponent) => {
  const [short, long] = [100, 400].map((n) => stepsOf(() => work(n)));
  expect(Math.log((long ?? 0) / (short ?? 0)) / Math.log(4)).toBeCloseTo(exponent, 1);
});
