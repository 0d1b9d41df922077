/** Estimated bolt torque where no spec exists; the maker's figure overrules it. */
import type { Standing } from '../vocabulary/quantity.ts';

/** Proof strength of a grade over a range of diameters. Inch grades in inches and psi, metric classes in mm and MPa. */
interface ProofStrength {
  readonly system: 'inch' | 'metric';
  readonly grade: string;
  /** Largest diameter of the row; the smallest is that of the row above, or the standard's own. */
  readonly upTo: number;
  readonly proof: number;
  readonly source: string;
}

const inch = { system: 'inch', source: 'SAE J429' } as const;
const metric = { system: 'metric', source: 'ISO 898-1' } as const;

/** Proof strengths by grade, each grade's rows in rising diameter. */
const PROOF_STRENGTHS: readonly ProofStrength[] = [
  { ...inch, grade: '1', upTo: 1.5, proof: 33000 },
  { ...inch, grade: '2', upTo: 0.75, proof: 55000 },
  { ...inch, grade: '2', upTo: 1.5, proof: 33000 },
  { ...inch, grade: '5', upTo: 1, proof: 85000 },
  { ...inch, grade: '5', upTo: 1.5, proof: 74000 },
  { ...inch, grade: '8', upTo: 1.5, proof: 120000 },
  { ...metric, grade: '4.8', upTo: 16, proof: 310 },
  { ...metric, grade: '8.8', upTo: 16, proof: 580 },
  { ...metric, grade: '8.8', upTo: 72, proof: 600 },
  { ...metric, grade: '10.9', upTo: 100, proof: 830 },
  { ...metric, grade: '12.9', upTo: 100, proof: 970 },
];

/** Torque coefficients; scatter of a third either way is usual. */
export const TORQUE_COEFFICIENTS: Readonly<Record<'dry' | 'oiled', number>> = { dry: 0.2, oiled: 0.15 };

/** Share of the proof load the estimate tightens to, where no other is given. */
export const CLAMP_SHARE = 0.75;

/** An estimated torque; never a specification. */
export interface TorqueEstimate {
  readonly kind: 'estimate';
  /** lbf.ft for inch threads, N.m for metric. */
  readonly torque: number;
  readonly torqueUnit: 'lb-ft' | 'N.m';
  /** lbf for inch threads, N for metric. */
  readonly clamp: number;
  readonly standing: Standing;
  readonly source: string;
  readonly caution: string;
}

/** Shown with every estimate. */
export const ESTIMATE_CAUTION =
  "An estimate, good to about a third either way. The maker's figure overrules it, always for head, rod, main and wheel fasteners.";

/** Tensile stress area of a unified thread in square inches: diameter in inches, threads an inch (ASME B1.1). */
export function stressAreaInch(diameter: number, threadsPerInch: number): number {
  return (Math.PI / 4) * (diameter - 0.9743 / threadsPerInch) ** 2;
}

/** Tensile stress area of a metric thread in mm2: diameter and pitch in mm (ISO 898-1). */
export function stressAreaMetric(diameter: number, pitch: number): number {
  return (Math.PI / 4) * (diameter - 0.9382 * pitch) ** 2;
}

/** Proof strength of a grade at a diameter (psi for inch, MPa for metric), or undefined where the standard gives none. */
export function proofStrength(
  system: 'inch' | 'metric',
  grade: string,
  diameter: number,
): number | undefined {
  return PROOF_STRENGTHS.find((row) => row.system === system && row.grade === grade && diameter <= row.upTo)
    ?.proof;
}

/**
 * Estimated torque for an inch bolt: T = K D F, F being 75 per cent of the proof load. Diameter in inches, threads an inch.
 * Undefined for a grade or diameter the table does not have.
 */
export function estimateTorqueInch(
  diameter: number,
  threadsPerInch: number,
  grade: string,
  coefficient: number = TORQUE_COEFFICIENTS.dry,
): TorqueEstimate | undefined {
  const proof = proofStrength('inch', grade, diameter);
  if (proof === undefined) return undefined;
  const clamp = CLAMP_SHARE * proof * stressAreaInch(diameter, threadsPerInch);
  return estimate(clamp, (coefficient * diameter * clamp) / 12, 'lb-ft', 'SAE J429, ASME B1.1');
}

/** The same for a metric bolt: diameter and pitch in mm, torque in N.m. */
export function estimateTorqueMetric(
  diameter: number,
  pitch: number,
  grade: string,
  coefficient: number = TORQUE_COEFFICIENTS.dry,
): TorqueEstimate | undefined {
  const proof = proofStrength('metric', grade, diameter);
  if (proof === undefined) return undefined;
  const clamp = CLAMP_SHARE * proof * stressAreaMetric(diameter, pitch);
  return estimate(clamp, (coefficient * diameter * clamp) / 1000, 'N.m', 'ISO 898-1');
}

function estimate(
  clamp: number,
  torque: number,
  torqueUnit: TorqueEstimate['torqueUnit'],
  source: string,
): TorqueEstimate {
  return {
    kind: 'estimate',
    torque,
    torqueUnit,
    clamp,
    standing: 'published',
    source,
    caution: ESTIMATE_CAUTION,
  };
}
