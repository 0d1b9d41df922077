/** Forms of a clause that gives numbers: before or after their word, in a list, changed by so much. */
import { findQuantity } from '../../../trade/vocabulary/vocabulary.ts';
import { type Clause, textOf } from '../clauses.ts';
import type { Context, Fact, Form, Meaning } from '../form.ts';
import { type Frame, framesOf } from '../frames.ts';
import { sizeOf } from '../numbers.ts';
import type { Fit } from '../resolve.ts';
import type { SpokenAmount } from '../spoken-amount.ts';
import { FLAT_OUT, fitsOfFrame } from '../subjects.ts';
import { changed, stepOf } from './changes.ts';
import { isElsewhere, isOfAnother, isSameAgain, placeIn } from './places.ts';

export const VALUES: readonly Form[] = [
  {
    name: 'numbers with their words',
    pattern: 'any* amount any*',
    means: values,
    examples: [
      ['12 initial, 22 mech, 34 all in', 'initial 12 deg | mechanical limit 22 deg | total 34 deg'],
      ['idle 720ish', 'idle ~720 rpm'],
      ['tickover 7 to 800', 'idle 700..800 rpm'],
      ['650 fwd 780 N', 'idle 650 rpm in ahead | idle 780 rpm in neutral'],
      ['oil 50 cold, 28 hot', 'oil pressure 50 psi cold | oil pressure 28 psi hot', { units: 'us' }],
      ['bumped initial to 12', 'initial 12 deg'],
      ['retarded 2', 'initial -2 deg'],
      ['water 176 after half an hour', '+30 min  water 176 F', { units: 'us' }],
      ['water 176 ran it 35 min', '+35 min  water 176 F', { units: 'us' }],
      ['dwell 40 no 39', 'dwell 39 deg'],
    ],
  },
];

function values(clause: Clause, context: Context): Meaning | undefined {
  const frames = framesOf(
    clause.filter(({ kind }) => !/[:=,-]/.test(kind)),
    context.text,
  );
  if (!frames) return undefined;
  const facts: Fact[] = [];
  let names = context.names;
  let corrects = false;
  let unit: SpokenAmount['unit'];
  if (frames.some((frame, i) => isTorn(frames[i - 1], frame))) return undefined;
  const told = frames.filter((frame) => frame.of !== 'book');
  // `no` puts a number right only where one stands before it.
  if (told[0]?.corrects && context.facts.length === 0) return undefined;
  for (const [i, frame] of told.entries()) {
    const fact = factOf(withUnit(frame, unitAhead(told, i)), {
      ...context,
      names,
      unit: unit ?? (told.slice(0, i + 1).some((each) => each.names) ? undefined : context.unit),
      facts: [...context.facts, ...facts],
    });
    const last = facts.at(-1);
    // `1.75 pass side` after `1.5 driver side`: it may be one more of the same.
    if (fact === 'counted' && !frame.amount.unit && isLike(frame, last ?? context.facts.at(-1)))
      return undefined;
    if (fact === 'counted' && last && !(frame.amount.unit && told[i - 1]?.changes.includes('in')))
      return undefined;
    if (fact === 'counted' && last) {
      const remark = [last.remark, `in ${frame.written}`].filter(Boolean).join(' ');
      facts[facts.length - 1] = { ...last, remark };
      continue;
    }
    if (fact === 'counted') {
      if (frames.length > 1) return undefined;
      const subject = frame.names ?? context.names;
      return { note: textOf(clause, context.text), ...(subject && { names: subject }) };
    }
    if (!fact) return undefined;
    if (!frame.corrects && facts.some((each) => isSameAgain(each, fact))) return undefined;
    if (frame.corrects && facts.length > 0) facts.pop();
    else if (frame.corrects && i === 0) corrects = true;
    facts.push(fact);
    names = [fact.name];
    unit = frame.amount.unit ?? unit;
  }
  const place = frames.at(-1)?.place;
  const synced = inSync(facts);
  if (told.length === 0) return { ...(names && { names }) };
  return {
    facts: synced,
    ...(names && { names }),
    ...(unit && { unit }),
    ...(place && { place }),
    ...(corrects && { corrects }),
  };
}

function factOf(frame: Frame, context: Context): Fact | 'counted' | undefined {
  // `fat on 1`: of what came before, or of something nobody knows.
  if (frame.isLed && !frame.names && !frame.amount.unit) return undefined;
  if (isCount(frame, context)) return 'counted';
  const fits = fitsOfFrame(frame, context).filter((each) => !isElsewhere(frame, each));
  const [fit] = fits;
  if (!fit && frame.isIdleWord)
    return factOf(
      { ...frame, names: undefined, isIdleWord: false, states: [...frame.states, 'at idle'] },
      context,
    );
  if (!fit) return isAside(frame, context) ? 'counted' : undefined;
  const step = stepOf(frame, fit);
  if (step === 'unclear') return undefined;
  const value = step?.value ?? changed(frame, fit);
  if (!value || isOfAnother(frame, fit, context)) return undefined;
  return {
    name: fit.name,
    place: placeIn(frame, fit, context),
    value,
    states: frame.states.filter((state) => !isInName(fit.name, state)),
    remark: frame.remark,
    of: frame.of,
    isMoved: frame.isWhole && (frame.changes.length > 0 || frame.corrects),
    others: [
      ...(step?.others ?? []),
      ...fits.slice(1).map((each) => `${each.name} ${changed(frame, each) ?? each.value}`),
      ...besides(frame, fit, context),
    ],
  };
}

