import type { Standing } from '../../../server/trade/vocabulary/quantity.ts';

/** One value from outside the project and ours beside it. */
export interface Check {
  readonly what: string;
  /** Id of a row of sources.ts. */
  readonly source: string;
  readonly standing: Standing;
  readonly expected: number;
  /** How far ours may lie off, in the same unit: the rounding of the printed value, or the stated agreement of two formulas. */
  readonly tolerance: number;
  readonly ours: () => number;
}

/** A row of the table; published unless said otherwise. */
export function check(
  source: string,
  what: string,
  expected: number,
  tolerance: number,
  ours: () => number,
  standing: Standing = 'published',
): Check {
  return { what, source, standing, expected, tolerance, ours };
}

/** The value, or a failed check where a function gave none. */
export function given(value: number | undefined): number {
  return value ?? Number.NaN;
}
