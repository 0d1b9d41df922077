import { describe, expect, test } from 'vitest';
import { figureIn, figuresIn, testFigures } from '../harness/figures.ts';
import { dedent } from '../harness/fixture.ts';
import { NORRIS } from '../trade/checks/norris.ts';

const session = (lines: string): string => `session 2026-05-03\n${dedent(lines)}`;

const STOP = session(`
  trial stop hole -> vacuum advance
    1/4 in   7.0 deg
    9/32 in  9.5 deg
    want 8 deg
  keep`);

describe('what a trial says', () => {
  testFigures([
    {
      say: 'two rows make a line: 2.5 deg in 1/32 in is 80 deg an inch',
      book: STOP,
      figure: 'stop hole -> vacuum advance',
      text: ['80 deg for each in, 1/4..9/32 in'],
      working: '2 rows; two rows say nothing of the scatter',
    },
    {
      say: 'the knob for what is wanted, and what the nearest drills give',
      book: STOP,
      figure: 'stop hole for 8 deg',
      text: ['0.2625 in'],
      working: '(8 deg + 13 deg) / 80 = 0.2625 in',
      rows: ['G drill | 0.261 in | -0.0015 | 7.9 deg', '17/64 in | 17/64 in | 0.0031 | 8.3 deg'],
      caution: '',
    },
    {
      say: 'outside the tried range is told',
      book: session(`
        trial stop hole -> vacuum advance
          1/4 in   7.0 deg
          9/32 in  9.5 deg
          want 12 deg`),
      figure: 'stop hole for 12 deg',
      text: ['5/16 in'],
      caution: 'Outside what was tried (1/4..9/32 in)',
    },
    {
      say: 'a drill by its number counts as its bore (ASME B94.11M: #7 is 0.2010)',
      book: session(`
        trial stop hole -> vacuum advance
          #7 drill  3 deg
          0.25 in   7 deg
          want 5 deg`),
      figure: 'stop hole for 5 deg',
      value: { low: 0.2255, high: 0.2255, off: 1e-9 },
      rows: ['#1 drill | 0.228 in | 0.0025 | 5.2 deg', '5.7 mm | 0.2244 in | -0.0011 | 4.9 deg'],
    },
    {
      say: 'and one by its letter (F is 0.257)',
      book: session(`
        trial stop hole -> vacuum advance
          letter F drill  8 deg
          0.237 in   6 deg
          A drill  5.7 deg
          want 7 deg`),
      figure: 'stop hole -> vacuum advance',
      text: ['100 deg for each in, 0.234..0.257 in'],
    },
    {
      say: 'a want in the unit of the knob asks what it gives',
      book: session(`
        trial stop hole -> vacuum advance
          1/4 in   7 deg
          9/32 in  9.5 deg
          want 17/64 in`),
      figure: 'vacuum advance at 17/64 in',
      text: ['8.3 deg'],
    },
    {
      say: 'a range is asked at both its ends',
      book: session(`
        trial shims -> idle
          1  800 rpm
          3  900 rpm
          want 820..860 rpm`),
      figure: 'shims for 820..860 rpm',
      text: ['1.4..2.2'],
    },
    {
      say: 'one row is too few',
      book: session(`
        trial stop hole -> vacuum advance
          1/4 in  7 deg
          want 8 deg`),
      figure: 'stop hole -> vacuum advance',
      text: [
        'nothing to fit yet: two rows at different settings make a line, three tell how far it may be trusted',
      ],
    },
    {
      say: 'rows in another unit are brought to the first',
      book: session(`
        trial stop hole -> vacuum advance
          1/4 in    7 deg
          7.14375 mm  9.5 deg
          want 8 deg`),
      figure: 'stop hole for 8 deg',
      text: ['0.2625 in'],
    },
    {
      say: 'rows that cannot be are left out and told',
      book: session(`
        trial stop hole -> vacuum advance
          1/4 in   7 deg
          9/32 in  9.5 deg
          5/16 in  3 inHg`),
      figure: 'stop hole -> vacuum advance',
      working:
        '2 rows, 1 left out for want of two numbers in the units of the others; two rows say nothing of the scatter',
    },
    {
      say: 'rough rows make a rough answer',
      book: session(`
        trial shims -> idle
          1  ~800 rpm
          3  900 rpm
          want 850 rpm`),
      figure: 'shims for 850 rpm',
      text: ['~2'],
    },
  ]);

  test('a response that does not move gives no answer, and mixture screws their usual cause', () => {
    const book = session(`
      trial mixture -> depression
        1 turn       17 inHg
        1 1/2 turns  17 inHg
        want 18 inHg`);
    expect(figureIn(book, 'mixture for 18 inHg').text).toBe(
      'none: depression does not move between 1..1 1/2 turns',
    );
    expect(figureIn(book, 'mixture -> depression').caution).toContain(
      'throttle plates may stand too far open',
    );
  });

  test('repeat rows tell the noise a response must be over', () => {
    const rows = (last: string) =>
      session(`
        trial shims -> idle
          1 800 rpm
          1 820 rpm
          2 ${last} rpm
          want 830 rpm`);
    expect(figureIn(rows('815'), 'shims for 830 rpm').text).toContain('no more than repeats');
    expect(figureIn(rows('950'), 'shims for 830 rpm').text).toMatch(/^1\.\d+/);
  });
});

