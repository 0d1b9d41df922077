/**
 * Air sums: density, density altitude, power corrections, and the jet size for a change of air.
 * Pressures are absolute, in pascals, as read at the place (not reduced to sea level).
 */

/** The air of a day: absolute pressure at the place, temperature, and relative humidity as a fraction 0..1. */
export interface Air {
  readonly pascals: number;
  readonly celsius: number;
  readonly humidity: number;
}

/** A correction by its name, or why it may not be used. */
export type Correction =
  | { readonly kind: 'factor'; readonly name: string; readonly factor: number; readonly source: string }
  | { readonly kind: 'refused'; readonly name: string; readonly reason: string; readonly source: string };

/** ISA at sea level: 15 degC, 101325 Pa, 1.2250 kg/m3 (ICAO Doc 7488). */
const STANDARD_DENSITY = 1.225;

/** What is shown beside every jet size worked out from the air. */
export const JET_CAUTION =
  'A starting point only: it keeps the mixture the jet gave in the old air. Check it on the plugs or a meter, starting from the rich side.';

const DRY_AIR_GAS_CONSTANT = 287.05;
const WATER_VAPOUR_GAS_CONSTANT = 461.495;
const SEA_LEVEL_KELVIN = 288.15;
const SEA_LEVEL_PASCALS = 101325;
const LAPSE_KELVIN_PER_METRE = 0.0065;
const PRESSURE_EXPONENT = 9.80665 / (287.05287 * LAPSE_KELVIN_PER_METRE);
const DENSITY_EXPONENT = PRESSURE_EXPONENT - 1;

/**
 * Pressure of saturated water vapour over water, in pascals, for a temperature in degC from -50 to 100.
 * Source: the World Meteorological Organization's formula, on which the Smithsonian Meteorological Tables are computed.
 */
export function saturationVapourPressure(celsius: number): number {
  const steam = 373.16 / (celsius + 273.16);
  const exponent =
    -7.90298 * (steam - 1) +
    5.02808 * Math.log10(steam) -
    1.3816e-7 * (10 ** (11.344 * (1 - 1 / steam)) - 1) +
    8.1328e-3 * (10 ** (-3.49149 * (steam - 1)) - 1);
  return 101324.6 * 10 ** exponent;
}

/** Partial pressure of the water vapour in the air, in pascals. */
function vapourPressure(air: Air): number {
  return air.humidity * saturationVapourPressure(air.celsius);
}

/** Pressure of the air less that of its water vapour, in pascals: what power corrections are worked from. */
export function dryPressure(air: Air): number {
  return air.pascals - vapourPressure(air);
}

/** Density of moist air in kg/m3: the densities of its dry part and its vapour added (ideal gases). */
export function airDensity(air: Air): number {
  const kelvin = air.celsius + 273.15;
  const dry = dryPressure(air) / (DRY_AIR_GAS_CONSTANT * kelvin);
  return dry + vapourPressure(air) / (WATER_VAPOUR_GAS_CONSTANT * kelvin);
}

/** Density as a fraction of a reference density, the standard atmosphere's unless another day is given. */
export function relativeDensity(density: number, reference: number = STANDARD_DENSITY): number {
  return density / reference;
}

/** The standard atmosphere at a geopotential altitude in metres, up to 11000 m (ICAO Doc 7488, U.S. Standard Atmosphere 1976). */
export function standardAtmosphere(metres: number): { celsius: number; pascals: number; density: number } {
  const ratio = 1 - (LAPSE_KELVIN_PER_METRE * metres) / SEA_LEVEL_KELVIN;
  return {
    celsius: SEA_LEVEL_KELVIN * ratio - 273.15,
    pascals: SEA_LEVEL_PASCALS * ratio ** PRESSURE_EXPONENT,
    density: STANDARD_DENSITY * ratio ** DENSITY_EXPONENT,
  };
}

/** The altitude in metres at which the standard atmosphere has this density in kg/m3. */
export function densityAltitude(density: number): number {
  return altitudeOfRatio((density / STANDARD_DENSITY) ** (1 / DENSITY_EXPONENT));
}

function altitudeOfRatio(temperatureRatio: number): number {
  return ((1 - temperatureRatio) * SEA_LEVEL_KELVIN) / LAPSE_KELVIN_PER_METRE;
}

/**
 * What observed power is multiplied by to compare at 99 kPa dry and 25 degC: SAE J1349 (JUN90), which assumes a
 * mechanical efficiency of 85 per cent. Not defined for boosted engines, so it is refused for them.
 */
export function correctionJ1349(air: Air, boosted = false): Correction {
  const name = 'SAE J1349 (JUN90)';
  if (boosted) return refusedForBoost(name, 'SAE J1349 JUN90');
  const factor = 1.18 * (99000 / dryPressure(air)) * Math.sqrt((air.celsius + 273) / 298) - 0.18;
  return { kind: 'factor', name, factor, source: 'SAE J1349 JUN90' };
}

/**
 * The older standard correction, SAE J607: to 29.92 inHg dry and 60 degF, by pressure and the square root of absolute
 * temperature. It flatters by some per cent against J1349, so a figure must carry its name.
 */
export function correctionJ607(air: Air, boosted = false): Correction {
  const name = 'SAE J607 (older standard)';
  if (boosted) return refusedForBoost(name, 'SAE J607');
  const factor = (SEA_LEVEL_PASCALS / dryPressure(air)) * Math.sqrt((air.celsius + 273.15) / 288.71);
  return { kind: 'factor', name, factor, source: 'SAE J607' };
}

function refusedForBoost(name: string, source: string): Correction {
  return {
    kind: 'refused',
    name,
    reason: `${name} is for naturally aspirated engines; boosted engines do not follow the barometer this way`,
    source,
  };
}

/**
 * How many times the jet area should become when the air density changes by `densityRatio` (new / old), for the same mixture.
 * Source: the orifice equation; a fixed jet under the air's own signal richens with 1 / sqrt(relative density).
 */
export function jetAreaForAir(densityRatio: number): number {
  return Math.sqrt(densityRatio);
}

/** How many times the jet diameter should become: the fourth root of the density ratio (area goes with diameter squared). */
export function jetDiameterForAir(densityRatio: number): number {
  return densityRatio ** 0.25;
}
