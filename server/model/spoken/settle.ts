/** Pieces put in order before they are read: speeds that are conditions, cylinders that are called `no 3`, minutes gone by. */

import { matchUnit, type Unit } from '../../trade/measure/units.ts';
import { findQuantity, namesWith } from '../../trade/vocabulary/vocabulary.ts';
import type { Piece } from './classify.ts';
import type { Habits } from './habits.ts';
import { bare, fitted } from './in-context.ts';
import { sizeOf } from './numbers.ts';
import { inPlace } from './shared.ts';
import type { SpokenAmount } from './spoken-amount.ts';

export interface Settled {
  readonly pieces: readonly Piece[];
  /** `+20 min` or `10:45`, to be put before the line. */
  readonly time: string | undefined;
}

export function settle(all: readonly Piece[], habits: Habits): Settled {
  const { pieces, time } = withTime(withTails(withUnitsBefore(inPlace(fitted(all, habits)))));
  return { pieces: withSpeeds(withCylinders(withoutLabels(numbered(summed(pieces))), habits)), time };
}

/** `118 after the 3rd run`, `45 when hot`: said of the number before it, to the end of its clause. */
function withTails(pieces: readonly Piece[]): readonly Piece[] {
  const first = pieces.findIndex(({ kind }) => kind === 'v');
  return pieces.map((piece, i) => {
    const isTail =
      first >= 0 &&
      i > first &&
      /^(?:after|during|when|while)$/.test(piece.text) &&
      /[nfxrgp]/.test(pieces[i + 1]?.kind ?? '');
    return isTail ? { ...piece, kind: 'h' } : piece;
  });
}

/** `oil psi 60`, `km 61.220`: the unit of the number after it. */
const withUnitsBefore = (pieces: readonly Piece[]): readonly Piece[] =>
  pieces.flatMap((piece, i) => {
    const unit = unitNamed(piece);
    const [before, next] = [pieces[i - 1], pieces[i + 1]];
    if (
      unit &&
      !(unit.dimension === 'turns' && (bare(next) ?? 0) > 20) &&
      (!before || before.kind === 'n') &&
      next?.kind === 'v' &&
      !next.amount?.unit
    )
      return [];
    const own = before && unitNamed(before);
    if (own?.dimension === 'turns' && (bare(piece) ?? 0) > 20) return [piece];
    const isBeside = own && (i === 1 || pieces[i - 2]?.kind === 'n');
    if (!isBeside || !piece.amount || piece.amount.unit) return [piece];
    return [{ ...piece, amount: { ...piece.amount, unit: own, unitText: before.text } }];
  });

const unitNamed = ({ kind, text }: Piece): Unit | undefined =>
  /[fx]/.test(kind) && text.length > 1 && text !== 'in' ? matchUnit([text], 0)?.unit : undefined;

/** `12 + 22 = 34`: the sum is what was read. */
function summed(pieces: readonly Piece[]): readonly Piece[] {
  const kinds = pieces.map(({ kind }) => kind).join('');
  const at = kinds.search(/v[+]v=v/);
  return at < 0 ? pieces : [...pieces.slice(0, at), ...pieces.slice(at + 4)];
}

/** `1: 380 2: 390 3: 410`, `1 140, 2 145`: every second number counts the cylinders. */
function numbered(pieces: readonly Piece[]): readonly Piece[] {
  const at = pieces.flatMap(({ kind }, i) => (kind === 'v' ? [i] : []));
  const labels = at.filter((_, n) => n % 2 === 0);
  const names = pieces.slice(0, at[0]).find(({ kind }) => kind === 'n')?.names ?? [];
  const isCount =
    labels.length > 1 && at.length % 2 === 0 && labels.every((i, n) => bare(pieces[i]) === n + 1);
  const isBare = pieces.slice(at[0], at.at(-1)).every(({ kind }) => /[v:=,]/.test(kind));
  if (!isCount || !isBare || !names.some(takesCylinder)) return pieces;
  return pieces.flatMap((piece, i) => {
    if (labels.includes(i)) return [{ ...piece, kind: 'p', text: `#${bare(piece)}`, amount: undefined }];
    return labels.includes(i - 1) && /[:=]/.test(piece.kind) ? [] : [piece];
  });
}

/** `comps 1-8: 148 151`, `lap 2: 58.7` say which before they say what; `main jet 2: 115` is that of cylinder 2. */
const withoutLabels = (pieces: readonly Piece[]): readonly Piece[] =>
  pieces.flatMap((piece, at) => {
    const names = pieces.slice(0, at).findLast(({ kind }) => kind === 'n')?.names;
    if (isRunLabel(pieces, at)) return [];
    const isLabel =
      piece.kind === 'v' &&
      !piece.amount?.unit &&
      /[:=]/.test(pieces[at + 1]?.kind ?? '') &&
      pieces[at + 2]?.kind === 'v';
    if (!isLabel || !names || !piece.amount) return [piece];
    const { low, high } = piece.amount;
    const numbers = pieces.slice(at + 1).filter(({ kind }) => kind === 'v').length;
    if (high) return Number(high[0]) - Number(low[0]) + 1 === numbers ? [] : [piece];
    if (names.some(takesCylinder)) return [{ ...piece, kind: 'p', text: `#${low[0]}`, amount: undefined }];
    return names.includes('run time') ? [] : [piece];
  });

