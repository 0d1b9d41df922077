import { describe } from 'vitest';
import { testFigures } from '../harness/figures.ts';
import { dedent } from '../harness/fixture.ts';

const engine = (cylinders: number, lines: string): string =>
  `engine\n  cylinders ${cylinders}\nsession 2026-05-02\n${dedent(lines)}`;

describe('dwell', () => {
  testFigures([
    {
      say: '45 degrees on a four is half (standard textbook relation)',
      book: engine(4, '  dwell 45 deg'),
      figure: 'dwell in per cent',
      text: ['50 %: closed for 45 deg of the 90 deg between sparks'],
      working: '45 deg / (360 / 4) = 50 %',
    },
    {
      say: 'a meter that reads per cent',
      book: engine(8, '  dwell 66.667 %'),
      figure: 'dwell in per cent',
      text: ['66.7 %: closed for 30 deg of the 45 deg between sparks'],
    },
    {
      say: 'two thirds on a four at 5000: 6 ms between sparks, 4 shut (public ignition-physics page)',
      book: engine(4, '  dwell 60 deg'),
      figure: 'coil on-time',
      text: ['4 ms at 5000 rpm'],
      working: '60 deg / (3 x 5000 rpm) = 4 ms',
      rows: ['5000 rpm | 4 ms | 6 ms'],
    },
    {
      say: 'degrees said to be the distributor’s are the same degrees',
      book: engine(4, '  dwell 45 dist deg'),
      figure: 'dwell in per cent',
      value: { low: 50, high: 50, off: 1e-9 },
    },
    {
      say: 'a range is carried',
      book: engine(4, '  dwell 45..54 deg'),
      figure: 'dwell in per cent',
      text: ['50..60 %: closed for 45..54 deg of the 90 deg between sparks'],
    },
    {
      say: 'nothing where the cylinders are not known',
      book: 'session 2026-05-02\n  dwell 45 deg',
      figure: 'dwell in per cent',
      text: [],
    },
  ]);
});

const CHANGED = engine(
  4,
  `
  dwell 50 deg
  timing 9 deg at idle
session 2026-05-09
  dwell 54 deg`,
);

describe('timing after the points', () => {
  testFigures([
    {
      say: 'due after dwell was set on a later day',
      book: CHANGED,
      figure: 'timing check due',
      text: ['dwell set on 2026-05-09; timing last read on 2026-05-02, before that'],
    },
    {
      say: 'done once it is read',
      book: `${CHANGED}\n  timing 8 deg at idle`,
      figure: 'timing check due',
      text: [],
    },
    {
      say: 'still due sessions later',
      book: `${CHANGED}\nsession 2026-05-10\n  idle 800 rpm\nsession 2026-05-11\n  points gap 0.016 in`,
      figure: 'timing check due',
      text: ['dwell and points gap set on 2026-05-09; timing last read on 2026-05-02, before that'],
    },
    {
      say: 'never read at all',
      book: engine(4, '  points gap 0.016 in'),
      figure: 'timing check due',
      text: ['points gap set on 2026-05-02; timing not read since'],
    },
  ]);
});
