/** Lines that are read as a whole: heads of days, the weather, the engine in one breath, dangers, remarks. A row each. */
import { describe, expect, test } from 'vitest';
import type { Habits } from '../../server/model/spoken/habits.ts';
import { readSpoken } from '../../server/model/spoken/read.ts';

const AROUND = { section: 'session', words: new Map(), specs: new Map(), inConflict: false } as const;
const US: Habits = { units: 'us', dayOrder: 'month first', cylinders: 8, date: '2026-05-01' };
const METRIC: Habits = { units: 'metric', dayOrder: 'day first', cylinders: 4, date: '2026-05-01' };
const PAIR: Habits = {
  units: 'imperial',
  dayOrder: 'day first',
  places: ['front carb', 'rear carb'],
  cylinders: 6,
  date: '2026-05-01',
};

type Row = readonly [text: string, habits: Habits, status: string, as: string];

const ROWS: Readonly<Record<string, readonly Row[]>> = {
  'heads of days': [
    ['5/9 boat, lake flat', US, 'spoken', 'session 2026-05-09  Boat, lake flat'],
    ['Sat 9 May, carbs', PAIR, 'spoken', 'session 2026-05-09  Carbs'],
    ['14.5. first ride', METRIC, 'spoken', 'session 2026-05-14  First ride'],
    ['Whit week, Sat 23rd. Hay', PAIR, 'spoken', 'session 2026-05-23  Hay'],
    ['11/4', {}, 'asked', ''],
    ['11/4', { date: '2026-03-28' }, 'asked', ''],
    ['3/8 hose on', US, 'asked', ''],
    ['Boat - May 9', US, 'spoken', 'session 2026-05-09  Boat'],
    ['Garage, 9 May', PAIR, 'spoken', 'session 2026-05-09  Garage'],
    ['Sat night, 9th', US, 'spoken', 'session 2026-05-09'],
    ['le 9 mai', METRIC, 'spoken', 'session 2026-05-09'],
    ['lör 9 maj båten', METRIC, 'spoken', 'session 2026-05-09  Båten'],
    ['zat 9 mei', METRIC, 'spoken', 'session 2026-05-09'],
    ['2026.05.09 boat', METRIC, 'spoken', 'session 2026-05-09  Boat'],
    ['14-05-2026', US, 'spoken', 'session 2026-05-14'],
    ['Whit Monday', PAIR, 'asked', ''],
    ['Sunday', PAIR, 'asked', ''],
  ],
  changes: [
    ['went from 55 to a 57 main', US, 'spoken', 'main jet 57'],
    ['jets 62 all round to 64s', US, 'spoken', 'main jet 64'],
    ['dwell 28, want 30, got 30', US, 'spoken', 'dwell 30 deg'],
    ['advanced it 3, that makes 11', US, 'spoken', 'initial 11 deg'],
    ['needles AB to AC', PAIR, 'spoken', 'needle AC'],
    ['stop screw R one half out', METRIC, 'spoken', 'idle screw right out 1/2 turn'],
    ['air screw R 1/4 in L 1/8 in', METRIC, 'spoken', 'mixture right in 1/4 turn, left in 1/8 turn'],
    ['tappets were tight on 3, all 12 now', PAIR, 'spoken', 'valve lash 12 thou "all" | note tappets were tight on 3'],
    ['mains 2 steps up 135 -> 137,5', METRIC, 'spoken', 'main jet 137.5'],
    ['points 15, sorry 16 thou', US, 'spoken', 'points gap 16 thou'],
    ['knocked it back from 7 to 5', PAIR, 'asked', ''],
    ['advance 2 more for the posh petrol', PAIR, 'asked', ''],
    ['needles down 1', METRIC, 'asked', ''],
    ['tire 60', US, 'asked', ''],
    ['timing from 8 to a 10 and back', US, 'asked', ''],
    ['air screw 1/4 richer', METRIC, 'spoken', 'mixture in 1/4 turn'],
    ['air screw 1/4 leaner', METRIC, 'spoken', 'mixture out 1/4 turn'],
    ['mixture screw 1/4 richer', METRIC, 'spoken', 'mixture out 1/4 turn'],
  ],
  'the air': [
    ['70/30.1/light wind', US, 'spoken', 'weather 70 F, 30.1 inHg | note light wind'],
    ['31° in the shade', METRIC, 'spoken', 'air temperature 31 C'],
    ['6200 ft, 24.1 baro, 71', US, 'spoken', 'altitude 6200 ft | weather 71 F, 24.1 inHg'],
  ],
  'the engine in one breath': [
    [
      '302 V8, auto, 3.42 rear',
      US,
      'spoken',
      'engine | cylinders 8 | layout vee | displacement 302 cu in | vehicle | transmission automatic | final drive 3.42:1',
    ],
    ['fires 18436572', US, 'spoken', 'engine | firing order 1-8-4-3-6-5-7-2'],
    ['dont go past 36 total or 220 on the temp', US, 'spoken', 'limits | total <= 36 deg | water <= 220 F'],
  ],
  dangers: [
    ['fuel line weeping at the pump', US, 'asked', ''],
    ['steering pulls right', US, 'asked', ''],
    ['no brake lights', US, 'asked', ''],
    ['carb 1 overflows', METRIC, 'asked', ''],
  ],
  'never guessed': [
    ['initial 2 deg less', US, 'spoken', 'initial -2 deg'],
    ['idle dropped 50 in gear', US, 'asked', ''],
    ['dwell 28 to 32', US, 'asked', ''],
    ['timing 22', US, 'asked', ''],
    ['needle seat #40 drill', US, 'spoken', 'needle seat 0.098 in "#40 drill"'],
    ['screws 1 1/4 L, 1 1/2 R', US, 'spoken', 'mixture left 1 1/4 turns, right 1 1/2 turns'],
    ['main jet 2: 115', METRIC, 'spoken', 'main jet #2 115'],
    ['tyres 2,1 front 2,3 rear', METRIC, 'spoken', 'tyre pressure front 2.1 bar, rear 2.3 bar'],
    ['choke cable 1/16 slack', PAIR, 'spoken', 'choke cable 1/16 in "slack"'],
  ],
  remarks: [
    ['neighbor came by to look', US, 'note', 'note neighbor came by to look'],
    ['3rd in class!', METRIC, 'note', 'note 3rd in class!'],
  ],
};