/** `run 2 1:51.9`, `2 runs 1:50 and 1:49`: which or how many, straight beside the word. */
function isRunLabel(pieces: readonly Piece[], at: number): boolean {
  const count = bare(pieces[at]);
  if (count === undefined || !Number.isInteger(count) || count > 20) return false;
  const isRun = (i: number) => pieces[i]?.names.includes('run time') ?? false;
  if (isRun(at - 1) && pieces[at + 1]?.kind === 'v') return true;
  const after = pieces.slice(at + 2).filter(({ kind }) => kind === 'v').length;
  return at === 0 && isRun(1) && after === count;
}

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
    const ran = ranFrom(all, i);
    const opens = ran !== undefined || (/^(?:after|in)$/.test(all[i]?.text ?? '') && all[i]?.kind !== 'v');
    const isMinutes = amount?.unit?.id === 'min' || (amount?.unit?.id === 'h' && all[i]?.text === 'after');
    if (!opens || !amount || !isMinutes || amount.high) continue;
    const rest = [...all.slice(0, ran ?? i), ...all.slice(i + 2)];
    if (!rest.some(({ kind }) => kind === 'v')) continue;
    const given = sizeOf(amount.low[0] as string);
    const inMinutes = amount.unit?.id === 'h' && !Number.isInteger(given);
    const time = inMinutes ? `+${given * 60} min` : `+${amount.low[0]} ${amount.unit?.symbol}`;
    return { pieces: rest, time };
  }
  return { pieces: all, time: undefined };
}

/** `158 ran it 45 min`: where what says that it ran begins, behind a number. */
function ranFrom(all: readonly Piece[], at: number): number | undefined {
  const from = /^(?:it|her|him)$/.test(all[at]?.text ?? '') ? at - 1 : at;
  const isRan = /^(?:ran|running|run)$/.test(all[from]?.text ?? '') && all[from]?.kind !== 'v';
  return isRan && all.slice(0, from).some(({ kind }) => kind === 'v') ? from : undefined;
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
    const isSure = /^cyl(?:inder)?$/.test(piece.text);
    const isCylinder =
      word && number !== undefined && Number.isInteger(number) && number >= 1 && number <= cylinders;
    const isOn = pieces[i + 2]?.kind !== 'n' && isOnCylinder(piece, out, number, cylinders);
    if (next && (isOn || (isCylinder && (isSure || !out.some(({ kind }) => kind === 'v'))))) {
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
  before.length > 0 &&
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
    if (opens && next?.kind === 'v' && isOnRoad(next, out)) {
      const speed = `${next.amount?.low[0]} ${next.amount?.unit?.symbol}`;
      out.push({
        ...next,
        kind: 'g',
        text: piece.kind === '@' ? `@ ${speed}` : `"at ${speed}"`,
        amount: undefined,
      });
      i++;
    } else if (
      opens &&
      next?.kind === 'v' &&
      isSpeed(next.amount) &&
      (numbers > 1 || isWorded) &&
      !takesSpeed(out)
    ) {
      out.push(speedOf(next));
      i++;
    } else if (isLoadSpeed(piece, out)) {
      out.push(speedOf(piece));
    } else if (piece.kind === 'v' && next?.kind === '=' && isSpeed(piece.amount)) {
      out.push(speedOf(piece));
      i++;
    } else out.push(piece.kind === '@' && next ? { ...piece, kind: 'f' } : piece);
  }
  return out;
}

/** `power 52 hp 4900`: what an engine gives, straight before the speed it gives it at. */
function isLoadSpeed({ kind, amount }: Piece, before: readonly Piece[]): boolean {
  const last = before.at(-1);
  return (
    kind === 'v' &&
    !amount?.unit &&
    isSpeed(amount) &&
    /^(?:power|torque)$/.test(last?.amount?.unit?.dimension ?? '') &&
    sizeOf(amount?.low.at(-1) as string) >= 500
  );
}

/** `50 lb at 40 mph`: where on the road it was read. */
const isOnRoad = ({ amount }: Piece, before: readonly Piece[]): boolean =>
  amount?.unit?.dimension === 'road speed' &&
  !amount.high &&
  before.some(({ kind }) => kind === 'v') &&
  before.some(({ kind }) => kind === 'n');

const WORDED = new Set(namesWith('symptom'));
const SPEEDS = new Set(namesWith('runningSpeed'));

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
