import { describe } from 'vitest';
import { testFigures } from '../harness/figures.ts';
import { dedent } from '../harness/fixture.ts';

const engine = (facts: string, session = ''): string =>
  `engine\n${dedent(facts)}\nsession 2026-05-02\n${dedent(session)}`;

describe('engine airflow', () => {
  testFigures([
    {
      say: '250 cu in at 6000 is 434 cfm (public handbook)',
      book: engine('  displacement 250 cu in\n  red line 6000'),
      figure: 'engine airflow',
      text: ['434 cfm at 6000 rpm at 100 % volumetric efficiency, 347 cfm at 80 %'],
      working: '250 cu in x 6000 rpm x 1 / 3456 = 434 cfm',
    },
    {
      say: '440 cu in at 6000 and 90 % is 687.5 cfm (public handbook)',
      book: engine('  displacement 440 cu in\n  red line 6000'),
      figure: 'engine airflow',
      rows: ['6000 rpm | 611 cfm | 688 cfm | 764 cfm'],
    },
    {
      say: 'a two-barrel of 500 cfm at 3 inHg is 353.6 at 1.5 (over the root of two)',
      book: engine('  cylinders 8', '  carb rating 500 cfm @ 3 inHg'),
      figure: 'carburettor rating at 1.5 inHg',
      text: ['354 cfm at 1.5 inHg, 500 cfm at 3 inHg'],
      value: { low: 353.5534, high: 353.5534, off: 0.001 },
    },
    {
      say: 'a rating without its depression cannot be compared',
      book: engine('  cylinders 8', '  carb rating 500 cfm'),
      figure: 'carburettor rating at 1.5 inHg',
      text: [],
    },
  ]);
});

const JETS = engine(
  '  cylinders 4',
  `
  main jet 120
session 2026-05-09
  idle 800 rpm
session 2026-05-10
  main jet 126
session 2026-05-11
  idle 800 rpm`,
);

describe('jets', () => {
  testFigures([
    {
      say: 'area goes with the square: 5 % of bore is 10.25 % of area',
      book: JETS,
      figure: 'main jet area',
      text: ['+10.3 % from 120 to 126'],
      value: { low: 10.25, high: 10.25, off: 1e-9 },
      rows: ['2026-05-02 | 120 | ', '2026-05-10 | 126 | +10.3 %'],
    },
    {
      say: 'however many lines stand between',
      book: `${JETS}${'\n  note nothing done'.repeat(40)}\n  main jet 130`,
      figure: 'main jet area',
      rows: ['2026-05-02 | 120 | ', '2026-05-10 | 126 | +10.3 %', '2026-05-11 | 130 | +6.4 %'],
    },
    {
      say: 'in another unit of length',
      book: engine('  cylinders 4', '  main jet 1.27 mm\n  main jet 0.0525 in'),
      figure: 'main jet area',
      value: { low: 10.25, high: 10.25, off: 1e-9 },
    },
    {
      say: 'one known by flow',
      book: engine('  cylinders 4', '  main jet 200 cc/min\n  main jet 210 cc/min'),
      figure: 'main jet flow',
      text: ['+5 % from 200 cc/min to 210 cc/min'],
    },
    {
      say: 'a number and a bore do not compare',
      book: engine('  cylinders 4', '  main jet 120\n  main jet 1.25 mm'),
      figure: 'main jet area',
      text: [],
    },
    {
      say: 'each place by itself',
      book: engine('  cylinders 4', '  main jet left 100\n  main jet right 120\n  main jet left 110'),
      figure: 'main jet left area',
      text: ['+21 % from 100 to 110'],
    },
  ]);
});

describe('fuel on its way', () => {
  testFigures([
    {
      say: 'the smallest passage meters',
      book: engine('  cylinders 4', '  fuel line 3/8 in\n  needle seat 0.125 in'),
      figure: 'smallest passage',
      text: ['needle seat, 1/8 in; fuel line 9 times its area'],
    },
    {
      say: 'a column of 27.6807 in of water is 1 psi (NIST SP 811), of fuel 0.74 of that',
      book: engine('  cylinders 4', '  fuel regulator 5 psi\n  needle height 27.6807 in'),
      figure: 'pressure at the needle',
      value: { low: 4.26, high: 4.26, off: 0.0005 },
      text: ['4.3 psi, within the 4..7 psi for a needle and seat carburettor'],
      caution: 'no flame or spark',
    },
    {
      say: 'side-draughts ask for less',
      book: `parts\n  carb twin "pair of side-draughts"\n${engine('  cylinders 4', '  fit carb twin\n  fuel pressure 5 psi')}`,
      figure: 'pressure at the needle',
      text: ['5 psi, above the 1.5..4 psi for a side-draught carburettor'],
    },
  ]);
});

describe('mixture by fuel', () => {
  testFigures([
    {
      say: 'gasoline where nothing is written',
      book: engine('  cylinders 4', '  air fuel ratio 14.7 @ 2500 rpm'),
      figure: 'lambda',
      text: ['1, stoichiometric on gasoline'],
    },
    {
      say: 'E85: 9.8 (by mass, from the Department of Energy’s properties)',
      book: engine('  fuel e85', '  air fuel ratio 9.8 @ 2500 rpm'),
      figure: 'lambda',
      text: ['1, stoichiometric on e85'],
    },
    {
      say: 'and back',
      book: engine('  fuel methanol', '  lambda 0.8 @ 2500 rpm'),
      figure: 'air fuel ratio',
      text: ['5.2:1, rich of stoichiometric on methanol'],
      value: { low: 5.16, high: 5.16, off: 1e-9 },
    },
    {
      say: 'a list for each cylinder from its least to its most',
      book: engine('  cylinders 4', '  air fuel ratio 12.4 13.1 12.9 14.8'),
      figure: 'lambda',
      text: ['0.844..1.007, either side of stoichiometric on gasoline'],
    },
    {
      say: 'petrol is gasoline',
      book: engine('  fuel petrol', '  lambda 1.1'),
      figure: 'air fuel ratio',
      text: ['16.2:1, lean of stoichiometric on gasoline'],
    },
    {
      say: 'a fuel that is not known says nothing',
      book: engine('  fuel "home brew"', '  lambda 1.1'),
      figure: 'air fuel ratio',
      text: [],
    },
  ]);
});