/** `2 aboard`; but `165, 175 trolling` is one more of the same. */
function isCount(frame: Frame, context: Context): boolean {
  if (!frame.counts || frame.names || frame.states.length > 0 || frame.place) return false;
  const last = context.facts.at(-1);
  const isReading = last !== undefined && findQuantity(last.name.split(' '))?.quantity.kind === 'reading';
  const isCounted = /^\p{L}+[^s\P{L}]s\b/u.test(frame.remark);
  return !(isReading && !isCounted && (frame.isWhole || isLike(frame, last)));
}

/** A number about as large as the one before it. */
function isLike({ amount }: Frame, last: Fact | undefined): boolean {
  const before = /[\d.]+(?: \d+\/\d+)?/.exec(last?.value ?? '')?.[0];
  if (!before) return false;
  const [one, other] = [sizeOf(before), sizeOf(amount.low[0] as string)];
  return other >= one / 3 && other <= one * 3;
}

const isInName = (name: string, state: string): boolean =>
  (name === 'idle' && state === 'at idle') || (name === 'wide open speed' && FLAT_OUT.has(state));

/** `1 1/2, no 1 5/8` may be a correction or cylinder 1; a lamp shows something at every speed. */
function besides(
  { corrects, amount, states, remark, nameText, place, changes, changeAfter, isWhole }: Frame,
  { name, value, quantity }: Fit,
  { habits }: Context,
): readonly string[] {
  const cylinder = /^(\d+) (\d+\/\d+)/.exec(amount.low[0] ?? '');
  if (
    corrects &&
    cylinder &&
    Number(cylinder[1]) <= (habits.cylinders ?? 16) &&
    quantity.places?.includes('cylinder')
  )
    return [`${name} #${cylinder[1]} ${cylinder[2]} ${amount.unit?.symbol ?? ''}`.trim()];
  // One tyre, and which is not said.
  if (name === 'tyre pressure' && /^(?:tyre|tire)$/.test(nameText) && !place && !amount.unit && remark === '')
    return ['front', 'rear'].map((side) => `${name} ${side} ${value}`);
  // `needles down 1`: a groove further, or the groove counted.
  if (
    name === 'needle clip' &&
    changes.length > 0 &&
    !changeAfter &&
    !isWhole &&
    !amount.unit &&
    !amount.high
  )
    return [`${name} ${value}`];
  const isUnsaid = name === 'timing' && states.length === 0 && remark === '' && !amount.unit;
  return isUnsaid ? [`${name} ${value} at idle`, `initial ${value}`] : [];
}

/** `41 mi`, `up in 8 seconds`: how far or how long, where nothing is said that takes it. */
const isAside = ({ amount, names }: Frame, { facts }: Context): boolean =>
  amount.unit !== undefined &&
  ((amount.unit.id === 'L' && facts.at(-1)?.name === 'oil grade') ||
    amount.unit.dimension === 'time' ||
    (amount.unit.dimension === 'distance' && !names));

/** `L 21 R 24 cmHg`: the unit after the last holds for all that have no name of their own. */
function unitAhead(frames: readonly Frame[], at: number): SpokenAmount['unit'] {
  const rest = frames.slice(at + 1);
  const named = rest.findIndex(({ names }) => names !== undefined);
  const own = named < 0 ? rest : rest.slice(0, named);
  const isPaired = frames[at]?.place !== undefined && own.every(({ place }) => place !== undefined);
  return isPaired ? own.find(({ amount }) => amount.unit)?.amount.unit : undefined;
}

/** The vacuum of two sides beside one another is read at idle. */
const inSync = (facts: readonly Fact[]): readonly Fact[] =>
  facts.length > 1 &&
  facts.every(({ name, place, states }) => name === 'depression' && place && states.length === 0)
    ? facts.map((each) => ({ ...each, states: ['at idle'] }))
    : facts;

const withUnit = (frame: Frame, unit: SpokenAmount['unit']): Frame =>
  unit && !frame.amount.unit ? { ...frame, amount: { ...frame.amount, unit, unitText: unit.symbol } } : frame;

/** `1 was 1/2 turns`: what was has a unit, and what is has none. */
const isTorn = (before: Frame | undefined, frame: Frame): boolean =>
  before !== undefined && frame.of !== 'now' && frame.amount.unit !== undefined && !before.amount.unit;
