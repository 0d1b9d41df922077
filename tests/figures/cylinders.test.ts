import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figureIn, figuresIn, testFigures } from '../harness/figures.ts';
import { SEED } from '../laws/law.ts';

const EIGHT = `
  engine
    cylinders 8
    bank left 1-3-5-7
    bank right 2-4-6-8
    firing order 1-8-4-3-6-5-7-2
  session 2026-05-02`;
const FOUR = `
  engine
    cylinders 4
    layout inline
  session 2026-05-02`;
/** Eight tubes at idle out of a magazine's reply, judged to be nothing to worry about. */
const PUBLISHED = 'tube 300 300 530 450 360 470 350 390 F at idle';

describe('cylinder by cylinder', () => {
  testFigures([
    {
      say: 'mean, spread and ends',
      book: `${EIGHT}\n    ${PUBLISHED}`,
      figure: 'tube (idle)',
      text: ['mean 394 F, spread 230 F: highest #3 530 F, lowest #1 300 F'],
      value: { low: 393.75, high: 393.75, off: 1e-9 },
    },
    {
      say: 'by bank and in firing order',
      book: `${EIGHT}\n    ${PUBLISHED}`,
      figure: 'tube (idle)',
      rows: [
        'left bank | 385 F | 230 F | #1 300, #3 530, #5 360, #7 350',
        'right bank | 403 F | 170 F | #2 300, #4 450, #6 470, #8 390',
        'in firing order |  |  | #1 300, #8 390, #4 450, #3 530, #6 470, #5 360, #7 350, #2 300',
      ],
    },
    {
      say: 'lines of their own make a set',
      book: `${FOUR}\n    tube #1 400 F\n    tube #3 440 F\n    tube #1 410 F`,
      figure: 'tube',
      text: ['mean 425 F, spread 30 F: highest #3 440 F, lowest #1 410 F'],
    },
    {
      say: 'other conditions make another',
      book: `${FOUR}\n    tube 400 410 420 430 F at idle\n    tube 600 610 620 650 F @ 2500 rpm`,
      figure: 'tube (@ 2500 rpm)',
      text: ['mean 620 F, spread 50 F: highest #4 650 F, lowest #1 600 F'],
    },
    {
      say: 'a rough reading makes a rough mean',
      book: `${FOUR}\n    egt 1200 ~1220 1240 1260..1300 F @ 3000 rpm`,
      figure: 'egt (@ 3000 rpm)',
      text: ['mean ~1230..1240 F, spread 80 F: highest #4 1280 F, lowest #1 1200 F'],
    },
    {
      say: 'spread alone at idle is not flagged (published idle example)',
      book: `${EIGHT}\n    ${PUBLISHED}`,
      figure: 'cold cylinder by tube (idle)',
      text: ['No cylinder is clearly colder than the rest; spread alone at idle means little'],
      caution: '',
    },
    {
      say: 'a tube that barely rises is',
      book: `${FOUR}\n    weather 57 F\n    tube 388 401 384 120 F at idle`,
      figure: 'cold cylinder by tube (idle)',
      text: ['May not be firing: #4 120 F, the others 388 F'],
      caution: 'Unburnt fuel',
    },
    {
      say: 'plugs side by side',
      book: `${FOUR}\n    plug #2 tan\n    plug #1 tan\n    plug #4 "sooty, wet"`,
      figure: 'plugs side by side',
      text: ['3 read, 2 kinds'],
      rows: ['#1 | tan', '#2 | tan', '#4 | sooty, wet'],
    },
    { say: 'one cylinder is no set', book: `${FOUR}\n    tube #1 400 F`, figure: 'tube', text: [] },
  ]);
});

const by75 = 'compression, 75 per cent rule';
const by70 = 'compression, 70 per cent and 100 psi rule';

