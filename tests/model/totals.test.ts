/** Timing totals of a notebook: lines in, each total with its working out. Lines are parted by ` / `. */
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../server/analysis/figure.ts';
import { totalAtSpeed, totalsOf } from '../../server/analysis/ignition/timing-totals.ts';
import { endOf } from './state.ts';

const notebook = (lines: string) => `session 2026-05-02\n${lines.split(' / ').join('\n')}`;
const text = ({ name, text }: Figure) => `${name}: ${text}`;

function totals(lines: string): readonly string[] {
  const all = totalsOf(endOf(notebook(lines)).state);
  return [
    ...all.filter(({ lacks }) => !lacks).map(text),
    ...all.flatMap(({ name, lacks }) => (lacks ? [`${name} lacks ${lacks.join(', ')}`] : [])),
  ];
}

const CURVE = 'mechanical 0 deg @ 1000 rpm, 20 deg @ 3000 rpm';
const VACUUM = 'vacuum advance 0 deg @ 4 inHg, 12 deg @ 12 inHg';
const AT_IDLE = 'idle 900 rpm / depression 17 inHg';

const ROWS: Readonly<Record<string, readonly (readonly [lines: string, ...totals: string[]])[]>> = {
  'with all that is needed': [
    [
      `initial 9 deg / ${CURVE} / ${VACUUM}, manifold / ${AT_IDLE}`,
      'timing at idle: 21 deg',
      'total: 29 deg',
      'cruise total: 41 deg',
      'all in: 3000 rpm',
      'slope: 10 deg per 1000 rpm',
    ],
  ],
  'what is lacking is said': [
    ['idle 900 rpm'],
    ['initial 9 deg', 'timing at idle lacks mechanical, an idle reading', 'total lacks mechanical'],
    [
      `${CURVE}`,
      'all in: 3000 rpm',
      'slope: 10 deg per 1000 rpm',
      'timing at idle lacks initial, an idle reading',
      'total lacks initial',
    ],
    [
      `initial 9 deg / ${CURVE} / ${VACUUM}, manifold / idle 900 rpm`,
      'total: 29 deg',
      'cruise total: 41 deg',
      'all in: 3000 rpm',
      'slope: 10 deg per 1000 rpm',
      'timing at idle lacks a depression reading',
    ],
    [
      `initial +2 deg / ${CURVE} / idle 900 rpm`,
      'all in: 3000 rpm',
      'slope: 10 deg per 1000 rpm',
      'timing at idle lacks initial',
      'total lacks initial',
    ],
    [
      `initial 9 F / ${CURVE}`,
      'all in: 3000 rpm',
      'slope: 10 deg per 1000 rpm',
      'timing at idle lacks initial, an idle reading',
      'total lacks initial',
    ],
  ],
};

describe.each(Object.entries(ROWS))('%s', (_, rows) => {
  test.each(rows.map(([lines, ...answer]) => [lines, answer] as const))('%s', (lines, answer) =>
    expect(totals(lines)).toEqual(answer),
  );
});

/** One total of a notebook that has all else. */
test.each<[lines: string, total: string]>([
  // Where the canister takes its vacuum.
  [`${VACUUM}, manifold / ${AT_IDLE}`, 'timing at idle: 21 deg'],
  [`${VACUUM}, ported / ${AT_IDLE}`, 'timing at idle: 9 deg'],
  [`${VACUUM}, manifold / vacuum advance plugged / ${AT_IDLE}`, 'timing at idle: 9 deg'],
  [`${VACUUM}, ported / vacuum source manifold / ${AT_IDLE}`, 'timing at idle: 21 deg'],
  [`${VACUUM} / ${AT_IDLE}`, 'timing at idle: 9 deg'],
  [`${VACUUM}, ported`, 'cruise total: 41 deg'],
  // The vacuum at idle, on the curve and at its stop.
  [`${VACUUM}, manifold / idle 900 rpm / depression 8 inHg`, 'timing at idle: 15 deg'],
  [`${VACUUM}, manifold / idle 900 rpm / depression 3 inHg`, 'timing at idle: 9 deg'],
  [`${VACUUM}, manifold / idle 900 rpm / depression 27.09 kPa`, 'timing at idle: 15 deg'],
  [`${VACUUM}, manifold / vacuum limit 8 deg / ${AT_IDLE}`, 'timing at idle: 17 deg'],
  [`${VACUUM}, manifold / vacuum limit 8 deg / ${AT_IDLE}`, 'cruise total: 37 deg'],
  ['vacuum advance 12 deg, manifold', 'cruise total: 41 deg'],
  // The weights at idle.
  ['idle 1500 rpm', 'timing at idle: 14 deg'],
  ['idle 1500..2000 rpm', 'timing at idle: 14..19 deg'],
  ['idle ~1500 rpm', 'timing at idle: ~14 deg'],
  ['idle >= 2000 rpm', 'timing at idle: 19..29 deg'],
  [`${VACUUM}, manifold / idle 900 rpm / depression 8..10 inHg`, 'timing at idle: 15..18 deg'],
  // The stop of the weights.
  ['mechanical limit 14 deg', 'total: 23 deg'],
  ['mechanical limit 14 deg', 'all in: 2400 rpm'],
  ['mechanical limit 30 deg', 'total: 29 deg'],
  // Rough values stay rough.
  ['initial ~9 deg', 'total: ~29 deg'],
  ['initial 8..10 deg', 'total: 28..30 deg'],
  ['initial <= 10 deg', 'total: <= 30 deg'],
  ['initial 9 ± 1 deg', 'total: 28..30 deg'],
  ['mechanical 0 deg @ 1000 rpm, 18..22 deg @ 3000 rpm', 'total: 27..31 deg'],
  ['mechanical 0 deg @ 1000 rpm, ~20 deg @ 3000 rpm', 'total: ~29 deg'],
  // Only the most is known.
  ['mechanical 20 deg', 'total: 29 deg'],
  ['mechanical 20 deg / idle 900 rpm', 'timing at idle: 9..29 deg'],
  // Distributor degrees and rpm are turned into the crank's.
  ['mechanical 0 deg @ 500 rpm, 10 deg @ 1500 rpm, distributor', 'total: 29 deg'],
  ['mechanical 0 deg @ 500 rpm, 10 deg @ 1500 rpm, distributor', 'all in: 3000 rpm'],
  ['mechanical 0 deg @ 500 rpm, 10 deg @ 1500 rpm distributor', 'all in: 3000 rpm'],
  ['mechanical distributor 0 deg @ 500 rpm, 10 deg @ 1500 rpm', 'total: 29 deg'],
  ['mechanical 0 dist deg @ 500 dist rpm, 10 dist deg @ 1500 dist rpm', 'total: 29 deg'],
  ['mechanical 0 dist deg @ 500 dist rpm, 10 dist deg @ 1500 dist rpm, distributor', 'total: 29 deg'],
  ['mechanical 0 @ 500, 10 deg @ 1500 rpm dist', 'all in: 3000 rpm'],
  ['mechanical 10 deg distributor', 'total: 29 deg'],
  ['mechanical 10 deg, distributor', 'total: 29 deg'],
  ['mechanical limit 7 deg distributor', 'total: 23 deg'],
  ['mechanical limit 7 deg, distributor', 'total: 23 deg'],
  ['vacuum advance 0 deg @ 4 inHg, 6 deg @ 12 inHg, manifold, distributor', 'cruise total: 41 deg'],
  ['initial 2 deg ATDC', 'total: 18 deg'],
  ['initial at -2 deg', 'total: 18 deg'],
  ['initial at 7 deg', 'total: 27 deg'],
  ['initial -2 deg', 'total: 27 deg'],
  ['initial -2..-1 deg', 'total: 27..28 deg'],
])('%s: %s', (lines, total) => {
  expect(totals(`initial 9 deg / ${CURVE} / ${lines}`)).toContain(total);
});

