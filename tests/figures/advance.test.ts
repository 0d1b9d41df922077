import { describe, expect, test } from 'vitest';
import { figureIn, figuresIn, testFigures } from '../harness/figures.ts';
import { dedent } from '../harness/fixture.ts';

const ENGINE = `
  engine
    damper 152 mm
    stop radius 12 mm
  session 2026-05-02
    initial 9 deg
    mechanical 0 deg @ 900 rpm, 8 deg @ 1500 rpm, 22 deg @ 3200 rpm`;

/** A factory distributor table in crank terms, initial 6, as relayed in a public forum (common practice). */
const FACTORY = `
  session 2026-05-02
    initial 6 deg
    mechanical 0 deg @ 500 rpm, 2 deg @ 1000 rpm, 9 deg @ 1600 rpm, 14 deg @ 2000 rpm, 21 deg @ 3000 rpm, 28 deg @ 4000 rpm, 32 deg @ 4600 rpm`;

describe('advance by speed', () => {
  testFigures([
    {
      say: 'the factory table',
      book: FACTORY,
      figure: 'total by speed',
      text: ['38 deg from 4600 rpm'],
      rows: ['500 rpm | 0 deg | 6 deg', '1000 rpm | 2 deg | 8 deg', '2000 rpm | 14 deg | 20 deg'],
    },
    {
      say: 'its upper end',
      book: FACTORY,
      figure: 'total by speed',
      rows: ['3000 rpm | 21 deg | 27 deg', '4000 rpm | 28 deg | 34 deg', '4750 rpm | 32 deg | 38 deg'],
    },
    {
      say: 'straight between two points',
      book: ENGINE,
      figure: 'total by speed',
      rows: ['750 rpm | 0 deg | 9 deg', '1250 rpm | 4.7 deg | 13.7 deg', '3250 rpm | 22 deg | 31 deg'],
    },
    {
      say: 'in terms of the distributor',
      book: `
        session 2026-05-02
          initial 9 deg
          mechanical 0 deg @ 450 rpm, 11 deg @ 1600 rpm distributor`,
      figure: 'total by speed',
      text: ['31 deg from 3200 rpm'],
    },
    {
      say: 'a stop cuts it short',
      book: `${ENGINE}\n    mechanical limit 14 deg`,
      figure: 'total by speed',
      text: ['23 deg from 2229 rpm'],
      rows: ['2000 rpm | 12.1 deg | 21.1 deg', '2250 rpm | 14 deg | 23 deg'],
    },
    {
      say: 'roughness is carried',
      book: ENGINE.replace('9 deg', '~9 deg'),
      figure: 'total by speed',
      text: ['~31 deg from 3200 rpm'],
    },
    {
      say: 'none where only the most is known',
      book: `
        session 2026-05-02
          initial 9 deg
          mechanical 22 deg`,
      figure: 'total by speed',
      text: [],
    },
  ]);

  test('the table is every 250 rpm and has its columns named', () => {
    const [head, ...rows] = figureIn(dedent(ENGINE), 'total by speed').rows;
    expect(head).toEqual(['at', 'mechanical', 'total']);
    expect(rows.map(([at]) => Number.parseInt(at ?? '', 10))).toEqual(
      Array.from({ length: 11 }, (_, i) => 750 + 250 * i),
    );
  });
});

test('the totals are drawn from numbers', () => {
  const { plot } = figureIn(dedent(FACTORY), 'total by speed');
  const total = plot?.series.find((each) => each.name === 'total');
  const at = (rpm: number) => total?.points.find((point) => point.at === rpm)?.value.low;
  expect([500, 1000, 2000, 3000, 4000, 4750].map(at)).toEqual([6, 8, 20, 27, 34, 38]);
  expect([plot?.across.unit.id, plot?.up.unit.id]).toEqual(['rpm', 'deg']);
});

