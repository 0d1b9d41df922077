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
  if (RATED.test(text) || FOUND_WELL.test(text)) return true;
  const names = pieces.filter(({ kind }) => kind === 'n');
  const isMoved = pieces.some(
    ({ kind, text: word }) => kind === 'c' && !/^(?:changed|swapped|in|over)$/.test(word),
  );
  if (!isMoved && BESIDE_OTHERS.test(text)) return true;
  if (
    !isMoved &&
    WORKED.test(text) &&
    numbers.every((piece) => isSmall(piece, cylinders) || isAmong(piece, ['time']))
  )
    return true;
  if (!isMoved && numbers.every((piece) => isYear(piece, text))) return true;
  if (names.length > 0) return false;
  if (numbers.every((piece) => isSmall(piece, 20) && isCounted(pieces, piece))) return true;
  if (numbers.every((piece) => isAmong(piece, ['time', 'distance']))) return true;
  // `a bit rough under 700`: where it was so, and nothing measured.
  return numbers.every(isBoundary) && pieces.some(({ text: word }) => COMPLAINTS.has(word));
}

/** Said of another day, or of nothing that was measured here. */
const PAST =
  /^(?:last (?:week|time|year|month)|yesterday|remember(?:ed)?|used to|that'?s \d+ (?:over|under|more|less|better))\b/i;
/** A question that its own line answers. */
const ANSWERED = /\?\s*(?:no|nah|nope|leave)\b/i;
/** Wear is no setting and no reading of the notation. */
const WEAR = /\bworn (?:about |some )?\.?\d|\d (?:thou|mm|in) (?:of )?(?:wear|play)\b/i;
/** So much in a time: the notation has no word for it. */
const RATED =
  /\d (?:\p{L}{1,12} )?(?:an?|per|each) (?:hour|minute|day|week|mile|lap|acre|side)\b|\d \p{L}{1,4}\/\p{L}{1,4}\b/iu;
/** Measured against somebody or some other day. */
const BESIDE_OTHERS =
  /\b(?:from|than|behind|ahead of|beat|by|off) (?:\p{Lu}\p{Ll}+|spring|summer|autumn|winter|last)\b/u;
/** `2 3 4 were good`: looked at, and nothing measured. */
const FOUND_WELL =
  /^(?:\d{1,2}[\s,&+]+|and |all )+(?:were |was |are |is |look |looked |seem )?(?:good|ok|okay|fine|alright|all right|the same|perfect|clean)\b/i;
const WORKED = /^(?:swapped|changed|moved|cleaned|turned|took|put|fitted)\b/i;

const isAmong = ({ amount }: Piece, dimensions: readonly string[]): boolean =>
  dimensions.includes(amount?.unit?.dimension ?? '') && sizeOf(amount?.low.at(-1) ?? '') < 1000;

/** `since 1998`. */
const isYear = ({ amount, from }: Piece, text: string): boolean =>
  /^(?:19|20)\d\d$/.test(amount?.low[0] ?? '') && /\b(?:in|since|from|of) $/i.test(text.slice(0, from));

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
  if (pieces[0]?.text === 'ditto' || (pieces[0]?.text === 'same' && pieces[1]?.text === 'as')) return true;
  const isSame = has(({ text }) => /^(?:same|usual|ditto)$/.test(text)) && has(({ kind }) => kind === 'n');
  return isSame || (has(({ kind }) => kind === 'c') && has(({ kind }) => kind === 'k'));
}