describe('sizes that can be had', () => {
  const jets = (list: string) =>
    `engine\n  ${list}\n${session(`
    trial main jet -> air fuel ratio
      120 13.5
      125 12.8
      want 13`)}`;

  testFigures([
    {
      say: "of the notebook's own jets",
      book: jets('jet sizes 115 118 120 122 125 130'),
      figure: 'main jet for 13:1',
      text: ['123.6'],
      rows: ['125 | 125 | 1.4 | 12.8:1', '122 | 122 | -1.6 | 13.22:1'],
    },
    {
      say: 'else by the step that was tried',
      book: jets('cylinders 4'),
      figure: 'main jet for 13:1',
      rows: ['125 | 125 | 1.4 | 12.8:1'],
    },
    {
      say: 'a gap is set, not drilled',
      book: session(`
        trial plug gap -> idle
          0.030 in 800 rpm
          0.040 in 850 rpm
          want 830 rpm`),
      figure: 'plug gap for 830 rpm',
      text: ['0.036 in'],
      rows: [],
    },
  ]);

  test('a knob that takes any setting has no table of sizes', () => {
    const turns = session(`
      trial mixture -> idle
        1 turn   800 rpm
        2 turns  900 rpm
        want 850 rpm`);
    expect(figureIn(turns, 'mixture for 850 rpm').rows).toEqual([]);
  });
});

describe('which trials are meant', () => {
  const two = session(`
    trial shims -> idle
      1 800 rpm
      3 900 rpm
    note tried twice
      want 850 rpm
    trial washers -> idle
      1 700 rpm‸
      2 750 rpm
    keep`);

  test('on a line of a trial that trial, whole, rows below the line too', () =>
    expect(figuresIn(two, 'trial').map((figure) => [figure.name, figure.text])).toEqual([
      ['washers -> idle', '50 rpm for each number, 1..2'],
    ]));

  test('elsewhere every trial of the session', () => {
    const names = figuresIn(two.replace('‸', '')).map((figure) => figure.name);
    expect(names.filter((name) => name.includes('->'))).toEqual(['shims -> idle', 'washers -> idle']);
    expect(names).toContain('shims for 850 rpm');
  });

  test('on the line of a want its own answer', () => {
    const wants = STOP.replace('want 8 deg', 'want 7.5 deg\n  want 8 deg‸\n  want 9 deg');
    expect(figuresIn(wants, 'trial').map((figure) => figure.name)).toEqual([
      'stop hole for 8 deg',
      'stop hole -> vacuum advance',
    ]);
  });

  test('none in a session without', () => {
    const later = `${two.replace('‸', '')}\nsession 2026-05-04\n  idle 800 rpm`;
    expect(figuresIn(later).filter((figure) => figure.topic === 'trials')).toEqual([]);
  });
});

test('a trial is drawn as its rows and the line through them', () => {
  const { plot } = figureIn(STOP, 'stop hole -> vacuum advance');
  expect([plot?.across.unit.id, plot?.up.unit.id]).toEqual(['in', 'deg']);
  expect(plot?.series.map(({ name, drawn }) => [name, drawn])).toEqual([
    ['tried', 'points'],
    ['fitted', 'line'],
  ]);
  const ends = plot?.series.map(({ points }) => [points[0], points.at(-1)].map((each) => each?.value.low));
  expect(ends?.[0]).toEqual([7, 9.5]);
  expect(ends?.[1]?.[0]).toBeCloseTo(7, 9);
  expect(ends?.[1]?.[1]).toBeCloseTo(9.5, 9);
});

test("NIST's certified line through the Norris readings, written as a trial", () => {
  const rows = NORRIS.map(({ knob, response }) => `  ${knob} m ${response} kg`).join('\n');
  const book = `session 2026-05-03\ntrial offset -> reading\n${rows}\n  want 0 m\n`;
  const [figure] = figuresIn(book).filter((each) => each.name.startsWith('reading at'));
  expect(figure?.value?.low).toBeLessThan(-0.262323073774029);
  expect(figure?.value?.high).toBeGreaterThan(-0.262323073774029);
  expect(figure?.formula).toBe('offset x 1.002 - 0.2623 kg');
});
