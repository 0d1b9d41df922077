import { describe, expect, test } from 'vitest';
import { figureIn, figuresIn, testFigures } from '../harness/figures.ts';
import { dedent } from '../harness/fixture.ts';
import { NORRIS } from '../trade/checks/norris.ts';

const session = (lines: string): string => `session 2026-05-03\n${dedent(lines)}`;

const STOP = session(`
  trial feed restrictor -> oil pressure
    1/8 in   12 psi
    5/32 in  14.5 psi
    want 13 psi
  keep`);

describe('what a trial says', () => {
  testFigures([
    {
      say: 'two rows make a line: 2.5 psi in 1/32 in is 80 psi an inch',
      book: STOP,
      figure: 'feed restrictor -> oil pressure',
      text: ['80 psi per in, 1/8..5/32 in'],
      working: '2 rows; two rows say nothing about scatter',
    },
    {
      say: 'the knob for what is wanted, and what the nearest drills give',
      book: STOP,
      figure: 'feed restrictor for 13 psi',
      text: ['0.1375 in'],
      working: '(13 psi - 2 psi) / 80 = 0.1375 in',
      rows: ['#29 drill | 0.136 in | -0.0015 | 12.88 psi', '9/64 in | 9/64 in | 0.0031 | 13.25 psi'],
      caution: '',
    },
    {
      say: 'outside the tried range is told',
      book: session(`
        trial feed restrictor -> oil pressure
          1/8 in   12 psi
          5/32 in  14.5 psi
          want 17 psi`),
      figure: 'feed restrictor for 17 psi',
      text: ['3/16 in'],
      caution: 'Outside the range tried (1/8..5/32 in)',
    },
    {
      say: 'a drill by its number counts as its bore (ASME B94.11M: #48 is 0.0760)',
      book: session(`
        trial feed restrictor -> oil pressure
          #48 drill  8 psi
          0.125 in   12 psi
          want 10 psi`),
      figure: 'feed restrictor for 10 psi',
      value: { low: 0.1005, high: 0.1005, off: 1e-9 },
      rows: ['#39 drill | 0.0995 in | -0.001 | 9.918 psi', '2.6 mm | 0.1024 in | 0.0019 | 10.15 psi'],
    },
    {
      say: 'and one by its letter (F is 0.257)',
      book: session(`
        trial feed restrictor -> oil pressure
          letter F drill  15 psi
          0.237 in   13 psi
          A drill  12.7 psi
          want 14 psi`),
      figure: 'feed restrictor -> oil pressure',
      text: ['100 psi per in, 0.234..0.257 in'],
    },
    {
      say: 'a want in the unit of the knob asks what it gives',
      book: session(`
        trial feed restrictor -> oil pressure
          1/8 in   12 psi
          5/32 in  14.5 psi
          want 9/64 in`),
      figure: 'oil pressure at 9/64 in',
      text: ['13.25 psi'],
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
        trial feed restrictor -> oil pressure
          1/8 in  12 psi
          want 13 psi`),
      figure: 'feed restrictor -> oil pressure',
      text: [
        'Nothing to fit yet: two rows at different settings make a line, three show how far to trust it',
      ],
    },
    {
      say: 'rows in another unit are brought to the first',
      book: session(`
        trial feed restrictor -> oil pressure
          1/8 in    12 psi
          3.96875 mm  14.5 psi
          want 13 psi`),
      figure: 'feed restrictor for 13 psi',
      text: ['0.1375 in'],
    },
    {
      say: 'rows that cannot be are left out and told',
      book: session(`
        trial feed restrictor -> oil pressure
          1/8 in   12 psi
          5/32 in  14.5 psi
          3/16 in  3 V`),
      figure: 'feed restrictor -> oil pressure',
      working:
        '2 rows, 1 left out without two numbers in the units of the others; two rows say nothing about scatter',
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
      'None: depression does not move between 1..1 1/2 turns',
    );
    expect(figureIn(book, 'mixture -> depression').caution).toContain('throttle plates may be too far open');
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
      ['washers -> idle', '50 rpm per number, 1..2'],
    ]));

  test('elsewhere every trial of the session', () => {
    const names = figuresIn(two.replace('‸', '')).map((figure) => figure.name);
    expect(names.filter((name) => name.includes('->'))).toEqual(['shims -> idle', 'washers -> idle']);
    expect(names).toContain('shims for 850 rpm');
  });

  test('on the line of a want its own answer', () => {
    const wants = STOP.replace('want 13 psi', 'want 12.5 psi\n  want 13 psi‸\n  want 14 psi');
    expect(figuresIn(wants, 'trial').map((figure) => figure.name)).toEqual([
      'feed restrictor for 13 psi',
      'feed restrictor -> oil pressure',
    ]);
  });

  test('none in a session without', () => {
    const later = `${two.replace('‸', '')}\nsession 2026-05-04\n  idle 800 rpm`;
    expect(figuresIn(later).filter((figure) => figure.topic === 'trials')).toEqual([]);
  });
});

test('a trial is drawn as its rows and the line through them', () => {
  const { plot } = figureIn(STOP, 'feed restrictor -> oil pressure');
  expect([plot?.across.unit.id, plot?.up.unit.id]).toEqual(['in', 'psi']);
  expect(plot?.series.map(({ name, drawn }) => [name, drawn])).toEqual([
    ['tried', 'points'],
    ['fitted', 'line'],
  ]);
  const ends = plot?.series.map(({ points }) => [points[0], points.at(-1)].map((each) => each?.value.low));
  expect(ends?.[0]).toEqual([12, 14.5]);
  expect(ends?.[1]?.[0]).toBeCloseTo(12, 9);
  expect(ends?.[1]?.[1]).toBeCloseTo(14.5, 9);
});

test("NIST's certified line through the Norris readings, written as a trial", () => {
  const rows = NORRIS.map(({ knob, response }) => `  ${knob} m ${response} kg`).join('\n');
  const book = `session 2026-05-03\ntrial offset -> reading\n${rows}\n  want 0 m\n`;
  const [figure] = figuresIn(book).filter((each) => each.name.startsWith('reading at'));
  expect(figure?.value?.low).toBeLessThan(-0.262323073774029);
  expect(figure?.value?.high).toBeGreaterThan(-0.262323073774029);
  expect(figure?.formula).toBe('offset x 1.002 - 0.2623 kg');
});
