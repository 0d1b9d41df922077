/** The units people write at the bench, with exact factors and every spelling that is read. */

export type Dimension =
  | 'angle'
  | 'angle per pressure'
  | 'angle per rotation'
  | 'rotation'
  | 'pressure'
  | 'temperature'
  | 'length'
  | 'distance'
  | 'area'
  | 'volume'
  | 'mass'
  | 'force'
  | 'spring rate'
  | 'torque'
  | 'power'
  | 'turns'
  | 'steps'
  | 'road speed'
  | 'time'
  | 'air flow'
  | 'fuel flow'
  | 'fuel economy'
  | 'percent'
  | 'humidity'
  | 'concentration'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'capacitance'
  | 'ratio'
  | 'number'
  | 'heat cycles';

/** A value in the base unit of the dimension is (value + offset) x factor. The base unit is the one with factor 1. */
export interface Unit {
  readonly id: string;
  readonly dimension: Dimension;
  /** As it is printed. */
  readonly symbol: string;
  /** As it may be written, lower case, no `.` or `-` inside; those with a space are also read without it. */
  readonly spellings: readonly string[];
  readonly factor: number;
  readonly offset?: number;
  readonly source: string;
}

const NIST = 'NIST SP 811 app. B';
const SI = 'SI (NIST SP 811 ch. 4, 5)';
const GEOMETRY = 'follows from the four-stroke cycle: the distributor turns once in two crank turns';
const COUNT = 'a count';
const SIGNS = /[.·\-'º˚]/;

// Exact by definition in NIST SP 811; the others below are products of these.
const INCH = 25.4; // mm
const FOOT = 12 * INCH;
const MILE = 1.609344; // km
const POUND = 453.59237; // g
const GRAVITY = 9.80665; // m/s2, conventional
const POUND_FORCE = (POUND / 1000) * GRAVITY; // N
const POUND_FOOT = POUND_FORCE * (FOOT / 1000); // N.m
const PSI = POUND_FORCE / (INCH / 1000) ** 2; // Pa
const MM_HG = 13.5951 * GRAVITY; // Pa, conventional mercury
const MM_H2O = GRAVITY; // Pa, conventional water
const CUBIC_INCH = (INCH / 10) ** 3; // cc
const US_GALLON = 231 * CUBIC_INCH;
const IMPERIAL_GALLON = 4546.09; // cc
const CUBIC_FOOT = 1728 * CUBIC_INCH;

export const UNITS: readonly Unit[] = [
  unit('deg', 'angle', 'deg', 1, 'deg crank, crank deg, btdc, deg btdc, deg before', GEOMETRY),
  unit('deg-atdc', 'angle', 'deg ATDC', -1, 'atdc, deg atdc, deg after', GEOMETRY),
  unit('dist-deg', 'angle', 'dist deg', 2, 'dist deg, distributor deg, deg dist, deg distributor', GEOMETRY),
  unit('deg/psi', 'angle per pressure', 'deg/psi', 1, 'deg per psi', NIST),
  unit('deg/bar', 'angle per pressure', 'deg/bar', PSI / 1e5, 'deg per bar', NIST),
  unit('deg/1000rpm', 'angle per rotation', 'deg per 1000 rpm', 1, 'deg/1000 rpm, deg/1000rpm', GEOMETRY),
  unit(
    'rpm',
    'rotation',
    'rpm',
    1,
    'revs, r/min, rev/min, revs/min, engine rpm, crank rpm, u/min, tr/min, 1/min',
    COUNT,
  ),
  unit('dist-rpm', 'rotation', 'dist rpm', 2, 'distributor rpm, rpm dist, rpm distributor', GEOMETRY),

  unit('Pa', 'pressure', 'Pa', 1, 'pascal, pascals', SI),
  unit('hPa', 'pressure', 'hPa', 100, '', SI),
  unit('kPa', 'pressure', 'kPa', 1000, '', SI),
  unit('MPa', 'pressure', 'MPa', 1e6, '', SI),
  unit('mbar', 'pressure', 'mbar', 100, 'mb, millibar, millibars', NIST),
  unit('bar', 'pressure', 'bar', 1e5, 'bars', NIST),
  unit('atm', 'pressure', 'atm', 101325, '', NIST),
  unit('psi', 'pressure', 'psi', PSI, 'psig, lb/in2, lb/in², lbf/in2, lb/sq in', NIST),
  unit('kgf/cm2', 'pressure', 'kgf/cm2', GRAVITY * 1e4, 'kg/cm2, kgf/cm², kg/cm²', NIST),
  unit('inHg', 'pressure', 'inHg', MM_HG * INCH, 'in hg, " hg, inches hg, inches of mercury', NIST),
  unit('mmHg', 'pressure', 'mmHg', MM_HG, 'mm hg, torr', NIST),
  unit('cmHg', 'pressure', 'cmHg', 10 * MM_HG, 'cm hg', NIST),
  unit('inH2O', 'pressure', 'inH2O', MM_H2O * INCH, 'in h2o, " h2o, inwg, in wg, inwc, in wc', NIST),
  unit('mmH2O', 'pressure', 'mmH2O', MM_H2O, 'mm h2o', NIST),

  unit('C', 'temperature', 'C', 1, 'deg c, celsius, deg celsius, centigrade', SI),
  unit('F', 'temperature', 'F', 5 / 9, 'deg f, fahrenheit, deg fahrenheit', NIST, -32),
  unit('K', 'temperature', 'K', 1, 'kelvin', SI, -273.15),

  unit('mm', 'length', 'mm', 1, 'millimetre, millimetres, millimeter, millimeters', SI),
  unit('cm', 'length', 'cm', 10, 'centimetre, centimetres, centimeter, centimeters', SI),
  unit('m', 'length', 'm', 1000, 'metre, metres, meter, meters', SI),
  unit('um', 'length', 'µm', 0.001, 'µm, μm, micron, microns', SI),
  unit('in', 'length', 'in', INCH, '", ″, inch, inches', NIST),
  unit('thou', 'length', 'thou', INCH / 1000, 'thous, mil, mils, thousandths', NIST),
  unit('ft', 'length', 'ft', FOOT, 'foot, feet', NIST),
  unit('km', 'distance', 'km', 1, 'kilometre, kilometres, kilometer, kilometers', SI),
  unit('mi', 'distance', 'mi', MILE, 'mile, miles', NIST),
  unit('nmi', 'distance', 'nmi', 1.852, 'nautical mile, nautical miles', NIST),
  unit('mm2', 'area', 'mm2', 1, 'mm², sq mm', SI),
  unit('cm2', 'area', 'cm2', 100, 'cm², sq cm', SI),
  unit('in2', 'area', 'sq in', INCH ** 2, 'sq in, in², square inch, square inches', NIST),

  unit('cc', 'volume', 'cc', 1, 'cm3, cm³, ccm, ml, cu cm', SI),
  unit('L', 'volume', 'L', 1000, 'lt, ltr, litre, litres, liter, liters', SI),
  unit('cu-in', 'volume', 'cu in', CUBIC_INCH, 'cid, ci, in3, in³, cubic inch, cubic inches', NIST),
  unit('cu-ft', 'volume', 'cu ft', CUBIC_FOOT, 'cu ft, cubic foot, cubic feet, ft3, ft³', NIST),
  unit('gal', 'volume', 'US gal', US_GALLON, 'gal, gals, gallon, gallons, us gallon, us gallons', NIST),
  unit('imp-gal', 'volume', 'imp gal', IMPERIAL_GALLON, 'imperial gallons, imp gallons', NIST),
  unit('qt', 'volume', 'US qt', US_GALLON / 4, 'qts, quart, quarts, us qt', NIST),
  unit('pt', 'volume', 'US pt', US_GALLON / 8, 'pts, pint, pints, us pt', NIST),
  unit('imp-pt', 'volume', 'imp pt', IMPERIAL_GALLON / 8, 'imperial pints, imp pints', NIST),
  unit('fl-oz', 'volume', 'US fl oz', US_GALLON / 128, 'fl oz, us fl oz', NIST),

  unit('g', 'mass', 'g', 1, 'gram, grams, gramme, grammes', SI),
  unit('kg', 'mass', 'kg', 1000, 'kgs, kilo, kilos, kilogram, kilograms', SI),
  unit('tonne', 'mass', 't', 1e6, 'tonnes', SI),
  unit('lb', 'mass', 'lb', POUND, 'lbs, pound, pounds', NIST),
  unit('oz', 'mass', 'oz', POUND / 16, 'ounce, ounces', NIST),
  unit('N', 'force', 'N', 1, 'newton, newtons', SI),
  unit('lbf', 'force', 'lbf', POUND_FORCE, 'lbs force, lb force, pounds force', NIST),
  unit('kgf', 'force', 'kgf', GRAVITY, 'kg force', NIST),
  unit('N/mm', 'spring rate', 'N/mm', 1, '', SI),
  unit('lb/in', 'spring rate', 'lb/in', POUND_FORCE / INCH, 'lbf/in, lbs/in, lb per in, lb per inch', NIST),
  unit('Nm', 'torque', 'N·m', 1, 'n m, newton metres, newton meters', SI),
  unit(
    'lb-ft',
    'torque',
    'lb-ft',
    POUND_FOOT,
    'lb ft, ft lb, lbs ft, ft lbs, lbf ft, foot pounds, pound feet, ft/lb, ft/lbs, lb/ft, foot lbs, ft pounds',
    NIST,
  ),
  unit(
    'lb-in',
    'torque',
    'lb-in',
    POUND_FOOT / 12,
    'lb in, in lb, lbs in, in lbs, lbf in, inch pounds',
    NIST,
  ),
  unit('kgf-m', 'torque', 'kgf·m', GRAVITY, 'kgf m, kg m, m kg', NIST),
  unit('kW', 'power', 'kW', 1, 'kilowatt, kilowatts', SI),
  unit('hp', 'power', 'hp', (POUND_FOOT * 550) / 1000, 'bhp, whp, horsepower', NIST),
  unit('PS', 'power', 'PS', (75 * GRAVITY) / 1000, 'cv, metric hp', NIST),

  unit('turn', 'turns', 'turns', 1, 'turns, rev, full turns', COUNT),
  unit('flat', 'turns', 'flats', 1 / 6, 'flats', 'a hexagon has six flats'),
  unit('step', 'steps', 'steps', 1, 'steps', COUNT),
  unit('notch', 'steps', 'notches', 1, 'notches', COUNT),
  unit('click', 'steps', 'clicks', 1, 'clicks', COUNT),
  unit('hole', 'steps', 'holes', 1, 'holes', COUNT),
  unit('number', 'number', '', 1, '', COUNT),
  unit('heat-cycle', 'heat cycles', 'heat cycles', 1, 'heat cycle, heat cycles', COUNT),

  unit('km/h', 'road speed', 'km/h', 1, 'kph, kmh, kmph', SI),
  unit('mph', 'road speed', 'mph', MILE, 'mi/h', NIST),
  unit('kn', 'road speed', 'kn', 1.852, 'kt, kts, knot, knots', NIST),
  unit('m/s', 'road speed', 'm/s', 3.6, '', SI),
  unit('s', 'time', 's', 1, 'sec, secs, second, seconds', SI),
  unit('ms', 'time', 'ms', 0.001, 'millisecond, milliseconds', SI),
  unit('min', 'time', 'min', 60, 'mins, minute, minutes', NIST),
  unit('h', 'time', 'h', 3600, 'hr, hrs, hour, hours', NIST),
  unit('day', 'time', 'days', 86400, 'days', NIST),
  unit('week', 'time', 'weeks', 604800, 'weeks', NIST),
  unit('L/min', 'air flow', 'L/min', 1, 'lpm', SI),
  unit('cfm', 'air flow', 'cfm', CUBIC_FOOT / 1000, 'cu ft/min, ft3/min, ft³/min', NIST),
  unit('m3/h', 'air flow', 'm3/h', 1000 / 60, 'm³/h', SI),
  unit('cc/min', 'fuel flow', 'cc/min', 1, 'ml/min, cm3/min', SI),
  unit('L/h', 'fuel flow', 'L/h', 1000 / 60, 'lph, l/hr', SI),
  unit('gph', 'fuel flow', 'US gal/h', US_GALLON / 60, 'gal/h, gal/hr', NIST),
  unit('km/L', 'fuel economy', 'km/L', 1, '', SI),
  unit('mpg', 'fuel economy', 'mpg', (MILE * 1000) / US_GALLON, 'us mpg, mi/gal', NIST),
  unit('imp-mpg', 'fuel economy', 'imp mpg', (MILE * 1000) / IMPERIAL_GALLON, 'imp mpg, imperial mpg', NIST),

  unit('%', 'percent', '%', 1, 'percent, per cent, pct', COUNT),
  unit('%RH', 'humidity', '%RH', 1, '% rh, percent rh, rh', COUNT),
  unit('ppm', 'concentration', 'ppm', 1, '', COUNT),
  unit('V', 'voltage', 'V', 1, 'volt, volts', SI),
  unit('mV', 'voltage', 'mV', 0.001, '', SI),
  unit('kV', 'voltage', 'kV', 1000, '', SI),
  unit('A', 'current', 'A', 1, 'amp, amps', SI),
  unit('mA', 'current', 'mA', 0.001, '', SI),
  unit('ohm', 'resistance', 'ohm', 1, 'ohms, ω', SI),
  unit('kohm', 'resistance', 'kohm', 1000, 'kohms, kω, kilohm, kilohms', SI),
  unit('uF', 'capacitance', 'µF', 1, 'µf, μf, mfd, microfarad', SI),
  unit('ratio', 'ratio', ':1', 1, 'afr, to 1, to one', COUNT),
];

/** A word as the spellings are kept: letter case, `.`, `·` and inner hyphens do not count. */
export function normalSpelling(word: string): string {
  const lower = word.toLowerCase();
  if (!SIGNS.test(lower)) return lower;
  return lower.replace(/[.·\-']/g, '').replace(/[º˚]/g, '°'); // many keyboards have two look-alikes of the degree sign
}

/** `spellings` separated by commas; one that begins with `deg` is also read with the other words for a degree. */
function unit(
  id: string,
  dimension: Dimension,
  symbol: string,
  factor: number,
  spellings: string,
  source: string,
  offset?: number,
): Unit {
  const own = symbol === '' ? '' : `${id}, ${symbol}`;
  const all = `${own}, ${spellings}`.split(', ').filter(Boolean).map(normalSpelling).flatMap(degreeWords);
  const row = { id, dimension, symbol, spellings: [...new Set(all)], factor, source };
  return offset === undefined ? row : { ...row, offset };
}

function degreeWords(spelling: string): string[] {
  if (!/\bdeg\b/.test(spelling)) return [spelling];
  return ['deg', 'degs', 'degree', 'degrees', '°'].map((word) => spelling.replace(/\bdeg\b/, word));
}
