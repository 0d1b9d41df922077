/** Monotone curves: the nearest monotone values to a set of readings, and a smooth curve through them. */

/** A point of a curve; `weight` is how many readings it represents. */
export interface CurveKnot {
  readonly x: number;
  readonly y: number;
  readonly weight: number;
}

/** One point for each x, in rising x, its y the mean of the readings there. */
export function knotsOf(points: readonly { readonly x: number; readonly y: number }[]): CurveKnot[] {
  const knots: CurveKnot[] = [];
  for (const { x, y } of points.toSorted((one, other) => one.x - other.x)) {
    const last = knots.at(-1);
    if (last === undefined || last.x !== x) knots.push({ x, y, weight: 1 });
    else knots[knots.length - 1] = poolKnots(last, { x, y, weight: 1 });
  }
  return knots;
}

/**
 * The never-falling values nearest the knots by least squares (never-rising when `falling`): neighbours out of order are
 * pooled to their weighted mean. Source: pool adjacent violators, as in the texts on order-restricted inference.
 */
export function monotone(knots: readonly CurveKnot[], falling = false): CurveKnot[] {
  const sign = falling ? -1 : 1;
  const blocks: { knots: readonly CurveKnot[]; mean: CurveKnot }[] = [];
  for (const knot of knots) {
    let block = { knots: [knot] as readonly CurveKnot[], mean: knot };
    for (let last = blocks.at(-1); last && sign * last.mean.y > sign * block.mean.y; last = blocks.at(-1)) {
      block = { knots: [...last.knots, ...block.knots], mean: poolKnots(last.mean, block.mean) };
      blocks.pop();
    }
    blocks.push(block);
  }
  return blocks.flatMap((block) => block.knots.map((knot) => ({ ...knot, y: block.mean.y })));
}

function poolKnots(one: CurveKnot, other: CurveKnot): CurveKnot {
  const weight = one.weight + other.weight;
  return { x: other.x, y: (one.y * one.weight + other.y * other.weight) / weight, weight };
}

/**
 * Value at `x` of the smooth curve through the knots (two or more, in rising x) that keeps to their rises and falls;
 * beyond the ends it goes on straight from the last two. Source: piecewise cubic Hermite with the weighted harmonic mean
 * slopes of the SLATEC library's PCHIP.
 */
export function curveAt(knots: readonly CurveKnot[], x: number): number {
  const index = intervalOf(knots, x);
  const [left, right] = [knotAt(knots, index), knotAt(knots, index + 1)];
  const width = right.x - left.x;
  if (x < left.x) return left.y + (x - left.x) * secant(knots, index);
  if (x > right.x) return right.y + (x - right.x) * secant(knots, index);
  const t = (x - left.x) / width;
  const u = 1 - t;
  const slopes = width * (slopeAt(knots, index) * u - slopeAt(knots, index + 1) * t);
  return u * u * (1 + 2 * t) * left.y + t * t * (3 - 2 * t) * right.y + t * u * slopes;
}

function intervalOf(knots: readonly CurveKnot[], x: number): number {
  const next = knots.findIndex((knot) => knot.x > x);
  if (next === -1) return knots.length - 2;
  return Math.max(next - 1, 0);
}

function slopeAt(knots: readonly CurveKnot[], index: number): number {
  if (knots.length === 2) return secant(knots, 0);
  if (index === 0) return endSlope(knots, 0, 1);
  if (index === knots.length - 1) return endSlope(knots, index - 1, index - 2);
  const [before, after] = [secant(knots, index - 1), secant(knots, index)];
  if (before * after <= 0) return 0;
  const [left, right] = [widthOf(knots, index - 1), widthOf(knots, index)];
  const [one, other] = [2 * right + left, right + 2 * left];
  return (one + other) / (one / before + other / after);
}

/** Slope at an end from the parabola through three knots, kept from overshooting the nearer secant. */
function endSlope(knots: readonly CurveKnot[], near: number, far: number): number {
  const [nearWidth, farWidth] = [widthOf(knots, near), widthOf(knots, far)];
  const [nearSecant, farSecant] = [secant(knots, near), secant(knots, far)];
  const slope = ((2 * nearWidth + farWidth) * nearSecant - nearWidth * farSecant) / (nearWidth + farWidth);
  if (slope * nearSecant <= 0) return 0;
  if (nearSecant * farSecant < 0 && Math.abs(slope) > 3 * Math.abs(nearSecant)) return 3 * nearSecant;
  return slope;
}

function secant(knots: readonly CurveKnot[], index: number): number {
  return (knotAt(knots, index + 1).y - knotAt(knots, index).y) / widthOf(knots, index);
}

function widthOf(knots: readonly CurveKnot[], index: number): number {
  return knotAt(knots, index + 1).x - knotAt(knots, index).x;
}

function knotAt(knots: readonly CurveKnot[], index: number): CurveKnot {
  const knot = knots[index];
  if (knot === undefined) throw new RangeError(`a curve of ${knots.length} knots has none at ${index}`);
  return knot;
}
