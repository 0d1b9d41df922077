/**
 * Numbers as people write them at the bench: exact, about, between two, at most, at least.
 * Sums on them keep what is not known: every result holds every value the inputs allow.
 */

/** Closed on both sides; an end that is not known is infinite. Made only by the functions below, never NaN. */
export interface Interval {
  readonly low: number;
  readonly high: number;
  /** Written with `~`, or worked out from something that was. */
  readonly about: boolean;
}

/** One value, known as written. What is not a number is anything at all. */
export function exact(n: number): Interval {
  return make(n, n, false);
}

/** One value, written as a rough one. */
export function about(n: number): Interval {
  return make(n, n, true);
}

/** All values between two, in either order. */
export function range(a: number, b: number): Interval {
  return make(Math.min(a, b), Math.max(a, b), false);
}

/** Every value up to and with `n`. */
export function atMost(n: number): Interval {
  return make(-Infinity, n, false);
}

/** Every value from `n` on. */
export function atLeast(n: number): Interval {
  return make(n, Infinity, false);
}

/** Sum; approximate where either value is, as are the results of all functions below. */
export function add(a: Interval, b: Interval): Interval {
  return make(a.low + b.low, a.high + b.high, a.about || b.about);
}

/** Difference of independent values: a value minus itself is not zero. */
export function subtract(a: Interval, b: Interval): Interval {
  return make(a.low - b.high, a.high - b.low, a.about || b.about);
}

export function multiply(a: Interval, b: Interval): Interval {
  return rangeOver(
    [product(a.low, b.low), product(a.low, b.high), product(a.high, b.low), product(a.high, b.high)],
    a.about || b.about,
  );
}

/** Quotient; where the divisor may be zero the result may be anything. */
export function divide(a: Interval, b: Interval): Interval {
  const rough = a.about || b.about;
  if (contains(b, 0)) return make(-Infinity, Infinity, rough);
  // Infinity over Infinity adds nothing to the three other corners.
  const corners = [a.low / b.low, a.low / b.high, a.high / b.low, a.high / b.high];
  return rangeOver(
    corners.filter((corner) => !Number.isNaN(corner)),
    rough,
  );
}

/** Times a known number, of either sign. */
export function scale(iv: Interval, k: number): Interval {
  return rangeOver([product(iv.low, k), product(iv.high, k)], iv.about);
}

/** A known number added. */
export function shift(iv: Interval, k: number): Interval {
  return make(iv.low + k, iv.high + k, iv.about);
}

/**
 * Through a function that only rises or only falls. An end where the function says nothing (the root of a
 * negative number, say) leaves the result open on both sides.
 */
export function monotone(iv: Interval, f: (x: number) => number): Interval {
  return rangeOver([f(iv.low), f(iv.high)], iv.about);
}

/**
 * Through a function that only rises or only falls in each of its arguments: its extremes are at the
 * corners. What is rough in any argument is rough in the result.
 */
export function monotoneEach<N extends readonly Interval[]>(
  ivs: readonly [...N],
  f: (...xs: { [K in keyof N]: number }) => number,
): Interval {
  const corners = ivs.reduce<number[][]>(
    (sofar, iv) =>
      sofar.flatMap((xs) =>
        iv.low === iv.high
          ? [[...xs, iv.low]]
          : [
              [...xs, iv.low],
              [...xs, iv.high],
            ],
      ),
    [[]],
  );
  return rangeOver(
    corners.map((xs) => f(...(xs as { [K in keyof N]: number }))),
    ivs.some((iv) => iv.about),
  );
}

/** The narrowest interval that holds both. */
export function hull(a: Interval, b: Interval): Interval {
  return make(Math.min(a.low, b.low), Math.max(a.high, b.high), a.about || b.about);
}

/** Minimum of two uncertain values. */
export function least(a: Interval, b: Interval): Interval {
  return make(Math.min(a.low, b.low), Math.min(a.high, b.high), a.about || b.about);
}

/** Maximum of two uncertain values. */
export function greatest(a: Interval, b: Interval): Interval {
  return make(Math.max(a.low, b.low), Math.max(a.high, b.high), a.about || b.about);
}

/** One value and not a rough one. */
export function isExact(iv: Interval): boolean {
  return iv.low === iv.high && !iv.about;
}

/** Neither end is open. */
export function isBounded(iv: Interval): boolean {
  return Number.isFinite(iv.low) && Number.isFinite(iv.high);
}

/** Both ends count. */
export function contains(iv: Interval, n: number): boolean {
  return iv.low <= n && n <= iv.high;
}

/** 0 for one value, Infinity where an end is open. */
export function width(iv: Interval): number {
  return iv.high - iv.low;
}

/** Halfway; with one end open the other end; with both open 0, as IEEE 1788 has it for the whole line. */
export function middle(iv: Interval): number {
  if (iv.low === iv.high) return iv.low;
  if (iv.low === -Infinity) return iv.high === Infinity ? 0 : iv.high;
  if (iv.high === Infinity) return iv.low;
  // Halved before they are added: the sum of two large ends could overflow.
  return iv.low / 2 + iv.high / 2;
}

/** Every value of `a` is greater than every value of `b`. */
export function surelyAbove(a: Interval, b: Interval): boolean {
  return a.low > b.high;
}

/** Every value of `a` is less than every value of `b`. */
export function surelyBelow(a: Interval, b: Interval): boolean {
  return a.high < b.low;
}

/** Equality of ends and of approximateness: anything computed from either is the same. */
export function equal(a: Interval, b: Interval): boolean {
  return a.low === b.low && a.high === b.high && a.about === b.about;
}

/** An infinite end times zero is zero: an open end means any large number, never infinity. */
function product(x: number, y: number): number {
  return x === 0 || y === 0 ? 0 : x * y;
}

function rangeOver(values: readonly number[], rough: boolean): Interval {
  return make(Math.min(...values), Math.max(...values), rough);
}

/**
 * An end that cannot be computed (NaN) becomes open. A sum too large for a number keeps the largest number as its near end,
 * so that every interval holds at least one real value.
 */
function make(low: number, high: number, rough: boolean): Interval {
  return {
    low: Number.isNaN(low) ? -Infinity : Math.min(low, Number.MAX_VALUE),
    high: Number.isNaN(high) ? Infinity : Math.max(high, -Number.MAX_VALUE),
    about: rough,
  };
}
