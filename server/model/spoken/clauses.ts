/** A line's pieces to clauses: parted at commas, full stops, dashes, brackets, `so`, `but`, and `and` between two facts. */
import type { Piece } from './classify.ts';
import { LOOKS } from './lexicon.ts';

export type Clause = readonly Piece[];

const BREAKS = new Set([',', '(', ')', '!', ';', '|']);
const BREAKING_WORDS = new Set(['so', 'but', 'because', 'then', 'while']);

export function clausesOf(pieces: readonly Piece[]): readonly Clause[] {
  const clauses: Piece[][] = [[]];
  for (const [at, piece] of pieces.entries()) {
    if (isBreak(pieces, at)) clauses.push(piece.kind === 'o' ? [piece] : []);
    else clauses.at(-1)?.push(piece);
  }
  return clauses.flatMap((clause) => (clause.length > 0 ? atNextName(clause) : []));
}

function isBreak(pieces: readonly Piece[], at: number): boolean {
  const { kind, text } = pieces[at] as Piece;
  if (joinsCorrection(pieces, at) || joinsList(pieces, at) || joinsLooks(pieces, at)) return false;
  // `no ping no smoke`: each is denied by itself.
  if (kind === 'o' && at > 0 && pieces[at + 1]?.kind === 'n' && isDenied(pieces, at)) return true;
  if (BREAKS.has(kind) || (kind !== 'v' && BREAKING_WORDS.has(text))) return true;
  if (kind === '-') return !joinsDashes(pieces, at);
  if (kind === ':' && pieces.slice(0, at).some(({ text: word }) => /^plugs?$/.test(word))) return false;
  if (kind === ':')
    return !pieces.slice(0, at).some((piece) => /[nvg]/.test(piece.kind)) || pieces[at - 1]?.kind === 'v';
  // A slash between two numbers makes a list of them.
  if (kind === '/')
    return (
      !(pieces[at - 1]?.kind === 'v' && pieces[at + 1]?.kind === 'v') ||
      partsUnits(pieces, at) ||
      partsLoad(pieces, at)
    );
  if (kind !== 'a') return false;
  return isFact(pieces, 0, at) && isFact(pieces, at + 1, pieces.length) && !isList(pieces, at);
}

/** `4.5 / 4.1 under load`: one reading, then the same again with something to do. */
const partsLoad = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:under load|on load|loaded|when pulling|flat out)$/.test(pieces[at + 2]?.text ?? '') &&
  pieces[at - 2]?.kind === 'n';

/** `98 PS / 152 Nm`: each has a unit of another kind. */
function partsUnits(pieces: readonly Piece[], at: number): boolean {
  const [one, other] = [pieces[at - 1], pieces[at + 1]].map((piece) => piece?.amount?.unit?.dimension);
  return one !== undefined && other !== undefined && one !== other;
}

/** `odo 53870 bowls empty`: a word of the trade after a number that has its own begins another clause. */
function atNextName(clause: Clause): readonly Clause[] {
  const kinds = clause.map(({ kind }) => kind).join('');
  const at = /^[^nv]*n[^nv]*v[^nvh]*n[^nv]*$/.test(kinds) ? kinds.lastIndexOf('n') : -1;
  const first = clause.find(({ kind }) => kind === 'n');
  // `needle 3rd clip`: two words for one thing.
  if (at >= 0 && first && clause[at]?.names.some((name) => first.names.includes(name))) return [clause];
  const isIdle = /^(?:idle|idling|tickover)/.test(clause[at]?.text ?? '');
  return at < 0 || isIdle || clause[at - 1]?.kind === 'f'
    ? [clause]
    : [clause.slice(0, at), clause.slice(at)];
}

/** `1150 - no, 1100`, `26, no, 27`: one number put right. */
function joinsCorrection(pieces: readonly Piece[], at: number): boolean {
  const kind = pieces[at]?.kind;
  if (kind !== ',' && kind !== '-') return false;
  const isAfter = pieces[at - 1]?.kind === 'o' && pieces[at + 1]?.kind === 'v';
  const next = pieces[at + 1]?.kind === 'o' ? pieces[at + 2] : undefined;
  const isBefore = next?.kind === 'v' || (next?.kind === ',' && pieces[at + 3]?.kind === 'v');
  return isAfter || (isBefore && pieces[at - 1]?.kind === 'v');
}

/** Three or more numbers in a row with nothing but commas or slashes between. */
function joinsList(pieces: readonly Piece[], at: number): boolean {
  if (pieces[at]?.kind !== ',' || pieces[at - 1]?.kind !== 'v' || pieces[at + 1]?.kind !== 'v') return false;
  const isMore = (i: number, step: number): boolean =>
    pieces[i]?.kind === ',' && pieces[i + step]?.kind === 'v';
  const units = [at - 3, at - 1, at + 1, at + 3].map((i) => pieces[i]?.amount?.unit);
  const isOne =
    new Set(units.filter((unit) => unit !== undefined)).size <= 1 && !pieces[at - 1]?.amount?.unit;
  return isOne && (isMore(at + 2, 1) || isMore(at - 2, -1));
}

/** Another thing is denied before this one in the same breath. */
const isDenied = (pieces: readonly Piece[], at: number): boolean =>
  pieces[at - 1]?.kind === 'n' && pieces.slice(0, at).some(({ kind }) => kind === 'o');

/** `112-115-110`: three or more numbers with nothing but dashes between. */
function joinsDashes(pieces: readonly Piece[], at: number): boolean {
  const isNumber = (i: number) => pieces[i]?.kind === 'v';
  const isDash = (i: number) => pieces[i]?.kind === '-';
  return isNumber(at - 1) && isNumber(at + 1) && (isDash(at - 2) || isDash(at + 2));
}

/** `tan, tan, sooty, tan`: three or more looks in a row, one for each plug. */
function joinsLooks(pieces: readonly Piece[], at: number): boolean {
  const isLook = (i: number) => LOOKS.has(pieces[i]?.text ?? '');
  const isSign = (i: number) => /^[,/-]$/.test(pieces[i]?.kind ?? '');
  if (!isSign(at) || !isLook(at - 1) || !isLook(at + 1)) return false;
  return (isSign(at + 2) && isLook(at + 3)) || (isSign(at - 2) && isLook(at - 3));
}

/** Holds a number of its own, up to the next break. */
function isFact(pieces: readonly Piece[], from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (pieces[i]?.kind === 'v') return true;
  return false;
}

/** `12 and 12`, `8 and 12 thou`. */
const isList = (pieces: readonly Piece[], at: number): boolean =>
  pieces[at - 1]?.kind === 'v' && pieces[at + 1]?.kind === 'v';

/** A clause as it was written. */
export const textOf = (clause: Clause, text: string): string =>
  text.slice(clause[0]?.from ?? 0, clause.at(-1)?.to ?? 0);
