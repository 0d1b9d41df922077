/** Threads and grades as people write them: `3/8-16 grade 5`, `M10x1.5 class 8.8, oiled`. */

export interface Fastener {
  readonly system: 'inch' | 'metric';
  /** Inches or mm. */
  readonly diameter: number;
  /** Threads an inch, or pitch in mm. */
  readonly thread: number;
  /** As the standard names it: `5`, `8.8`. */
  readonly grade: string;
  readonly lubrication: 'dry' | 'oiled';
}

/** Coarse pitches of the metric sizes engines are held together with, mm (ISO 261, first choice). */
const COARSE: Readonly<Record<number, number>> = {
  3: 0.5,
  4: 0.7,
  5: 0.8,
  6: 1,
  8: 1.25,
  10: 1.5,
  12: 1.75,
  14: 2,
  16: 2,
  18: 2.5,
  20: 2.5,
  22: 2.5,
  24: 3,
};

const INCH = /(?:^|\s)(?:(\d+)\/(\d+)|(\d*\.\d+))(?:\s*in\b|\s*")?\s*-\s*(\d{1,2})\b/i;
const METRIC = /\bM\s*(\d{1,2}(?:\.\d)?)(?:\s*[x×*]\s*(\d(?:\.\d+)?))?/i;
const INCH_GRADE = /\b(?:grade|gr)\.?\s*([1258])\b/i;
const METRIC_CLASS = /\b(?:(?:class|grade|property class)\s*)?(4\.8|8\.8|10\.9|12\.9)\b/i;
const OILED = /\b(?:oil|oiled|lubed|lubricated|greased|wet)\b/i;

/** Undefined without size, pitch or grade: all three are needed for an estimate. */
export function parseFastener(text: string): Fastener | undefined {
  const lubrication = OILED.test(text) ? 'oiled' : 'dry';
  const inch = INCH.exec(text);
  const grade = INCH_GRADE.exec(text)?.[1];
  if (inch && grade) {
    const diameter = inch[3] === undefined ? Number(inch[1]) / Number(inch[2]) : Number(inch[3]);
    const thread = Number(inch[4]);
    const real = diameter > 0 && diameter <= 3 && thread >= 4;
    return real ? { system: 'inch', diameter, thread, grade, lubrication } : undefined;
  }
  const metric = METRIC.exec(text);
  const propertyClass = METRIC_CLASS.exec(text)?.[1];
  if (!metric || !propertyClass) return undefined;
  const diameter = Number(metric[1]);
  const thread = metric[2] === undefined ? COARSE[diameter] : Number(metric[2]);
  if (thread === undefined || thread <= 0 || diameter <= thread) return undefined;
  return { system: 'metric', diameter, thread, grade: propertyClass, lubrication };
}
