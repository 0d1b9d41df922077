/** A clause to frames, one for each number: the name, place, conditions and remark that belong to it. */

import type { Piece } from './classify.ts';
import type { Clause } from './clauses.ts';
import type { SpokenAmount } from './spoken-amount.ts';
import { isStranger, turnsBehind } from './strangers.ts';

export interface Frame {
  readonly names: readonly string[] | undefined;
  readonly place: string | undefined;
  readonly amount: SpokenAmount;
  /** `at idle`, `in drive`, `@ 2500 rpm`; text in quotes where it is only a remark. */
  readonly states: readonly string[];
  readonly remark: string;
  /** As it was said. */
  readonly nameText: string;
  /** Its name is a word for idling, which may only say when. */
  readonly isIdleWord: boolean;
  /** Words of change that go with it, and whether `to` or `at` stands right before the number. */
  readonly changes: readonly string[];
  readonly isWhole: boolean;
  /** The change stands after its number: `1/8 out`. */
  readonly changeAfter: boolean;
  /** `was`, `were`: what held before; `book`: what is printed. */
  readonly of: 'now' | 'before' | 'book';
  /** `no` right before it puts the number before it right. */
  readonly corrects: boolean;
  /** A word straight after a bare number: it may be counted, `2 aboard`. */
  readonly counts: boolean;
  /** The number as it was written. */
  readonly written: string;
  /** A word that nobody knows stands before it. */
  readonly isLed: boolean;
}

const OLD = new Set(['was', 'were', 'had', 'used']);
/** Straight before a number these say by how much, and of what is not told. */
const MOVING = new Set([
  'dropped',
  'drops',
  'dropping',
  'fell',
  'rose',
  'climbed',
  'jumped',
  'lost',
  'gained',
  'crept',
]);
/** Straight after a number these say how far it is from something. */
const BESIDE = new Set(
  'slow fast low high wrong from behind ahead than faster slower quicker better worse short shy apart adrift difference'.split(
    ' ',
  ),
);
const BOOK = new Set(['book', 'spec', 'should', 'supposed', 'manual', 'handbook', 'since']);
const QUIET = new Set(['still', 'again', 'always', 'normally', 'from', 'now', 'before', 'as']);

/** Undefined where the clause holds what no frame can take. */
export function framesOf(clause: Clause, text: string): readonly Frame[] | undefined {
  const at = clause.flatMap(({ kind }, i) => (kind === 'v' && !isCountedWith(clause, i) ? [i] : []));
  if (at.length === 0) return undefined;
  const leads = clause.slice(0, at[0]).some(({ kind }) => kind === 'p' || kind === 'g');
  const named = clause.slice(0, at[0]).some(({ kind }) => kind === 'n');
  const frames: Frame[] = [];
  let before = clause.slice(0, at[0]);
  for (const [i, index] of at.entries()) {
    const between = clause.slice(index + 1, at[i + 1] ?? clause.length);
    const cut = i + 1 < at.length ? cutOf(between, leads, named) : between.length;
    const frame = frameOf(before, clause[index] as Piece, between.slice(0, cut), text);
    if (!frame) return undefined;
    frames.push(frame);
    before = between.slice(cut);
  }
  return frames;
}

/** `with 4 aboard`: how many of something, within a remark. */
const isCountedWith = (clause: Clause, at: number): boolean =>
  clause[at - 1]?.kind === 'h' && clause[at + 1]?.kind === 'x' && !clause[at]?.amount?.unit;

/** How many of the pieces between two numbers belong to the first. */
function cutOf(between: readonly Piece[], leads: boolean, named: boolean): number {
  const name = between.findIndex(({ kind }) => kind === 'n');
  if (name >= 0) return named ? name : name + 1;
  const place = between.findIndex(({ kind }) => kind === 'p' || kind === 'g');
  if (leads && place >= 0) return place;
  const opener = between.findIndex(({ kind }) => kind === 'q' || kind === 'o');
  return opener >= 0 ? opener : between.length;
}

