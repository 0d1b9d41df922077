/** Numbers that hold for two places, and numbers that name themselves by how they are written: pieces put so that forms can read them. */
import type { Piece } from './classify.ts';
import { bare } from './in-context.ts';

/** All of it, in order. */
export const inPlace = (pieces: readonly Piece[]): readonly Piece[] =>
  airGoingIn(setWithout(putIn(ratioNamed(atBothEnds(pieces)))));

/** Front and rear by a letter each, as tyres have them. */
const ENDS: ReadonlyMap<string, 'front' | 'rear'> = new Map([
  ['f', 'front'],
  ['v', 'front'],
  ['front', 'front'],
  ['r', 'rear'],
  ['h', 'rear'],
  ['rear', 'rear'],
]);

/** `tyres v+h 2,1`, `tyres f & r 30`: one number for each end. */
function atBothEnds(pieces: readonly Piece[]): readonly Piece[] {
  const at = pieces.findIndex(({ names }) => names.includes('tyre pressure'));
  const [one, sign, other, value] = pieces.slice(at + 1);
  const isBoth =
    at >= 0 &&
    ENDS.get(one?.text ?? '') === 'front' &&
    ENDS.get(other?.text ?? '') === 'rear' &&
    /^[+a/]$/.test(sign?.kind ?? '') &&
    value?.kind === 'v';
  if (!isBoth || !one || !other || !value) return pieces;
  const end = (piece: Piece, text: string): Piece => ({ ...piece, kind: 'p', text });
  return [...pieces.slice(0, at + 1), end(one, 'front'), value, end(other, 'rear'), ...pieces.slice(at + 4)];
}

/** `boost 0,38 with 1,9:1`: so many to one, beside the boost, is how fast the blower turns. */
function ratioNamed(pieces: readonly Piece[]): readonly Piece[] {
  const at = pieces.findIndex(
    ({ kind }, i) => kind === ':' && pieces[i - 1]?.kind === 'v' && bare(pieces[i + 1]) === 1,
  );
  const ratio = pieces[at - 1];
  const size = Number((ratio?.amount?.low[0] ?? '').replace(',', '.'));
  const isBlown = pieces.slice(0, Math.max(at, 0)).some(({ names }) => names.includes('boost'));
  const [join] = pieces.slice(at - 2, at - 1);
  if (!ratio || !isBlown || !(size >= 0.5 && size <= 4) || !join || !/^[ha,]$/.test(join.kind)) return pieces;
  const name: Piece = {
    ...ratio,
    kind: 'n',
    text: 'blower ratio',
    names: ['blower ratio'],
    amount: undefined,
  };
  return [...pieces.slice(0, at - 2), { ...join, kind: ',' }, name, ratio, ...pieces.slice(at + 2)];
}

/** `put 155 in`: fitted, and no inches. */
const putIn = (pieces: readonly Piece[]): readonly Piece[] =>
  pieces.map((piece, i) => {
    const isPut = /^(?:put|fitted|popped|stuck)$/.test(pieces[i - 1]?.text ?? '');
    const isLast = /^[,;]?$/.test(pieces[i + 1]?.kind ?? '');
    if (!isPut || !isLast || piece.amount?.unitText !== 'in' || Number(piece.amount.low[0]) < 20)
      return piece;
    return { ...piece, amount: { ...piece.amount, unit: undefined, unitText: '' } };
  });

/** `set 14, vac plugged`: the timing is what is set with the vacuum off. */
function setWithout(pieces: readonly Piece[]): readonly Piece[] {
  const [verb, value] = pieces;
  const size = bare(value);
  const isSet = /^(?:set|its|it's)$/.test(verb?.text ?? '') && pieces[2]?.kind === ',';
  const isOff = pieces.some(
    ({ text }, i) =>
      i > 2 &&
      /^(?:can|vac|vacuum|canister)$/.test(text) &&
      pieces
        .slice(i + 1, i + 4)
        .some(({ text: word }) => /^(?:plugged|off|pinched|capped|blocked)$/.test(word)),
  );
  if (!verb || !value || size === undefined || size > 25 || !isSet || !isOff) return pieces;
  const name: Piece = { ...verb, kind: 'n', text: 'initial', names: ['initial'] };
  return [name, ...pieces.slice(1)];
}

/** `water 88 and intake 61`: the air that goes in, beside another temperature. */
const airGoingIn = (pieces: readonly Piece[]): readonly Piece[] =>
  pieces.map((piece, i) => {
    const isHeat = pieces.slice(0, i).some(({ names }) => names.some((name) => HEAT.has(name)));
    const isAlone =
      piece.kind === 'p' && /^(?:intake|inlet)$/.test(piece.text) && pieces[i + 1]?.kind === 'v';
    return isHeat && isAlone ? { ...piece, kind: 'n', names: ['intake temperature'] } : piece;
  });

const HEAT = new Set(['water', 'oil temperature', 'head temperature', 'gearbox temperature']);
