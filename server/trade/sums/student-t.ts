/** Student's t, for intervals from a few bench readings. */

/**
 * The t that a reading of `degrees` degrees of freedom (a whole number from 1) stays within, either side, with the given
 * probability. Source: the finite series for whole degrees of freedom, NBS Handbook of Mathematical Functions 26.7.3 and 26.7.4, inverted by halving.
 */
export function studentT(degrees: number, probability = 0.95): number {
  let [low, high] = [0, 1];
  while (withinT(high, degrees) < probability) high *= 2;
  for (let step = 0; step < 80; step += 1) {
    const middle = (low + high) / 2;
    if (withinT(middle, degrees) < probability) low = middle;
    else high = middle;
  }
  return high;
}

/** Probability that Student's t of `degrees` degrees of freedom lies between -t and t. */
export function withinT(t: number, degrees: number): number {
  const angle = Math.atan(t / Math.sqrt(degrees));
  const odd = degrees % 2 === 1;
  const series = cosineSeries(Math.cos(angle), degrees, odd);
  return odd ? (2 / Math.PI) * (angle + Math.sin(angle) * series) : Math.sin(angle) * series;
}

function cosineSeries(cosine: number, degrees: number, odd: boolean): number {
  let term = odd ? cosine : 1;
  let sum = 0;
  for (let power = odd ? 1 : 0; power <= degrees - 2; power += 2) {
    sum += term;
    term *= ((power + 1) / (power + 2)) * cosine * cosine;
  }
  return sum;
}
