import ucum from '@lhncbc/ucum-lhc';
import { unit } from 'mathjs';
import { convert, unitById } from '../../../server/trade/measure/units.ts';
import { drillNamed, nearestDrill } from '../../../server/trade/sums/drills.ts';
import {
  CLAMP_SHARE,
  estimateTorqueInch,
  estimateTorqueMetric,
  stressAreaInch,
  stressAreaMetric,
} from '../../../server/trade/sums/fasteners.ts';
import { engineSpeed, parseTyreSize, roadSpeed, tyreDiameter } from '../../../server/trade/sums/road.ts';
import { type Check, check, given } from './check.ts';

const MILE_AN_HOUR = 0.44704;

const DRILL_INCHES: readonly (readonly [string, number])[] = [
  ['#80', 0.0135],
  ['#69', 0.0292],
  ['#30', 0.1285],
  ['#21', 0.159],
  ['#10', 0.1935],
  ['#7', 0.201],
  ['#1', 0.228],
  ['A', 0.234],
  ['F', 0.257],
  ['Q', 0.332],
  ['Z', 0.413],
];

/** Diameter, threads an inch, stress area in square inches, as printed. */
const INCH_AREAS: readonly (readonly [number, number, number])[] = [
  [0.25, 20, 0.0318],
  [0.3125, 18, 0.0524],
  [0.375, 16, 0.0775],
  [0.375, 24, 0.0878],
  [0.4375, 14, 0.1063],
  [0.5, 13, 0.1419],
  [0.5, 20, 0.1599],
];

/** Diameter, threads an inch, grade, clamp load in lbf, torque at K 0.20 and at K 0.15 in lbf.ft, as printed. */
const INCH_TORQUES: readonly (readonly [number, number, string, number, number, number])[] = [
  [0.375, 16, '2', 3196, 20, 15],
  [0.375, 16, '5', 4940, 31, 23],
  [0.5, 13, '5', 9046, 75, 57],
  [0.4375, 14, '8', 9568, 70, 52],
  [0.5, 13, '8', 12771, 106, 80],
  [1, 8, '5', 38616, 644, 483],
];

/** Diameter, pitch, stress area in mm2, class, proof load in N, as printed. */
const METRIC_BOLTS: readonly (readonly [number, number, number, string, number])[] = [
  [6, 1, 20.1, '4.8', 6230],
  [8, 1.25, 36.6, '8.8', 21200],
  [10, 1.5, 58, '10.9', 48100],
  [12, 1.75, 84.3, '4.8', 26100],
];

const TYRES: readonly (readonly [string, number, number])[] = [
  ['195/65R15', 634.5, 0.05],
  ['205/55R16', 631.9, 0.05],
  ['225/55R16', 653.9, 0.05],
  ['205/65R15', 647, 0.5],
  ['245/70R16', 749, 0.5],
];

function tyre(size: string): number {
  const parsed = parseTyreSize(size);
  return parsed === undefined ? Number.NaN : tyreDiameter(parsed);
}

function inUcum(from: string, value: number, to: string): number {
  return ucum.UcumLhcUtils.getInstance().convertUnitTo(from, value, to).toVal ?? Number.NaN;
}