describe('compression and leak-down', () => {
  testFigures([
    {
      say: 'highest 150: lowest allowed 105 at 70 per cent (factory service manual, worked)',
      book: `${FOUR}\n    compression 150 106 149 150 psi`,
      figure: by70,
      text: ['lowest 106 psi is 70.7 % of the highest, 150 psi: none under the 105 psi allowed'],
      source: 'published',
    },
    {
      say: 'the stricter rule finds it',
      book: `${FOUR}\n    compression 150 106 149 150 psi`,
      figure: by75,
      text: ['lowest 106 psi is 70.7 % of the highest, 150 psi: #2 under the 112.5 psi allowed'],
      working: '106 psi / 150 psi = 70.7 %; 0.75 x 150 psi = 112.5 psi',
    },
    {
      say: 'two side by side: the gasket between them',
      book: `${FOUR}\n    compression 150 96 98 149 psi`,
      figure: by75,
      text: [expect.stringContaining('#2 and #3 are neighbours: suspect the head gasket') as never],
    },
    {
      say: 'side by side by the bank, not by the number',
      book: `${EIGHT}\n    compression 150 148 98 152 99 150 151 149 psi`,
      figure: by75,
      text: [expect.stringContaining('#3 and #5 are neighbours') as never],
    },
    {
      say: 'neighbours are not guessed',
      book: 'session 2026-05-02\n  compression 150 96 98 149 psi',
      figure: by75,
      text: [expect.stringContaining('write the banks or `layout inline`') as never],
    },
    {
      say: 'a low ratio under the floor',
      book: `${FOUR}\n    compression 92 101 88 97 psi`,
      figure: by70,
      text: [
        'lowest 88 psi is 87.1 % of the highest, 101 psi: #1, #3, #4 under the 100 psi allowed (a healthy low-compression engine can read less)',
      ],
    },
    {
      say: 'cylinders told one by one keep their numbers',
      book: `${FOUR}\n    compression #4 150 psi\n    compression #2 100 psi`,
      figure: by75,
      text: [expect.stringContaining('#2 under the 112.5 psi') as never],
    },
    {
      say: 'told in the unit it was written in',
      book: `${FOUR}\n    compression 10 7 10 10 bar`,
      figure: by75,
      text: ['lowest 7 bar is 70.0 % of the highest, 10 bar: #2 under the 7.5 bar allowed'],
      rows: ['cylinder | compression | of the highest', '#2 | 7 bar | 70 %'],
    },
    {
      say: 'leak-down is a spread',
      book: `${FOUR}\n    leak down 8 7 9 22 %`,
      figure: 'leak-down spread',
      text: ['15 %: best 7 %, worst #4 22 %'],
      caution: 'turn the engine over',
    },
  ]);
});

/** Which cylinders are low, whatever the pressures are told in. */
const withoutPressures = (text: string): string => text.replace(/[\d.]+ (?:psi|kPa)/g, 'so much');

describe('laws', () => {
  const psi = fc.array(fc.integer({ min: 60, max: 240 }), { minLength: 4, maxLength: 4 });

  test('the unit typed does not matter', () =>
    fc.assert(
      fc.property(psi, (values) => {
        const kPa = values.map((value) => (value * 6.894757293168361).toFixed(9)).join(' ');
        const one = figureIn(`${FOUR}\n    compression ${values.join(' ')} psi`, by75);
        const other = figureIn(`${FOUR}\n    compression ${kPa} kPa`, by75);
        expect(withoutPressures(other.text)).toBe(withoutPressures(one.text));
        expect(other.value?.low).toBeCloseTo(one.value?.low ?? Number.NaN, 9);
      }),
      { numRuns: 60, seed: SEED },
    ));

  test('a range holds what its points give', () =>
    fc.assert(
      fc.property(psi, psi, (low, over) => {
        const text = (at: (i: number) => string) => low.map((_, i) => at(i)).join(' ');
        const [a, b] = [(i: number) => low[i] ?? 0, (i: number) => (low[i] ?? 0) + (over[i] ?? 0)];
        const whole = figureIn(`${FOUR}\n    compression ${text((i) => `${a(i)}..${b(i)}`)} psi`, by75);
        for (const at of [a, b, (i: number) => (i % 2 === 0 ? a(i) : b(i))]) {
          const point = figureIn(`${FOUR}\n    compression ${text((i) => String(at(i)))} psi`, by75);
          expect(whole.value?.low).toBeLessThanOrEqual((point.value?.low ?? 0) + 1e-12);
          expect(whole.value?.high).toBeGreaterThanOrEqual((point.value?.high ?? 0) - 1e-12);
        }
      }),
      { numRuns: 60, seed: SEED },
    ));

  test('a hover on leak-down says nothing of compression', () => {
    const book = `${FOUR}\n    compression 150 149 148 150 psi\n    leak down 8 7 9 22 %`;
    expect(figuresIn(book, 'leak down').filter(({ name }) => name.startsWith('compression'))).toEqual([]);
  });
});