function frameOf(
  before: readonly Piece[],
  value: Piece,
  after: readonly Piece[],
  text: string,
): Frame | undefined {
  const tail = remarkIn(after, text);
  if (!tail) return undefined;
  if (countsOthers(after) || isBeside(after)) return undefined;
  const withAll = [...before, ...tail.rest];
  if (withAll.some((piece) => /[tw?k"]/.test(piece.kind))) return undefined;
  const withAt = before.findIndex(({ kind }) => kind === 'h');
  const opening = withAt < 0 ? [] : before.slice(withAt);
  const head = withAt < 0 ? before : before.slice(0, withAt);
  if (
    !head.every((piece) => piece.kind !== 'x' || isStranger(piece) || isFilled(piece, value)) ||
    opening.some(({ kind }) => /[twqk]/.test(kind))
  )
    return undefined;
  const around = [...head, ...tail.rest];
  const measured = around.filter(({ kind, text: word }) => kind === 'q' && !QUIET.has(word));
  if (measured.some(({ text: word }) => !OLD.has(word) && !BOOK.has(word))) return undefined;
  if (withAll.some(({ kind }) => !/[npgcfqoarxh]/.test(kind))) return undefined;
  const named = around.filter(({ kind }) => kind === 'n');
  // `oil 18 hot idle`: idle beside another word is when it was read.
  const isRevs = named.some(({ names }) => names.includes('engine speed'));
  const idle = named.length === 2 && !isRevs ? named.find((piece) => IDLE.test(piece.text)) : undefined;
  const names = oneName(named.filter((piece) => piece !== idle));
  if (!names) return undefined;
  const last = before.at(-1);
  const isRange = (value.amount as SpokenAmount).high !== undefined;
  if (last && MOVING.has(last.text)) return undefined;
  // `800 not 900` denies the second, `800 no 900` the first.
  if (last?.text === 'not') return undefined;
  if (isRange && before.some((piece) => MOVING.has(piece.text))) return undefined;
  const isLong =
    measured.some((piece) => OLD.has(piece.text)) && around.some((piece) => piece.text === 'before');
  if (isLong) return undefined;
  const places = around.filter(({ kind }) => kind === 'p').map((piece) => piece.text);
  const direct = after[0];
  return {
    names: names[0]?.names,
    place: places.length > 0 ? places.join(' ') : undefined,
    amount: value.amount as SpokenAmount,
    states: [
      ...around.filter(({ kind }) => kind === 'g').map((piece) => piece.text),
      ...(idle ? ['at idle'] : []),
    ],
    nameText: names[0]?.text ?? '',
    isIdleWord: names[0] !== undefined && IDLE.test(names[0].text),
    remark: [
      ...head.filter(({ kind }) => /[rx]/.test(kind)).map((piece) => text.slice(piece.from, piece.to)),
      said(opening, text),
      tail.remark,
      (value.amount as SpokenAmount).called,
    ]
      .filter(Boolean)
      .join(' '),
    changes: around.filter(({ kind }) => kind === 'c').map((piece) => piece.text),
    isWhole:
      (last?.kind === 'f' && /^(?:to|at|now|is|reads|makes|set)$/.test(last.text)) ||
      tail.rest.some(({ text: word }) => word === 'now'),
    changeAfter: tail.rest.some(({ kind }) => kind === 'c') && !before.some(({ kind }) => kind === 'c'),
    of: measured.some(({ text: word }) => BOOK.has(word)) ? 'book' : measured.length > 0 ? 'before' : 'now',
    corrects: /of*$/.test(before.map(({ kind }) => kind).join('')),
    written: text.slice(value.from, value.to),
    isLed: head.some(({ kind }) => kind === 'x'),
    counts: direct?.kind === 'x' && !(value.amount as SpokenAmount).unit,
  };
}

/** `6 keeper screws`: how many of something that only ends in a word of the trade. */
const countsOthers = (after: readonly Piece[]): boolean =>
  /^x+n/.test(after.map(({ kind }) => kind).join(''));

/** `2 s from the record` is no reading; `third from the top` is counted from somewhere. */
const isBeside = ([first, ...more]: readonly Piece[]): boolean =>
  BESIDE.has(first?.text ?? '') && !more.some(({ text }) => /^(?:top|bottom|blunt)$/.test(text));

/** `the vacuum gauge says 17 of vac`: two words for one thing name it; undefined where they name two. */
function oneName(named: readonly Piece[]): readonly Piece[] | undefined {
  const [first, ...more] = named;
  if (!first || more.length === 0) return named;
  const names = first.names.filter((name) => more.every((each) => each.names.includes(name)));
  if (names.length > 0) return [{ ...first, names }];
  // A light shows the timing, and the other word says which.
  const timed = named.filter((piece) => !piece.names.includes('timing'));
  return timed.length === 1 && /^(?:initial|total)$/.test(timed[0]?.names[0] ?? '') ? timed : undefined;
}

/** `tank 14.8 l`: what took so much. */
const isFilled = ({ text }: Piece, { amount }: Piece): boolean =>
  /^(?:tank|tanks|bike|car|truck|boat|tractor)$/.test(text) && amount?.unit?.dimension === 'volume';

const UNITS = new Set('deg degrees rpm psi f c turns turn inhg bar mm thou mph kpa volts'.split(' '));

const IDLE = /^(?:idle|idles|idling|tickover|tick over|slow running)$/;

const said = (pieces: readonly Piece[], text: string): string =>
  pieces.length === 0 ? '' : text.slice((pieces[0] as Piece).from, (pieces.at(-1) as Piece).to);

/** What stands behind a number and is no name, place, condition or change of it. */
function remarkIn(
  after: readonly Piece[],
  text: string,
): { readonly rest: readonly Piece[]; readonly remark: string } | undefined {
  const from = after.findIndex(({ kind }) => /[rxho]/.test(kind));
  if (from < 0) return { rest: after, remark: '' };
  let start = from;
  while (start > 0 && after[start - 1]?.kind === 'f') start--;
  const isWith = after[from]?.kind === 'h';
  const end = isWith ? after.length : endOfRemark(after, from);
  const remark = after.slice(start, end);
  // A unit that has lost its number, and no place on the way: `at the turn`.
  if (
    remark.some(
      (piece, i) =>
        UNITS.has(piece.text) &&
        !(/^turns?$/.test(piece.text) && /^(?:the|each|every)$/.test(after[start + i - 1]?.text ?? '')),
    )
  )
    return undefined;
  const loaded =
    turnsBehind(remark) ||
    // `3 exhaust had none`: the number says which.
    remark.some(({ text: word }) => word === 'none') ||
    remark.some(({ text: word }) => OWN.test(word)) ||
    remark.some(({ kind }) => /[tw?k"]/.test(kind)) ||
    (!isWith && remark.some(({ kind }) => kind === 'n'));
  if (loaded) return undefined;
  const rest = [...after.slice(0, start), ...after.slice(end)];
  return { rest, remark: said(remark, text).replaceAll('"', '') };
}

/** An oil, or where the selector stood: no remark, but something that was not understood where it is. */
const OWN = /^(?:\d+w-?\d+|neutral|park|drive|reverse|ahead|astern|gear)$/;

/** A remark goes on to the next name, place or condition. */
function endOfRemark(after: readonly Piece[], from: number): number {
  let end = from;
  while (end < after.length && /[rxhofa]/.test((after[end] as Piece).kind)) end++;
  while (end > from && after[end - 1]?.kind === 'f') end--;
  return end;
}
