import { describe, expect, test } from 'vitest';
import {
  fitTrial,
  knobFor,
  responseAt,
  type TrialFit,
  type TrialRow,
} from '../../server/trade/sums/trials.ts';

function rows(...pairs: readonly (readonly [number, number])[]): TrialRow[] {
  return pairs.map(([knob, response]) => ({ knob, response }));
}

function fitted(...pairs: readonly (readonly [number, number])[]): TrialFit {
  const fit = fitTrial(rows(...pairs));
  if (fit === undefined) throw new Error('no fit');
  return fit;
}

const TWO = fitted([0.25, 7], [0.28125, 9.5]);
const BENT = fitted([1, 1], [2, 4], [3, 9], [4, 16], [5, 25], [6, 36]);
const STRAIGHT = fitted([1, 1], [2, 2.1], [3, 2.9], [4, 4.05]);
const LEVEL = fitted([1, 0], [2, 8], [3, 9.9], [4, 10], [5, 10], [6, 10], [7, 10]);

describe('a fit', () => {
  test.each([
    ['no rows', []],
    ['one row', rows([1, 2])],
    ['one knob tried twice', rows([1, 2], [1, 3])],
    ['a number that is none', rows([1, 2], [Number.NaN, 3])],
  ])('none of %s', (_, given) => {
    expect(fitTrial(given)).toBeUndefined();
  });

  test('two rows make a line and say nothing of its spread', () => {
    expect(TWO.model).toEqual({ kind: 'line', slope: 80, intercept: -13 });
    expect(TWO.spread).toBeUndefined();
    expect(knobFor(TWO, 8)).toEqual({ kind: 'found', value: 0.2625, outside: false });
  });

  test('three rows keep the line: leaving one out leaves two, through which both run alike', () => {
    const three = fitted([1, 1], [2, 5], [3, 6]);
    expect(three.model.kind).toBe('line');
    expect(three.leaveOneOut?.line).toBeCloseTo(three.leaveOneOut?.curve ?? 0, 12);
  });

  test('a bent response is a curve, a straight one a line, by leave-one-out', () => {
    expect(BENT.model.kind).toBe('curve');
    expect(STRAIGHT.model.kind).toBe('line');
  });

  test('many rows are fitted in good time', () => {
    const many = Array.from({ length: 200 }, (_, index): [number, number] => [index, (index * 7919) % 101]);
    const begun = performance.now();
    fitted(...many);
    expect(performance.now() - begun).toBeLessThan(2000);
  });
});

describe('flatness', () => {
  test.each<[string, TrialRow[], number | undefined, string | undefined, number?]>([
    ['all alike', rows([1, 800], [2, 800], [3, 800]), undefined, 'does not move'],
    ['within the noise of repeats', rows([1, 800], [2, 810]), 10, 'within noise'],
    ['more than the noise', rows([1, 800], [2, 840]), 10, undefined],
    ['less than the meter tells', rows([1, 800], [2, 806], [3, 803]), undefined, 'within the meter', 8],
    ['two rows are not judged by the meter', rows([1, 800], [2, 806]), undefined, undefined, 8],
    ['more than the meter tells', rows([1, 800], [2, 806], [3, 812]), undefined, undefined, 8],
    [
      'up and down without trend',
      rows([1, 800], [2, 815], [3, 790], [4, 812], [5, 801]),
      undefined,
      'no trend',
    ],
    ['one step at the end', rows([1, 0], [2, 0], [3, 0], [4, 10]), undefined, undefined],
    ['plain slope', rows([1, 800], [2, 850], [3, 905], [4, 948]), undefined, undefined],
  ])('%s', (_, given, noise, expected, meter) => {
    expect(fitTrial(given, noise, meter)?.flat).toBe(expected);
  });

  test('a flat response has no knob to give', () => {
    expect(knobFor(fitted([1, 5], [2, 5]), 6)).toEqual({ kind: 'none', reason: 'flat' });
  });
});

describe('the knob wanted', () => {
  test('outside what was tried is said', () => {
    expect(knobFor(TWO, 12)).toMatchObject({ outside: true });
    expect(responseAt(TWO, 0.3)).toMatchObject({ outside: true });
    expect(responseAt(TWO, 0.26)).toMatchObject({ outside: false });
  });

  test('on a curve lies between the rows around it, with its interval', () => {
    const answer = knobFor(BENT, 20);
    expect(answer).toMatchObject({ kind: 'found', outside: false });
    if (answer.kind !== 'found') return;
    expect(answer.value).toBeGreaterThan(4);
    expect(answer.value).toBeLessThan(5);
    expect(responseAt(BENT, answer.value).value).toBeCloseTo(20, 6);
    expect(answer.low).toBeLessThan(answer.value);
    expect(answer.high).toBeGreaterThan(answer.value);
  });

  test('on a falling curve too', () => {
    const falling = fitted([1, 36], [2, 25], [3, 16], [4, 9], [5, 4], [6, 1]);
    const answer = knobFor(falling, 20);
    if (answer.kind !== 'found') throw new Error('none found');
    expect(falling.model.kind).toBe('curve');
    expect(responseAt(falling, answer.value).value).toBeCloseTo(20, 6);
    expect(answer.low).toBeLessThan(answer.value);
    expect(answer.high).toBeGreaterThan(answer.value);
  });

  test('on a level stretch is its middle', () => {
    expect(LEVEL.model.kind).toBe('curve');
    const answer = knobFor(LEVEL, 10);
    if (answer.kind !== 'found') throw new Error('none found');
    expect(answer).toMatchObject({ value: expect.closeTo(5.5, 6), outside: false });
    expect(answer.low).toBeLessThanOrEqual(4);
    expect(answer.high).toBeUndefined();
  });

  test('past the reach of a curve there is none', () => {
    expect(knobFor(BENT, 100)).toEqual({ kind: 'none', reason: 'out of reach' });
  });

  test('no interval is said where the slope may as well be none', () => {
    const loose = fitted([1, 1], [2, 5], [3, 4]);
    expect(loose.flat).toBeUndefined();
    const answer = knobFor(loose, 3);
    expect(answer.kind).toBe('found');
    expect(answer).not.toHaveProperty('low');
  });
});
