/** Spelling distance, for "did you mean". Knows nothing of the trade. */

/**
 * The fewest single slips of the pen (a letter left out, put in, changed, or two neighbours swapped) that turn one
 * word into the other: the restricted Damerau-Levenshtein distance. `Infinity` once it is over `limit`.
 */
export function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return Infinity;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = nextRow(a, b, i, before, last);
    if (Math.min(...row) > limit) return Infinity;
    before = last;
    last = row;
  }
  const distance = last[b.length] ?? 0;
  return distance > limit ? Infinity : distance;
}

/**
 * How many slips still leave a word recognisable: none below three letters, one up to five, then two.
 * Common practice, no source.
 */
export function maxEdits(length: number): number {
  if (length < 3) return 0;
  return length < 6 ? 1 : 2;
}

/** Which letters a word holds, as bits (letters that share a bit are distinguished by the distance itself). */
export function letterSet(word: string): number {
  let bits = 0;
  for (let i = 0; i < word.length; i++) bits |= 1 << (word.charCodeAt(i) & 31);
  return bits;
}

/** How many bits two letter sets differ in: one slip changes two at most, so most words are ruled out at a glance. */
export function letterDifference(a: number, b: number): number {
  let differing = a ^ b;
  let count = 0;
  for (; differing !== 0; differing &= differing - 1) count++;
  return count;
}

function nextRow(
  a: string,
  b: string,
  i: number,
  before: readonly number[],
  last: readonly number[],
): number[] {
  const row = [i];
  for (let j = 1; j <= b.length; j++) {
    const same = a[i - 1] === b[j - 1] ? 0 : 1;
    let best = Math.min(at(last, j) + 1, at(row, j - 1) + 1, at(last, j - 1) + same);
    if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
      best = Math.min(best, at(before, j - 2) + 1);
    }
    row.push(best);
  }
  return row;
}

function at(row: readonly number[], j: number): number {
  return row[j] ?? Infinity;
}
