import { describe } from 'vitest';
import { testFigures } from '../harness/figures.ts';
import { dedent } from '../harness/fixture.ts';

const engine = (facts: string, session = '  idle 800 rpm'): string =>
  `engine\n${dedent(facts)}\nsession 2026-05-02\n${session}`;

/** A worked example of a public handbook: 4.25 by 4 in comes to about 10.6:1. */
const VOLUMES = `
  cylinders 8
  bore 4.25 in
  stroke 4 in
  chamber volume 3.9 cu in
  gasket thickness 0.051 in
  deck clearance 0.005 in
  piston volume 1.22 cu in`;

describe('compression ratio', () => {
  testFigures([
    {
      say: 'eight cylinders of 3 1/2 by 4 in: 307.44 cu in (NAVEDTRA 14264, with pi cut short)',
      book: engine('  cylinders 8\n  bore 3.5 in\n  stroke 4 in'),
      figure: 'displacement',
      text: ['5045 cc, 307.9 cu in'],
      value: { low: 307.44 * 16.387064, high: 307.44 * 16.387064, off: 0.44 * 16.387064 },
    },
    {
      say: 'four cylinders of 10 by 5 cm: 1570 cc (public handbook)',
      book: engine('  cylinders 4\n  bore 10 cm\n  stroke 5 cm'),
      figure: 'displacement',
      text: ['1571 cc, 95.86 cu in'],
      working: '392.7 cc per cylinder x 4 = 1571 cc',
    },
    {
      say: 'a range of bore gives a range',
      book: engine('  cylinders 4\n  bore 86..87 mm\n  stroke 94 mm'),
      figure: 'displacement',
      value: { low: Math.PI * 4.3 ** 2 * 9.4 * 4, high: Math.PI * 4.35 ** 2 * 9.4 * 4, off: 1e-6 },
    },
    {
      say: 'the ratio from its volumes',
      book: engine(VOLUMES),
      figure: 'static ratio',
      value: { low: 10.6, high: 10.6, off: 0.03 },
    },
    {
      say: 'not with a volume missing',
      book: engine(VOLUMES.replace(/ {2}piston.*/, '')),
      figure: 'static ratio',
      text: [],
    },
    {
      say: 'a dome as large as all else leaves nothing to divide by: anything',
      book: engine(VOLUMES.replace('1.22 cu in', '-200 cc')),
      figure: 'static ratio',
      text: ['any:1'],
    },
  ]);
});

describe('under boost', () => {
  testFigures([
    {
      say: '8:1 with 6 psi is 11.3 (public blower chart)',
      book: engine('  compression 8:1', '  boost 6 psi'),
      figure: 'effective ratio',
      text: ['11.3:1 at 6 psi boost'],
      working: '8:1 x (6 psi / 14.7 psi + 1) = 11.3:1',
      rows: ['8 psi | 12.4:1'],
      caution: "The maker's figure overrules",
      source: 'published: public blower charts',
    },
    {
      say: '9:1 with 10 psi is 15.1 (public blower chart)',
      book: engine('  compression 9:1', '  boost 10 psi'),
      figure: 'effective ratio',
      value: { low: 15.1, high: 15.1, off: 0.05 },
    },
    {
      say: 'by the sea-level chart wherever it is read: thinner air squeezes less, not more',
      book: engine('  compression 8:1', '  barometer 12 psi\n  boost 6 psi'),
      figure: 'effective ratio',
      text: ['11.3:1 at 6 psi boost'],
    },
    {
      say: 'not on an engine that is not blown',
      book: engine('  compression 8:1'),
      figure: 'effective ratio',
      text: [],
    },
  ]);
});

describe('piston speed', () => {
  testFigures([
    {
      say: '90 mm at 3000 is 9 m/s (public handbook)',
      book: engine('  stroke 90 mm\n  red line 3000'),
      figure: 'mean piston speed',
      text: ['9 m/s (1770 ft/min) at 3000 rpm'],
      rows: ['1000 rpm | 3 m/s (590 ft/min)'],
    },
    {
      say: '4 in at 6500 is 4333 ft/min (public handbook)',
      book: engine('  stroke 4 in\n  red line 6500'),
      figure: 'mean piston speed',
      text: ['22 m/s (4330 ft/min) at 6500 rpm'],
    },
  ]);
});