test('plugged off, there is no cruise total', () => {
  expect(totals(`initial 9 deg / ${CURVE} / ${VACUUM}, plugged`).join()).not.toContain('cruise');
});

/**
 * Outside: a factory distributor table of a marine four, read in crank terms, as relayed in a public forum (common
 * practice, no source): initial 6, and between two points the advance runs straight.
 */
describe('a factory distributor table', () => {
  const crank =
    'initial 6 deg / mechanical 0 deg @ 500 rpm, 2 deg @ 1000 rpm, 9 deg @ 1600 rpm, 14 deg @ 2000 rpm, 21 deg @ 3000 rpm, 28 deg @ 4000 rpm, 32 deg @ 4600 rpm';
  const distributor =
    'initial 6 deg / mechanical 0 @ 250, 1 @ 500, 4.5 @ 800, 7 @ 1000, 10.5 @ 1500, 14 @ 2000, 16 deg @ 2300 rpm, distributor';
  const table = [
    [500, 6],
    [1000, 8],
    [1600, 15],
    [2000, 20],
    [3000, 27],
    [4000, 34],
    [4600, 38],
    // Straight between the points, flat outside them.
    [1300, 11.5],
    [3500, 30.5],
    [400, 6],
    [5000, 38],
  ] as const;

  test.each(table)('at %d rpm: %d deg', (rpm, degrees) => {
    for (const lines of [crank, distributor]) {
      const total = totalAtSpeed(endOf(notebook(lines)).state, rpm);
      expect(total?.value).toEqual({ low: degrees, high: degrees, about: false });
    }
  });

  test('its greatest and where', () => {
    expect(totals(crank)).toContain('total: 38 deg');
    expect(totals(distributor)).toContain('all in: 4600 rpm');
  });
});

describe('law 9: a derived value shows its working', () => {
  const lines = `initial 9 deg / ${CURVE} / mechanical limit 14 deg / ${VACUUM}, manifold / ${AT_IDLE}`;
  const { state, textAt } = endOf(notebook(lines));
  const total = (name: string) => totalsOf(state).find((each) => each.name === name) as Figure;

  test.each([
    [
      'timing at idle',
      'initial + mechanical at 900 rpm + vacuum at 17 inHg (manifold)',
      '9 deg + 0 deg + 12 deg = 21 deg',
    ],
    ['total', 'initial + maximum mechanical from 2400 rpm, no vacuum', '9 deg + 14 deg = 23 deg'],
    ['cruise total', 'initial + maximum mechanical + maximum vacuum', '9 deg + 14 deg + 12 deg = 35 deg'],
    ['all in', 'lowest speed with full mechanical advance', '2400 rpm'],
    ['slope', 'steepest rise of the mechanical curve', '10 deg per 1000 rpm, 1000 to 3000 rpm'],
  ])('%s', (name, formula, working) => {
    expect(total(name).formula).toBe(formula);
    expect(total(name).working).toBe(working);
  });

  test('each input has the line that it came from', () => {
    expect(total('total').inputs.map(({ name, value, by }) => [name, value, by && textAt(by)])).toEqual([
      ['initial', '9 deg', 'initial 9 deg'],
      ['maximum mechanical', '14 deg', CURVE],
      ['mechanical limit', '14 deg', 'mechanical limit 14 deg'],
    ]);
  });
});
