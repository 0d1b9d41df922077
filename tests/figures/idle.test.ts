import { describe, expect } from 'vitest';
import { testFigures } from '../harness/figures.ts';

const day = (lines: string): string => `session 2026-05-02\n  ${lines.split(' | ').join('\n  ')}`;
const PLATES = expect.stringContaining('throttle plates may be too far open') as never;

describe('idle', () => {
  testFigures([
    {
      say: 'the drop into gear',
      book: day('idle 850 rpm in neutral | idle 720 rpm in drive'),
      figure: 'drop into gear',
      text: ['130 rpm'],
      working: '850 rpm - 720 rpm = 130 rpm',
      caution: 'chock the wheels',
      value: { low: 130, high: 130, off: 0 },
    },
    {
      say: 'rough readings make a rough drop',
      book: day('idle 840..860 rpm in park | idle ~720 rpm in gear'),
      figure: 'drop into gear',
      text: ['~120..140 rpm'],
    },
    {
      say: 'the last of each counts',
      book: day('idle 850 rpm in neutral | idle 720 rpm in drive | idle 900 rpm in neutral'),
      figure: 'drop into gear',
      text: ['180 rpm'],
    },
    {
      say: 'the wrong way round is asked about',
      book: day('idle 700 rpm in neutral | idle 720 rpm in drive'),
      figure: 'drop into gear',
      text: ['720 rpm in gear is above 700 rpm out of gear: readings swapped?'],
    },
    { say: 'one alone is no drop', book: day('idle 850 rpm in neutral'), figure: 'drop into gear', text: [] },
  ]);
});

describe('mixture screws', () => {
  testFigures([
    {
      say: 'a quarter of a turn apart is usual',
      book: day('mixture left 1 1/4 turns, right 1 1/2 turns'),
      figure: 'mixture left and right',
      text: ['1/4 turn apart, right further out; usually within about 1/4 turn'],
    },
    {
      say: 'more is asked about, changes added up',
      book: day('mixture left 1 1/4 turns, right 1 1/2 turns | mixture left in 1/4 turn'),
      figure: 'mixture left and right',
      text: [expect.stringContaining('1/2 turn apart, right further out') as never],
      working: '1 turn - 1 1/2 turns = -1/2 turn',
    },
    {
      say: 'alike',
      book: day('mixture primary left 1 turn, primary right 1 turn'),
      figure: 'mixture primary left and primary right',
      text: ['alike'],
    },
    {
      say: 'a flat trial leads to the throttle plates',
      book: day(
        'trial mixture -> idle |   1 turn 820 rpm |   1 1/2 turns 820 rpm |   2 turns 820 rpm | keep',
      ),
      figure: 'mixture screws without effect',
      text: [PLATES],
      working: 'trial of mixture: idle does not move',
    },
    {
      say: 'so does a note',
      book: day('note the mixture screws do nothing below a turn'),
      figure: 'mixture screws without effect',
      text: [PLATES],
    },
    {
      say: 'and readings that stay within a known noise',
      book: day(
        'mixture 1 turn | idle 820 rpm | idle 830 rpm | idle 825 rpm | mixture in 1/2 turn | idle 822 rpm',
      ),
      figure: 'mixture screws without effect',
      text: [PLATES],
      working: 'mixture turned, idle within the scatter',
    },
    {
      say: 'a trial that moves does not',
      book: day(
        'trial mixture -> idle |   1 turn 780 rpm |   1 1/2 turns 820 rpm |   2 turns 850 rpm | keep',
      ),
      figure: 'mixture screws without effect',
      text: [],
    },
    {
      say: 'no turns of a screw whose carburettor is off the engine',
      book: 'session 2026-05-02\n  fit carb single\n  mixture 1 turn\n  mixture out 1/4 turn\nsession 2026-05-03\n  fit carb twin\n  mixture left 1 turn, right 1 turn\n',
      figure: 'turns of mixture',
      text: [],
    },
    {
      say: 'turns of a screw through the notebook',
      book: `${day('mixture 1 1/2 turns | idle screw 1 turn')}\nsession 2026-05-03\n  mixture in 1/4 turn`,
      figure: 'turns of mixture',
      text: ['1 1/4 turns, set 2 times since 2026-05-02'],
      rows: ['2026-05-02 | 1 1/2 turns | 1 1/2 turns', '2026-05-03 | in 1/4 turn | 1 1/4 turns'],
    },
    {
      say: 'only up to the line asked about',
      book: `${day('mixture 1 1/2 turns | mixture in‸ 1/4 turn')}\nsession 2026-05-03\n  mixture in 1/4 turn`,
      figure: 'turns of mixture',
      text: ['1 1/4 turns, set 2 times since 2026-05-02'],
    },
  ]);
});

const VALVE = 'power valve by idle depression';

describe('power valve', () => {
  testFigures([
    {
      say: 'half the depression in gear',
      book: day('power valve 6.5 inHg | depression 12 inHg at idle in drive'),
      figure: VALVE,
      text: ['about 6 inHg, never above 10 inHg; fitted 6.5 inHg: above half, below the ceiling'],
      working: '12 inHg / 2 = 6 inHg; 12 inHg - 2 inHg = 10 inHg',
    },
    {
      say: 'held against the one fitted',
      book: day('depression 12 inHg at idle in drive | power valve 10.5 inHg'),
      figure: VALVE,
      text: [
        expect.stringContaining('fitted 10.5 inHg: above the ceiling, so it may be open at idle') as never,
      ],
    },
    {
      say: 'in gear goes before neutral',
      book: day(
        'power valve 6.5 inHg | depression 12 inHg at idle in drive | depression 17 inHg at idle in neutral',
      ),
      figure: VALVE,
      text: ['about 6 inHg, never above 10 inHg; fitted 6.5 inHg: above half, below the ceiling'],
    },
    {
      say: 'a depression not said to be in gear says so',
      book: day('power valve 8 inHg | depression 16 inHg at idle'),
      figure: VALVE,
      text: [
        'about 8 inHg, never above 14 inHg; fitted 8 inHg: agrees with the rule of thumb; this depression may be out of gear, where it is higher',
      ],
    },
    {
      say: 'whatever the unit',
      book: day('power valve 8 inHg | depression 406.366 mbar at idle in drive'),
      figure: VALVE,
      value: { low: 6, high: 6, off: 1e-4 },
    },
    { say: 'not without one', book: day('depression 12 inHg at idle in drive'), figure: VALVE, text: [] },
    {
      say: 'not at speed',
      book: day('power valve 8 inHg | depression 12 inHg @ 2500 rpm in gear'),
      figure: VALVE,
      text: [],
    },
    {
      say: 'none to be had under 2 inHg',
      book: day('power valve 8 inHg | depression 2 inHg at idle in gear'),
      figure: VALVE,
      text: [],
    },
  ]);
});
