import { propellerSpeed, slip } from '../../../server/trade/sums/road.ts';
import { type Check, check } from './check.ts';

const INCH = 0.0254;
const MILE_AN_HOUR = 0.44704;
const KNOT = 1852 / 3600;

/** 87 rev/min of a pitch of 3.8 m, direct; the ship makes 10 knots. */
const SHIP = propellerSpeed(87, 1, 3.8);
/** 6000 rev/min, 25 in of pitch, 1.86:1; the boat makes 68 mph. The chart rounds its constant before it divides. */
const BOAT = propellerSpeed(6000, 1.86, 25 * INCH) / MILE_AN_HOUR;

/** Propellers. */
export const AFLOAT_CHECKS: readonly Check[] = [
  check(
    'propeller-slip',
    'way of a 3.8 m pitch at 87 rpm in 24 hours, nmi',
    257.054,
    0.001,
    () => (SHIP / KNOT) * 24,
  ),
  check(
    'propeller-slip',
    'slip of that ship at 10 knots, per cent',
    6.6,
    0.05,
    () => 100 * slip(SHIP, 10 * KNOT),
  ),
  check('propeller-chart', 'speed of a 25 in pitch at 6000 rpm through 1.86:1, mph', 76.3, 0.1, () => BOAT),
  check('propeller-chart', 'slip of that boat at 68 mph, per cent', 10.9, 0.1, () => 100 * slip(BOAT, 68)),
  check(
    'propeller-chart',
    'turns a mile of a 17 in pitch',
    3727,
    0.5,
    () => (60 * MILE_AN_HOUR) / propellerSpeed(1, 1, 17 * INCH),
  ),
  check(
    'propeller-chart',
    'rpm for each mph of a 17 in pitch through 2.30:1',
    142.9,
    0.05,
    () => MILE_AN_HOUR / propellerSpeed(1, 2.3, 17 * INCH),
  ),
];
