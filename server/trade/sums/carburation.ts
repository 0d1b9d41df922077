/** Carburettor sums: engine airflow, ratings at other depressions, jets, fuel pressure, power valve, mixture. */
import type { Standing } from '../vocabulary/quantity.ts';

/** A fuel and its stoichiometric air-fuel ratio by mass. */
export interface Fuel {
  readonly name: string;
  readonly stoichiometric: number;
  readonly standing: Standing;
  readonly source: string;
}

const FUEL_TABLE = 'US Department of Energy, Alternative Fuels Data Center, properties of fuels';

/** Stoichiometric air-fuel ratios by mass. A pump fuel varies; these are the usual planning figures. */
export const FUELS: readonly Fuel[] = [
  { name: 'gasoline', stoichiometric: 14.7, standing: 'published', source: FUEL_TABLE },
  {
    name: 'e10',
    stoichiometric: 14.1,
    standing: 'published',
    source: 'blend by mass of gasoline and ethanol',
  },
  {
    name: 'e85',
    stoichiometric: 9.8,
    standing: 'published',
    source: 'blend by mass of gasoline and ethanol',
  },
  { name: 'ethanol', stoichiometric: 9.0, standing: 'published', source: FUEL_TABLE },
  { name: 'methanol', stoichiometric: 6.45, standing: 'published', source: FUEL_TABLE },
  { name: 'propane', stoichiometric: 15.7, standing: 'published', source: FUEL_TABLE },
  { name: 'natural gas', stoichiometric: 17.2, standing: 'published', source: FUEL_TABLE },
  { name: 'nitromethane', stoichiometric: 1.7, standing: 'published', source: 'chemical composition' },
];

/** The depressions carburettor ratings are quoted at, in inHg: four-barrel at 1.5, two-barrel at 3.0. */
export const RATING_DEPRESSIONS = { fourBarrel: 1.5, twoBarrel: 3 } as const;

/** The fuel pressure a float needle holds, in psi, and above which it is likely to be pushed off its seat. */
interface NeedleBand {
  readonly low: number;
  readonly high: number;
  readonly floods: number;
  readonly standing: Standing;
  readonly source: string;
}

const NEEDLE_PRACTICE = { standing: 'common practice', source: 'no source' } as const;

/** Pressure bands at the float needle in psi, by kind of carburettor. */
export const NEEDLE_BANDS: Readonly<Record<'needle and seat' | 'side-draught', NeedleBand>> = {
  'needle and seat': { low: 4, high: 7, floods: 8, ...NEEDLE_PRACTICE },
  'side-draught': { low: 1.5, high: 4, floods: 8, ...NEEDLE_PRACTICE },
};

/**
 * Air a four-stroke engine draws, in cubic feet a minute, from its displacement in cubic inches, its speed in rev/min and
 * its volumetric efficiency as a fraction. Half the displacement is drawn each turn; 1728 cu in make a cubic foot.
 */
export function airflowDemand(cubicInches: number, rpm: number, volumetricEfficiency = 1): number {
  return (cubicInches * rpm * volumetricEfficiency) / 3456;
}

/** A rating given at one depression as it would read at another (any one unit): flow goes with its square root. */
export function ratingAt(flow: number, rated: number, wanted: number): number {
  return flow * Math.sqrt(wanted / rated);
}

/** How many times the area of a jet becomes when its diameter goes from `before` to `after`: fuel passed follows it. */
export function areaRatio(before: number, after: number): number {
  return (after / before) ** 2;
}

/** Change of a jet's area in per cent when its diameter goes from `before` to `after`. */
export function areaChangePercent(before: number, after: number): number {
  return (areaRatio(before, after) - 1) * 100;
}

/** Passages in series: the smallest is the restriction, the others are given as area ratios to it. */
interface Series {
  /** Place in the row, from 0, of the smallest. */
  readonly smallest: number;
  readonly diameter: number;
  readonly areaRatios: readonly number[];
}

/** The metering passage of a row in series (diameters in one unit, all above 0). Undefined for an empty row. */
export function passagesInSeries(diameters: readonly number[]): Series | undefined {
  const diameter = Math.min(...diameters);
  if (!(diameter > 0) || diameters.length === 0) return undefined;
  return {
    smallest: diameters.indexOf(diameter),
    diameter,
    areaRatios: diameters.map((each) => areaRatio(diameter, each)),
  };
}

/**
 * Fuel pressure at the needle in psi, from the pressure at the pump and how many inches the needle is above it, fuel at rest.
 * A column of water gives 0.0361273 psi an inch (NIST SP 811); gasoline is taken as 0.74 of water's weight unless given.
 */
export function pressureAtNeedle(pumpPsi: number, riseInches: number, specificGravity = 0.74): number {
  return pumpPsi - riseInches * specificGravity * 0.0361273;
}

/** Judges a fuel pressure in psi against the range for a kind of carburettor. */
export function judgeNeedlePressure(
  psi: number,
  kind: keyof typeof NEEDLE_BANDS,
): 'low' | 'in band' | 'high' | 'likely to flood' {
  const band = NEEDLE_BANDS[kind];
  if (psi > band.floods) return 'likely to flood';
  if (psi > band.high) return 'high';
  return psi < band.low ? 'low' : 'in band';
}

/** Power valve rating suited to an idle depression, in inHg. */
interface PowerValve {
  /** Half the idle depression in gear. */
  readonly suggested: number;
  /** Idle depression in gear minus 2 inHg: a valve rated above it may be open at idle. */
  readonly ceiling: number;
  readonly standing: Standing;
}

/**
 * Power valve rating from the idle depression in gear, in inHg. Common practice, no source: half of it, and never over
 * the depression less 2. Under 4 inHg the ceiling is the smaller of the two and is what is suggested. Undefined at 2 or less.
 */
export function powerValve(idleDepressionInGear: number): PowerValve | undefined {
  const ceiling = idleDepressionInGear - 2;
  if (!(ceiling > 0)) return undefined;
  return { suggested: Math.min(idleDepressionInGear / 2, ceiling), ceiling, standing: 'common practice' };
}

/** The fuel of this name (any letter case), or undefined. */
export function fuelNamed(name: string): Fuel | undefined {
  const wanted = name.trim().toLowerCase();
  return FUELS.find((fuel) => fuel.name === wanted);
}

/** Lambda, the air-fuel ratio as a fraction of the fuel's stoichiometric one: over 1 is lean. */
export function lambdaOf(airFuelRatio: number, fuel: Fuel): number {
  return airFuelRatio / fuel.stoichiometric;
}

/** Air-fuel ratio by mass of a lambda on a fuel. */
export function airFuelRatioOf(lambda: number, fuel: Fuel): number {
  return lambda * fuel.stoichiometric;
}
