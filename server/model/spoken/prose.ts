/** A remark: nothing of the trade is told with a number, and nothing is wrong or to be done. */
import type { Piece } from './classify.ts';

/** True for a line that is kept as it stands. */
export function isProse(pieces: readonly Piece[], text: string): boolean {
  const numbers = pieces.filter(({ kind }) => kind === 'v');
  if (numbers.length === 0) return !pieces.some(({ kind }) => kind === 'k') || !pieces.some(({ kind }) => kind === 'c');
  if (PAST.test(text)) return true;
  const names = pieces.filter(({ kind }) => kind === 'n');
  const isTimeOnly = numbers.every(({ amount }) => amount?.unit?.dimension === 'time');
  return isTimeOnly && names.length === 0;
}

/** Said of another day, or of nothing that was measured here. */
const PAST = /^(?:last (?:week|time|year|month)|yesterday|remember(?:ed)?|used to|that'?s \d+ (?:over|under|more|less|better))\b/i;