describe('another stop', () => {
  testFigures([
    {
      say: 'limit mechanical to 14: 18 initial keeps 32',
      book: `targets\n  total 32 deg\n${dedent(ENGINE)}`,
      figure: 'initial for another stop',
      text: ['10 deg with the stop at 22 deg gives a total of 32 deg (target total)'],
      rows: ['14 deg | 18 deg', '22 deg | 10 deg'],
      working: '32 deg - 22 deg = 10 deg',
      caution: 'Stop at any knock',
    },
    {
      say: 'or the stop that goes with this initial',
      book: `targets\n  total 32 deg\n${dedent(ENGINE)}`,
      figure: 'stop for this initial',
      text: ['23 deg mechanical with 9 deg initial gives a total of 32 deg (target total)'],
    },
    {
      say: 'without a target the total stays what it is',
      book: ENGINE,
      figure: 'initial for another stop',
      text: ['9 deg with the stop at 22 deg gives a total of 31 deg, as it is now'],
      rows: ['14 deg | 17 deg'],
    },
    {
      say: 'a limit counts where the total stands over it',
      book: `limits\n  total <= 30 deg\n${dedent(ENGINE)}`,
      figure: 'initial for another stop',
      text: ['8 deg with the stop at 22 deg gives a total of 30 deg (total limit)'],
    },
    {
      say: 'and not where it is kept',
      book: `limits\n  total <= 34 deg\n${dedent(ENGINE)}`,
      figure: 'initial for another stop',
      text: ['9 deg with the stop at 22 deg gives a total of 31 deg, as it is now'],
    },
    {
      say: 'a rough initial stays as it was written',
      book: ENGINE.replace('9 deg', '8..10 deg'),
      figure: 'initial for another stop',
      text: ['8..10 deg with the stop at 22 deg gives a total of 30..32 deg, as it is now'],
    },
  ]);
});

describe('boost takes timing out', () => {
  testFigures([
    {
      say: 'about one degree a psi',
      book: `${ENGINE}\n    boost 6 psi`,
      figure: 'total under boost',
      text: ['25 deg at 6 psi'],
      working: '31 deg - 6 psi x 1 deg/psi = 25 deg',
      caution: 'Knock under boost breaks pistons',
      rows: ['2 psi | 29 deg', '6 psi | 25 deg'],
    },
    {
      say: 'by the retard of the notebook, in other units',
      book: `${ENGINE}\n    boost retard 1.5 deg/psi\n    boost 0.4137 bar`,
      figure: 'total under boost',
      value: { low: 22, high: 22, off: 0.01 },
    },
    {
      say: 'at what the wastegate opens',
      book: `${ENGINE}\n    wastegate 8..10 psi`,
      figure: 'total under boost',
      text: ['21..23 deg at 8..10 psi'],
    },
    { say: 'nothing on an engine that is not blown', book: ENGINE, figure: 'total under boost', text: [] },
  ]);
});

describe('degrees on the damper and at the stop', () => {
  testFigures([
    {
      say: 'ten per cent of the way round is 36 degrees',
      book: `
        engine
          damper 100 mm
        session 2026-05-02
          initial 36 deg`,
      figure: 'tape on the damper',
      rows: ['initial, 36 deg | 31.4 mm | 1.24 in'],
    },
    {
      say: 'in inches too: pi x 6.75 x 34 / 360 is 2.003',
      book: `
        engine
          damper 6.75 in
        targets
          total 34 deg
        session 2026-05-02
          initial 9 deg`,
      figure: 'tape on the damper',
      rows: ['target total, 34 deg | 50.9 mm | 2 in'],
      caution: 'engine stopped',
    },
    {
      say: 'a rough damper gives a rough tape',
      book: `
        engine
          damper 150..154 mm
        session 2026-05-02`,
      figure: 'tape on the damper',
      text: ['1.31..1.34 mm (0.052..0.053 in) per degree'],
    },
    {
      say: 'a travel as long as its radius is one radian of cam, two of crank: 114.6 degrees',
      book: ENGINE,
      figure: 'angle for a stop travel',
      text: ['9.5 deg at the crank per mm'],
      value: { low: 114.591559 / 12, high: 114.591559 / 12, off: 1e-6 },
    },
    {
      say: 'and back',
      book: ENGINE,
      figure: 'stop travel for an angle',
      rows: ['10 deg | 1.05 mm | 0.041 in', 'now, 22 deg | 2.3 mm | 0.091 in'],
    },
    {
      say: 'nothing without a damper',
      book: 'session 2026-05-02\n  initial 9 deg',
      figure: 'tape on the damper',
      text: [],
    },
  ]);

  test('each is shown where a person would look', () => {
    const names = (word: string) => figuresIn(dedent(ENGINE), word).map((figure) => figure.name);
    expect(names('damper')).toContain('tape on the damper');
    expect(names('stop radius')).toContain('stop travel for an angle');
    expect(names('mechanical')).toContain('total by speed');
    expect(names('mechanical limit')).toContain('initial for another stop');
    expect(names('idle')).not.toContain('total by speed');
  });
});