export const WORKSHOP_CHECKS: readonly Check[] = [
  ...DRILL_INCHES.map(([name, inches]) =>
    check('asme-b94-11m', `drill ${name}, in`, inches, 0.00001, () => given(drillNamed(name)?.inches)),
  ),
  check('asme-b94-11m', 'drill #41, mm', 2.438, 0.0005, () => given(drillNamed('#41')?.inches) * 25.4),
  check(
    'asme-b94-11m',
    'metric drill nearest 3/8 in, mm',
    9.5,
    1e-6,
    () => given(nearestDrill(0.375, ['metric'])?.drill.inches) * 25.4,
  ),
  check('asme-b94-11m', 'number drill nearest 13/64 in, in', 0.204, 1e-6, () =>
    given(nearestDrill(13 / 64, ['number'])?.drill.inches),
  ),
  ...INCH_AREAS.map(([diameter, threads, area]) =>
    check('asme-b1-1', `stress area of ${diameter} in, ${threads} threads, sq in`, area, 0.0001, () =>
      stressAreaInch(diameter, threads),
    ),
  ),
  ...INCH_TORQUES.flatMap(([diameter, threads, grade, clamp, dry, oiled]) => {
    const bolt = `${diameter}-${threads} grade ${grade}`;
    return [
      check('sae-j429', `clamp load of ${bolt}, lbf`, clamp, clamp * 0.001, () =>
        given(estimateTorqueInch(diameter, threads, grade)?.clamp),
      ),
      check('sae-j429', `torque of ${bolt} at K 0.20, lbf.ft`, dry, Math.min(0.51, dry * 0.02), () =>
        given(estimateTorqueInch(diameter, threads, grade, 0.2)?.torque),
      ),
      check('sae-j429', `torque of ${bolt} at K 0.15, lbf.ft`, oiled, Math.min(0.51, oiled * 0.02), () =>
        given(estimateTorqueInch(diameter, threads, grade, 0.15)?.torque),
      ),
    ];
  }),
  ...METRIC_BOLTS.flatMap(([diameter, pitch, area, grade, proofLoad]) => [
    check('iso-898-1', `stress area of M${diameter}x${pitch}, mm2`, area, area * 0.002, () =>
      stressAreaMetric(diameter, pitch),
    ),
    check(
      'iso-898-1',
      `proof load of M${diameter} class ${grade}, N`,
      proofLoad,
      proofLoad * 0.003,
      () => given(estimateTorqueMetric(diameter, pitch, grade)?.clamp) / CLAMP_SHARE,
    ),
  ]),
  ...TYRES.map(([size, mm, rounding]) =>
    check('ece-r30', `diameter of ${size}, mm`, mm, rounding, () => tyre(size)),
  ),
  check('handbooks', 'turns a mile of 205/55R16', 811, 0.5, () =>
    engineSpeed(60 * MILE_AN_HOUR, 1, tyre('205/55R16') / 1000),
  ),
  check(
    'handbooks',
    'speed at 3000 rpm, 3.73 overall, 30 in tyre, mph',
    71.8,
    0.15,
    () => roadSpeed(3000, 3.73, 30 * 0.0254) / MILE_AN_HOUR,
  ),
  // The constant is printed short of its next digit: 63360 / (60 pi) is 336.1352.
  check(
    'handbooks',
    'speed at 3000 rpm, 3.00 overall, 26 in tyre, mph',
    (3000 * 26) / (3 * 336.13),
    0.002,
    () => roadSpeed(3000, 3, 26 * 0.0254) / MILE_AN_HOUR,
  ),
  check(
    'mathjs',
    'speed of one turn a second of a 1 ft wheel, km/h',
    Math.PI * unit(1, 'ft/s').toNumber('km/hour'),
    1e-6,
    () => roadSpeed(60, 1, 0.3048) * 3.6,
  ),
  check('mathjs', 'km a litre of 1 mile a US gallon', unit(1, 'mile/gal').toNumber('km/L'), 1e-7, () =>
    convert(1, unitById('mpg'), unitById('km/L')),
  ),
  check(
    'ucum-lhc',
    'km a litre of 25 miles a US gallon',
    inUcum('[mi_i]', 25, 'km') / inUcum('[gal_us]', 1, 'L'),
    1e-5,
    () => convert(25, unitById('mpg'), unitById('km/L')),
  ),
  check(
    'ucum-lhc',
    'km a litre of 30 miles an imperial gallon',
    inUcum('[mi_i]', 30, 'km') / inUcum('[gal_br]', 1, 'L'),
    1e-5,
    () => convert(30, unitById('imp-mpg'), unitById('km/L')),
  ),
];
