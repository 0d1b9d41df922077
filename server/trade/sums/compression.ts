/** Compression sums: displacement, ratio from volumes and under boost, piston speed, compression and leak-down tests. */
import type { Standing } from '../vocabulary/quantity.ts';

/** Clearance sizes at top dead centre: lengths in mm, volumes in cm3. */
export interface ChamberSizes {
  readonly bore: number;
  readonly stroke: number;
  /** Combustion chamber in the head, cm3. */
  readonly chamber: number;
  /** Thickness of the gasket, compressed, mm. */
  readonly gasketThickness: number;
  /** Bore of the gasket, mm; the cylinder's own when not given. */
  readonly gasketBore?: number;
  /** How far the piston stops below the deck, mm; negative above it. */
  readonly deck: number;
  /** Dish and valve pockets of the piston, cm3; negative for a dome. */
  readonly dish: number;
}

/** Volume swept by one piston, in the cube of the unit of its bore and stroke. */
export function sweptVolume(bore: number, stroke: number): number {
  return (Math.PI / 4) * bore * bore * stroke;
}

/** Displacement of an engine, in the cube of the unit of its bore and stroke. */
export function displacement(bore: number, stroke: number, cylinders: number): number {
  return sweptVolume(bore, stroke) * cylinders;
}

/** Volume left above the piston at top dead centre, in cm3. */
export function clearanceVolume(sizes: ChamberSizes): number {
  const gasket = sweptVolume(sizes.gasketBore ?? sizes.bore, sizes.gasketThickness) / 1000;
  const deck = sweptVolume(sizes.bore, sizes.deck) / 1000;
  return sizes.chamber + gasket + deck + sizes.dish;
}

/** Static compression ratio (x:1) from volumes in one unit; undefined when nothing is left above the piston. */
export function compressionRatio(swept: number, clearance: number): number | undefined {
  return clearance > 0 ? (swept + clearance) / clearance : undefined;
}

/** Static compression ratio (x:1) from an engine's sizes; undefined when they leave no volume. */
export function staticRatio(sizes: ChamberSizes): number | undefined {
  return compressionRatio(sweptVolume(sizes.bore, sizes.stroke) / 1000, clearanceVolume(sizes));
}

/** Effective ratio above which a street engine on 92 AKI pump fuel is past the planning figure of public blower charts. */
export const EFFECTIVE_RATIO_LIMIT = {
  value: 12,
  standing: 'published' as Standing,
  source: 'public blower charts, 92 AKI pump fuel; a planning figure',
};

/** The air at sea level, psi, as the public blower charts take it. */
export const SEA_LEVEL_PSI = 14.7;

/**
 * Effective compression ratio under boost in psi above the air outside. The charts are for sea level: where the air is
 * thinner the same gauge boost compresses less, so the figure errs on the careful side.
 */
export function effectiveRatio(ratio: number, boost: number): number {
  return ratio * (boost / SEA_LEVEL_PSI + 1);
}

/** Mean piston speed in m/s: two strokes a turn. Stroke in metres, engine speed in rev/min. */
export function meanPistonSpeed(strokeMetres: number, rpm: number): number {
  return (2 * strokeMetres * rpm) / 60;
}

/** One of the published rules a compression test is held to. */
interface CompressionRule {
  readonly name: string;
  readonly fraction: number;
  /** Lowest allowed in any cylinder, psi, beside the fraction. */
  readonly floorPsi?: number;
  readonly source: string;
}

/** Both rules in use; the maker's own figure overrules them. */
export const COMPRESSION_RULES: readonly CompressionRule[] = [
  { name: '75 per cent', fraction: 0.75, source: 'factory service manuals of several makers' },
  {
    name: '70 per cent and 100 psi',
    fraction: 0.7,
    floorPsi: 100,
    source: 'factory service manuals of several makers',
  },
];

/** Verdict of one rule on a set of compression readings. Cylinders are numbered from 1. */
export interface CompressionVerdict {
  readonly rule: CompressionRule;
  /** Lowest pressure the rule allows, psi. */
  readonly allowed: number;
  /** Cylinders under it. */
  readonly low: readonly number[];
  /** Neighbours that are both under it: suspect the gasket between them. */
  readonly lowPairs: readonly (readonly [number, number])[];
}

/** Result of a compression test. */
interface CompressionTest {
  readonly highest: number;
  readonly lowest: number;
  /** Lowest over highest, a fraction. */
  readonly ratio: number;
  readonly verdicts: readonly CompressionVerdict[];
}

/**
 * Judges compression readings in psi, in cylinder order, against the published rules. `neighbours` are pairs of
 * adjacent cylinders. Undefined for fewer than two readings or when the highest is not above 0.
 */
export function judgeCompression(
  psi: readonly number[],
  neighbours: readonly (readonly [number, number])[] = [],
): CompressionTest | undefined {
  const highest = Math.max(...psi);
  const lowest = Math.min(...psi);
  if (psi.length < 2 || !(highest > 0)) return undefined;
  return {
    highest,
    lowest,
    ratio: lowest / highest,
    verdicts: COMPRESSION_RULES.map((rule) => verdict(rule, psi, highest, neighbours)),
  };
}

function verdict(
  rule: CompressionRule,
  psi: readonly number[],
  highest: number,
  neighbours: readonly (readonly [number, number])[],
): CompressionVerdict {
  const allowed = Math.max(rule.fraction * highest, rule.floorPsi ?? 0);
  const low = psi.flatMap((each, index) => (each < allowed ? [index + 1] : []));
  const lowPairs = neighbours.filter(([one, other]) => low.includes(one) && low.includes(other));
  return { rule, allowed, low, lowPairs };
}

/** Result of a leak-down test, in per cent; cylinders are numbered from 1. */
interface LeakDown {
  readonly best: number;
  readonly worst: number;
  readonly spread: number;
  readonly worstCylinder: number;
}

/** Leak-down readings in per cent, in cylinder order. No limit is applied: the maker's figure is the limit. Undefined for none. */
export function leakDown(percents: readonly number[]): LeakDown | undefined {
  if (percents.length === 0) return undefined;
  const best = Math.min(...percents);
  const worst = Math.max(...percents);
  return { best, worst, spread: worst - best, worstCylinder: percents.indexOf(worst) + 1 };
}
