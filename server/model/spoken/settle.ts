/** Pieces put in order before they are read: speeds that are conditions, cylinders that are called `no 3`, minutes gone by. */

import { findQuantity } from '../../trade/vocabulary/vocabulary.ts';
import type { Piece } from './classify.ts';
import type { Habits } from './habits.ts';
import { sizeOf } from './numbers.ts';
import type { SpokenAmount } from './spoken-amount.ts';

export interface Settled {
  readonly pieces: readonly Piece[];
  /** `+20 min` or `10:45`, to be put before the line. */
  readonly time: string | undefined;
}

export function settle(all: readonly Piece[], habits: Habits): Settled {
  const { pieces, time } = withTime(all);
  return { pieces: withSpeeds(withCylinders(withoutLabels(summed(pieces)), habits)), time };
}

const bare = (piece: Piece | undefined): number | undefined => {
  const amount = piece?.kind === 'v' ? piece.amount : undefined;
  return amount && !amount.unit && !amount.high && amount.prefix === ''
    ? sizeOf(amount.low[0] as string)
    : undefined;
};

/** `12 + 22 = 34`: the sum is what was read. */
function summed(pieces: readonly Piece[]): readonly Piece[] {
  const kinds = pieces.map(({ kind }) => kind).join('');
  const at = kinds.search(/v[+]v=v/);
  return at < 0 ? pieces : [...pieces.slice(0, at), ...pieces.slice(at + 4)];
}

/** `comps 1-8: 148 151`, `lap 2: 58.7` say which before they say what; `main jet 2: 115` is that of cylinder 2. */
const withoutLabels = (pieces: readonly Piece[]): readonly Piece[] =>
  pieces.flatMap((piece, at) => {
    const isLabel =
      piece.kind === 'v' &&
      !piece.amount?.unit &&
      pieces[at + 1]?.kind === ':' &&
      pieces[at + 2]?.kind === 'v';
    const names = pieces.slice(0, at).findLast(({ kind }) => kind === 'n')?.names;
    if (!isLabel || !names || !piece.amount) return [piece];
    const { low, high } = piece.amount;
    const numbers = pieces.slice(at + 1).filter(({ kind }) => kind === 'v').length;
    if (high) return Number(high[0]) - Number(low[0]) + 1 === numbers ? [] : [piece];
    if (names.some(takesCylinder)) return [{ ...piece, kind: 'p', text: `#${low[0]}`, amount: undefined }];
    return names.includes('run time') ? [] : [piece];
  });

const takesCylinder = (name: string): boolean =>
  findQuantity(name.split(' '))?.quantity.places?.includes('cylinder') ?? false;

/** `after 20 min`, `160 in 3 min`; a clock time at the head of the line. */
function withTime(all: readonly Piece[]): Settled {
  const first = all[0];
  const clock = /^([01]?\d|2[0-3])\.([0-5]\d)$/.exec(bareText(first));
  if (clock && all[1]?.kind === 'n' && all.slice(2).some(({ kind }) => kind === 'v'))
    return { pieces: all.slice(1), time: `${clock[1]}:${clock[2]}`.padStart(5, '0') };
  if (first?.kind === 'm' && all.length > 1)
    return { pieces: all.slice(1), time: first.text.padStart(5, '0') };
  for (let i = 0; i + 1 < all.length; i++) {
    const amount = all[i + 1]?.amount;
    const opens = /^(?:after|in)$/.test(all[i]?.text ?? '') && all[i]?.kind !== 'v';
    const isMinutes = amount?.unit?.id === 'min' || (amount?.unit?.id === 'h' && all[i]?.text === 'after');
    if (!opens || !amount || !isMinutes || amount.high) continue;
    const rest = [...all.slice(0, i), ...all.slice(i + 2)];
    if (!rest.some(({ kind }) => kind === 'v')) continue;
    return { pieces: rest, time: `+${amount.low[0]} ${amount.unit?.symbol}` };
  }
  return { pieces: all, time: undefined };
}

