/** Which way a screw's turns are counted. */

/** Screws counted in turns in from where they touch; all others are counted in turns out from lightly seated. Common practice, no source. */
const COUNTED_IN: ReadonlySet<string> = new Set(['idle screw', 'secondary stop', 'fast idle screw']);

/** 1 where turning the screw that way raises the count written, -1 where it lowers it. */
export function turnSign(quantity: string, way: 'in' | 'out'): 1 | -1 {
  return COUNTED_IN.has(quantity) === (way === 'in') ? 1 : -1;
}
