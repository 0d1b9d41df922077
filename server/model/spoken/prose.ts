/** A remark: nothing of the trade is told with a number, and nothing is wrong or to be done. */
import { findQuantity } from '../../trade/vocabulary/vocabulary.ts';
import type { Piece } from './classify.ts';
import type { SpokenReading } from './habits.ts';
import { COMPLAINTS } from './lexicon.ts';
import { sizeOf } from './numbers.ts';

/** True for a line that is kept as it stands. */
export function isProse(pieces: readonly Piece[], text: string, cylinders = 16): boolean {
  const numbers = pieces.filter(({ kind }) => kind === 'v');
  if (numbers.length === 0) return true;
  if (PAST.test(text) || ANSWERED.test(text) || WEAR.test(text)) return true;
  const names = pieces.filter(({ kind }) => kind === 'n');
  const isMoved = pieces.some(
    ({ kind, text: word }) => kind === 'c' && !/^(?:changed|swapped|in|over)$/.test(word),
  );
  if (!isMoved && WORKED.test(text) && numbers.every((piece) => isSmall(piece, cylinders))) return true;
  if (names.length > 0) return false;
  if (numbers.every((piece) => isSmall(piece, 20) && isCounted(pieces, piece))) return true;
  if (numbers.every(({ amount }) => amount?.unit?.dimension === 'time')) return true;
  // `a bit rough under 700`: where it was so, and nothing measured.
  return numbers.every(isBoundary) && pieces.some(({ text: word }) => COMPLAINTS.has(word));
}

/** Said of another day, or of nothing that was measured here. */
const PAST =
  /^(?:last (?:week|time|year|month)|yesterday|remember(?:ed)?|used to|that'?s \d+ (?:over|under|more|less|better))\b/i;
/** A question that its own line answers. */
const ANSWERED = /\?\s*(?:no|nah|nope|leave)\b/i;
/** Wear is no setting and no reading of the notation. */
const WEAR = /\bworn (?:about |some )?[\d.]+|\b[\d.]+ (?:thou|mm|in) (?:of )?(?:wear|play)\b/i;
const WORKED = /^(?:swapped|changed|moved|cleaned|turned|took|put|fitted)\b/i;

const isSmall = ({ amount }: Piece, cylinders: number): boolean =>
  amount !== undefined &&
  !amount.unit &&
  Number.isInteger(Number(amount.low[0])) &&
  Number(amount.low[0]) <= cylinders;

/** `3 other boats`: how many of something. */
const isCounted = (pieces: readonly Piece[], piece: Piece): boolean =>
  /[xr]/.test(pieces[pieces.indexOf(piece) + 1]?.kind ?? '');

const isBoundary = ({ amount }: Piece): boolean =>
  amount !== undefined && !amount.unit && amount.prefix !== '' && sizeOf(amount.low[0] as string) >= 400;

/** `advanced it a touch`: a setting that moved, nobody counted how far. */
export function doubtIn(pieces: readonly Piece[]): SpokenReading['doubts'][number] | undefined {
  if (pieces.some(({ kind }) => kind === 'v')) return undefined;
  const isMoved = pieces.some(({ kind }) => kind === 'c') && pieces.some(({ kind }) => kind === 'k');
  const timed = pieces.some(({ text }) => /^(?:advanced|retarded)$/.test(text));
  const name = pieces.find(({ kind }) => kind === 'n')?.names[0] ?? (timed ? 'initial' : undefined);
  const quantity = name === undefined ? undefined : findQuantity(name.split(' '))?.quantity;
  if (!isMoved || quantity?.kind !== 'setting') return undefined;
  const place = pieces.find(({ kind }) => kind === 'p')?.text;
  return { name: quantity.name, ...(place && { place }) };
}

/** `gave it a little more`, `vac same as usual`, `ditto front`: something was done or read, and how much stands elsewhere. */
export function isUncounted(pieces: readonly Piece[]): boolean {
  const has = (test: (piece: Piece) => boolean) => pieces.some(test);
  if (has(({ kind }) => kind === 'v')) return false;
  if (pieces[0]?.text === 'ditto') return true;
  const isSame = has(({ text }) => /^(?:same|usual|ditto)$/.test(text)) && has(({ kind }) => kind === 'n');
  return isSame || (has(({ kind }) => kind === 'c') && has(({ kind }) => kind === 'k'));
}