describe.each(Object.entries(ROWS))('%s', (_, rows) => {
  test.each(rows)('%s', (text, habits, status, as) => {
    const reading = readSpoken(text, AROUND, habits);
    expect([reading.status, reading.as.join(' | ')]).toEqual([status, as]);
  });
});

test.each(ROWS.dangers ?? [])('%s is a matter of safety', (text, habits) => {
  const { safety, offers } = readSpoken(text, AROUND, habits);
  expect(safety).toBe(true);
  expect(offers[0]).toMatch(/^fault .*\[safety\]$/);
});

const NAMED_DAYS: readonly (readonly [text: string, after: string, day: string])[] = [
  ['Easter', '2000-01-01', '2000-04-23'],
  ['Easter', '2024-01-01', '2024-03-31'],
  ['Easter', '2025-01-01', '2025-04-20'],
  ['Easter', '2038-01-01', '2038-04-25'],
  ['Easter Mon', '2026-03-01', '2026-04-06'],
  ['Good Friday', '2026-03-01', '2026-04-03'],
  ['Whit Monday', '2026-03-01', '2026-05-25'],
  ['Whit Monday', '2026-06-01', '2027-05-17'],
  ['Boxing Day', '2026-03-01', '2026-12-26'],
  ['Sunday', '2026-03-01', '2026-03-08'],
];

// Easter Sundays of the Gregorian calendar as almanacs print them, from memory; 2038 has the latest day there is.
test.each(NAMED_DAYS)('%s after %s', (text, date, day) => {
  const { status, offers } = readSpoken(text, AROUND, { ...METRIC, date });
  expect([status, offers[0]?.slice(8, 18)]).toEqual(['asked', day]);
});

test('what moved by an unknown amount is in doubt', () =>
  expect(readSpoken('advanced it a touch', AROUND, US).doubts).toEqual([{ name: 'initial' }]));
