import {
  airflowDemand,
  fuelNamed,
  pressureAtNeedle,
  ratingAt,
} from '../../../server/trade/sums/carburation.ts';
import {
  compressionRatio,
  displacement,
  effectiveRatio,
  judgeCompression,
  meanPistonSpeed,
  staticRatio,
  sweptVolume,
} from '../../../server/trade/sums/compression.ts';
import { type Check, check, given } from './check.ts';

const INCH = 0.0254;
const FEET_A_MINUTE = 0.3048 / 60;
const CM3_PER_CUBIC_INCH = 16.387064;

/** Atoms of carbon, hydrogen, nitrogen and oxygen in a molecule. */
type Composition = readonly [number, number, number, number];

const WEIGHTS: Composition = [12.011, 1.008, 14.007, 15.999];

/** Air a fuel needs by mass, from its atoms: two of oxygen for each carbon, half for each hydrogen, less its own. */
function airFor(atoms: Composition): number {
  const [carbon, hydrogen, , oxygen] = atoms;
  const weight = atoms.reduce((sum, count, index) => sum + count * (WEIGHTS[index] ?? Number.NaN), 0);
  return ((2 * carbon + hydrogen / 2 - oxygen) * WEIGHTS[3]) / 0.232 / weight;
}

const COMPOSITIONS: readonly (readonly [string, Composition, number])[] = [
  ['methanol', [1, 4, 0, 1], 0.05],
  ['ethanol', [2, 6, 0, 1], 0.05],
  ['propane', [3, 8, 0, 0], 0.1],
  ['natural gas', [1, 4, 0, 0], 0.1],
  ['nitromethane', [1, 3, 1, 2], 0.02],
];

/** Air a blend needs, from the printed specific gravities and ratios of gasoline and ethanol and the ethanol's share by volume. */
function airForBlend(ethanolByVolume: number): number {
  const ethanol = ethanolByVolume * 0.794;
  const gasoline = (1 - ethanolByVolume) * 0.75;
  return (ethanol * 9 + gasoline * 14.7) / (ethanol + gasoline);
}

function stoichiometric(name: string): number {
  return given(fuelNamed(name)?.stoichiometric);
}

/** Static ratio, boost in psi, effective ratio, as printed. */
const BLOWN: readonly (readonly [number, number, number])[] = [
  [7, 2, 8],
  [8, 6, 11.3],
  [8.5, 8, 13.1],
  [9, 10, 15.1],
  [9.5, 12, 17.3],
];

export const ENGINE_CHECKS: readonly Check[] = [
  check('handbooks', 'airflow of 440 cu in at 6000 rpm and 0.90, cfm', 687.5, 0.05, () =>
    airflowDemand(440, 6000, 0.9),
  ),
  check('handbooks', 'airflow of 250 cu in at 6000 rpm and 1.0, cfm', 434, 0.5, () =>
    airflowDemand(250, 6000),
  ),
  check(
    'handbooks',
    'a two-barrel rated 500 cfm at 3.0 inHg, at 1.5 inHg (over root two), cfm',
    353.6,
    0.1,
    () => ratingAt(500, 3, 1.5),
  ),
  check(
    'army-tm-9-8000',
    'cubic inches that a cylinder of 100 cu in draws each time at an efficiency of 80 per cent',
    80,
    1e-6,
    () => (airflowDemand(100, 2000, 0.8) * 1728) / 1000,
  ),
  check('nist-sp-811', 'pressure left of 5 psi under 27.6807 in of water, psi', 4, 0.0001, () =>
    pressureAtNeedle(5, 27.6807, 1),
  ),
  check('doe-afdc', 'air-fuel ratio of gasoline', 14.7, 0.05, () => stoichiometric('gasoline')),
  check('doe-afdc', 'air-fuel ratio of ethanol', 9, 0.05, () => stoichiometric('ethanol')),
  check(
    'doe-afdc',
    'air-fuel ratio of 10 per cent ethanol, from the printed gravities',
    airForBlend(0.1),
    0.05,
    () => stoichiometric('e10'),
  ),
  check(
    'doe-afdc',
    'air-fuel ratio of 85 per cent ethanol, from the printed gravities',
    airForBlend(0.85),
    0.05,
    () => stoichiometric('e85'),
  ),
  ...COMPOSITIONS.map(([name, atoms, agreement]) =>
    check('iupac-weights', `air-fuel ratio of ${name} from its atoms`, airFor(atoms), agreement, () =>
      stoichiometric(name),
    ),
  ),
  // The course works with pi as 3.14 and a radius squared of 3.06.
  check('navedtra-14264', 'one cylinder of 3 1/2 by 4 in, cu in', 38.43, 0.06, () => sweptVolume(3.5, 4)),
  check('navedtra-14264', 'eight cylinders of 3 1/2 by 4 in, cu in', 307.44, 0.5, () =>
    displacement(3.5, 4, 8),
  ),
  check('handbooks', 'eight cylinders of 4.312 by 3.65 in, cu in', 426.4, 0.05, () =>
    displacement(4.312, 3.65, 8),
  ),
  check('handbooks', 'six cylinders of 4 by 4 in, cu in', 301.5936, 0.005, () => displacement(4, 4, 6)),
  check('handbooks', 'four cylinders of 10 by 5 cm, cm3', 1570, 1, () => displacement(10, 5, 4)),
  check('handbooks', 'ratio of 823.70 swept over 100.00 left', 9.237, 0.0005, () =>
    given(compressionRatio(823.7, 100)),
  ),
  check('handbooks', 'ratio of 4.25 by 4 in with its chamber, gasket, deck and dish', 10.6, 0.03, () =>
    given(
      staticRatio({
        bore: 107.95,
        stroke: 101.6,
        chamber: 3.9 * CM3_PER_CUBIC_INCH,
        gasketThickness: 1.2954,
        deck: 0.127,
        dish: 1.22 * CM3_PER_CUBIC_INCH,
      }),
    ),
  ),
  ...BLOWN.map(([ratio, boost, effective]) =>
    check('blower-charts', `effective ratio of ${ratio}:1 with ${boost} psi`, effective, 0.06, () =>
      effectiveRatio(ratio, boost),
    ),
  ),
  check('service-manuals', 'lowest allowed under a highest of 150 psi at 70 per cent, psi', 105, 0.01, () =>
    given(judgeCompression([150, 120])?.verdicts[1]?.allowed),
  ),
  check(
    'service-manuals',
    'lowest allowed under a highest of 130 psi at 70 per cent, psi (the floor)',
    100,
    0.01,
    () => given(judgeCompression([130, 120])?.verdicts[1]?.allowed),
  ),
  check('handbooks', 'mean piston speed of 90 mm at 3000 rpm, m/s', 9, 0.001, () =>
    meanPistonSpeed(0.09, 3000),
  ),
  check('handbooks', 'mean piston speed of 85 mm at 5500 rpm, m/s', 15.58, 0.005, () =>
    meanPistonSpeed(0.085, 5500),
  ),
  check(
    'handbooks',
    'mean piston speed of 4 in at 6500 rpm, ft/min',
    4333,
    0.5,
    () => meanPistonSpeed(4 * INCH, 6500) / FEET_A_MINUTE,
  ),
  check(
    'handbooks',
    'mean piston speed of 4.5 in at 6500 rpm, ft/min',
    4875,
    0.5,
    () => meanPistonSpeed(4.5 * INCH, 6500) / FEET_A_MINUTE,
  ),
];
