/** Road sums: speed in a gear, tyre sizes, slip, and corrected run times. */
import type { Standing } from '../vocabulary/quantity.ts';

/** A metric tyre size as moulded on the wall. */
interface TyreSize {
  /** Section width, mm. */
  readonly width: number;
  /** Section height as per cent of the width. */
  readonly aspect: number;
  /** Rim diameter, inches. */
  readonly rim: number;
}

const TYRE_SIZE = /^(?:P|LT)? ?(\d{3}) ?(?:\/ ?(\d{2}))? ?[A-Z]? ?[RDB-] ?(\d{2}(?:\.\d)?)\b/i;

/** Reads `185/65R15`, `185/65 R 15`, `P205/55ZR16` or `185R14` (no aspect: 80). Undefined for anything else. */
export function parseTyreSize(text: string): TyreSize | undefined {
  const size = TYRE_SIZE.exec(text.trim().replace(/\s+/g, ' '));
  if (size === null) return undefined;
  return { width: Number(size[1]), aspect: Number(size[2] ?? 80), rim: Number(size[3]) };
}

/** Design diameter of an unloaded tyre in mm: rim and two section heights (tyre and rim standards). Loaded it rolls a few per cent less. */
export function tyreDiameter(size: TyreSize): number {
  return size.rim * 25.4 + (2 * size.width * size.aspect) / 100;
}

/** Road speed in m/s from engine speed (rev/min), overall ratio (gear x final drive) and tyre diameter in metres, without slip. */
export function roadSpeed(rpm: number, overallRatio: number, tyreMetres: number): number {
  return (Math.PI * tyreMetres * rpm) / (60 * overallRatio);
}

/** Engine speed in rev/min at a road speed in m/s, without slip. */
export function engineSpeed(metresPerSecond: number, overallRatio: number, tyreMetres: number): number {
  return (60 * overallRatio * metresPerSecond) / (Math.PI * tyreMetres);
}

/** Slip of tyres and converter together, or of a propeller, as a fraction: how far the measured speed falls short of the worked-out one. */
export function slip(workedOut: number, measured: number): number {
  return 1 - measured / workedOut;
}

/**
 * Speed of a boat in m/s if its propeller moved as through a solid: engine speed (rev/min), turns of the engine for one of
 * the propeller, pitch in metres. What the boat falls short of it is the slip (apparent slip, in the usual terms of the sea).
 */
export function propellerSpeed(rpm: number, reduction: number, pitchMetres: number): number {
  return (pitchMetres * rpm) / (60 * reduction);
}

/** A run's time or speed brought to the air of a named correction. */
interface CorrectedRun {
  readonly value: number;
  /** The name of the correction, and how it was carried from power to the run. */
  readonly name: string;
  readonly standing: Standing;
}

/** A run's time as it would be in the correction's air: time goes with the cube root of power, so it is divided by that of the factor. */
export function correctRunTime(seconds: number, factor: number, correction: string): CorrectedRun {
  return cubeRootRule(seconds / Math.cbrt(factor), correction);
}

/** The speed at the end of a run, brought to the correction's air by the same rule. */
export function correctRunSpeed(speed: number, factor: number, correction: string): CorrectedRun {
  return cubeRootRule(speed * Math.cbrt(factor), correction);
}

function cubeRootRule(value: number, correction: string): CorrectedRun {
  return { value, name: `${correction}, cube root of power`, standing: 'common practice' };
}