const bareText = (piece: Piece | undefined): string =>
  piece?.amount && !piece.amount.unit && !piece.amount.high ? (piece.amount.low[0] ?? '') : '';

/** `no 3 with oil 9.9`: a cylinder where nothing comes before that could be put right. */
function withCylinders(pieces: readonly Piece[], { cylinders = 16 }: Habits): readonly Piece[] {
  const out: Piece[] = [];
  for (let i = 0; i < pieces.length; i++) {
    const piece = pieces[i] as Piece;
    const next = pieces[i + 1];
    const number = bare(next);
    const isPart =
      piece.kind === 'x' && /^(?:carb|carburettor|rubber|coil|lead|pipe|valve)$/.test(piece.text);
    const word = /^(?:no|cyl|cylinder|cyls|number)$/.test(piece.text) || isPart;
    const isCylinder =
      word && number !== undefined && Number.isInteger(number) && number >= 1 && number <= cylinders;
    const isOn = isOnCylinder(piece, out, number, cylinders);
    if (next && (isOn || (isCylinder && !out.some(({ kind }) => kind === 'v')))) {
      out.push({ ...next, kind: 'p', text: `#${number}`, amount: undefined, from: piece.from });
      i++;
    } else out.push(piece);
  }
  return out;
}

/** `CO 3.5 on 1, 3.0 on 2`. */
const isOnCylinder = (
  piece: Piece,
  before: readonly Piece[],
  number: number | undefined,
  cylinders: number,
): boolean =>
  piece.text === 'on' &&
  before.at(-1)?.kind === 'v' &&
  number !== undefined &&
  Number.isInteger(number) &&
  number >= 1 &&
  number <= cylinders &&
  before.some(({ names }) => names.some(takesCylinder));

const isSpeed = (amount: SpokenAmount | undefined): boolean =>
  amount !== undefined &&
  (amount.unit?.dimension === 'rotation' || (!amount.unit && sizeOf(amount.low.at(-1) as string) >= 400));

/** `42 @ 3000`, `32 at 4000`, `3200 = 26`: the speed it was read at, where another number is what was read. */
function withSpeeds(pieces: readonly Piece[]): readonly Piece[] {
  const numbers = pieces.filter(({ kind }) => kind === 'v').length;
  const isWorded = pieces.some(({ names }) => names.some((name) => WORDED.has(name)));
  const out: Piece[] = [];
  for (let i = 0; i < pieces.length; i++) {
    const piece = pieces[i] as Piece;
    const next = pieces[i + 1];
    const opens = /^(?:@|at|by|from|around)$/.test(piece.text);
    if (
      opens &&
      next?.kind === 'v' &&
      isSpeed(next.amount) &&
      (numbers > 1 || isWorded) &&
      !takesSpeed(out)
    ) {
      out.push(speedOf(next));
      i++;
    } else if (piece.kind === 'v' && next?.kind === '=' && isSpeed(piece.amount)) {
      out.push(speedOf(piece));
      i++;
    } else out.push(piece);
  }
  return out;
}

const WORDED = new Set(['knock', 'hesitation', 'smoke']);
const SPEEDS = new Set(['all in', 'idle', 'engine speed', 'wide open speed', 'fast idle', 'governed speed']);

/** The name right before it is one that takes a speed, and has none yet. */
const takesSpeed = (before: readonly Piece[]): boolean => {
  const at = before.findLastIndex(({ kind }) => kind === 'n');
  const names = before[at]?.names ?? [];
  if (at < 0 || before.slice(at).some(({ kind }) => /[v,]/.test(kind))) return false;
  if (names.some((name) => WORDED.has(name))) return false;
  // `12 initial at 900`: a name behind its number has it.
  const own = names.some((name) => SPEEDS.has(name));
  return own || before[at - 1]?.kind !== 'v';
};

function speedOf(piece: Piece): Piece {
  const { low, high, link, prefix } = piece.amount as SpokenAmount;
  const number = high ? `${low.at(-1)}${link}${high.at(-1)}` : low.at(-1);
  return { ...piece, kind: 'g', text: `@ ${prefix}${number} rpm`, amount: undefined };
}
