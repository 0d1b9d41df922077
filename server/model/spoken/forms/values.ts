/** Forms of a clause that gives numbers: before or after their word, in a list, changed by so much. */
import type { SpokenAmount } from '../spoken-amount.ts';
import type { Clause } from '../clauses.ts';
import type { Context, Fact, Form, Meaning } from '../form.ts';
import { type Frame, framesOf } from '../frames.ts';
import { sizeOf } from '../numbers.ts';
import type { Fit } from '../resolve.ts';
import { fitsOf } from '../resolve.ts';
import { LOOKS } from '../lexicon.ts';
import { PLACE_WORDS } from '../../../trade/vocabulary.ts';
import type { PlaceKind, Quantity } from '../../../trade/quantity.ts';
import { directionOf, fitsOfFrame } from '../subjects.ts';

export const VALUES: readonly Form[] = [
  {
    name: 'a list of readings, one for each cylinder',
    pattern: 'any* amount any* amount any*',
    means: list,
    examples: [
      ['comps 148 151 145 150', 'compression 148 151 145 150 psi', { cylinders: 4, units: 'us' }],
      [
        'compression cold 9,8 / 9,6 / 9,1 / 9,7 bar',
        'compression 9.8 9.6 9.1 9.7 bar cold',
        { cylinders: 4 },
      ],
    ],
  },
  {
    name: 'two numbers for a pair of places',
    pattern: 'filler|name|colon|change|comparison* amount slash|and amount any*',
    means: pair,
    examples: [
      [
        '5/5 on the meter',
        'carburettor balance front carb 5, rear carb 5',
        { places: ['front carb', 'rear carb'] },
      ],
    ],
  },
  {
    name: 'over which speeds, and how long it took',
    pattern: 'name? amount state? amount any*',
    means: run,
    examples: [['0-50 17.2', 'run time 17.2 s "0 to 50"']],
  },
  {
    name: 'the speed at which it hesitates or knocks',
    pattern: 'filler* amount filler*',
    means: atSpeed,
    examples: [['flat spot off the line, 1500 or so', 'hesitation "flat spot off the line" @ ~1500 rpm']],
  },
  {
    name: 'a new plug where one was taken out',
    pattern: 'remark filler* change',
    means: newPlug,
    examples: [['plug 4 white, new one in', 'plug #4 white | plug type #4 "new"', { cylinders: 4 }]],
  },
  {
    name: 'only these cylinders',
    pattern: 'filler|remark+ amount any amount',
    means: only,
    examples: [
      ['mixture 1 1/2 turns, only 2 and 3', 'mixture #2 1 1/2 turns, #3 1 1/2 turns', { cylinders: 4 }],
    ],
  },
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
      ['dwell 40 no 39', 'dwell 39 deg'],
    ],
  },
];

function values(clause: Clause, context: Context): Meaning | undefined {
  const frames = framesOf(
    clause.filter(({ kind }) => kind !== ':' && kind !== '='),
    context.text,
  );
  if (!frames) return undefined;
  const facts: Fact[] = [];
  let names = context.names;
  let corrects = false;
  let unit: SpokenAmount['unit'];
  const told = frames.filter((frame) => frame.of !== 'book');
  for (const [i, frame] of told.entries()) {
    const fact = factOf(frame, {
      ...context,
      names,
      unit: unit ?? context.unit,
      facts: [...context.facts, ...facts],
    });
    const last = facts.at(-1);
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
      return { note: textOf(clause, context), ...(subject && { names: subject }) };
    }
    if (!fact) return undefined;
    if (frame.corrects && facts.length > 0) facts.pop();
    else if (frame.corrects && i === 0) corrects = true;
    facts.push(fact);
    names = [fact.name];
    unit = frame.amount.unit ?? unit;
  }
  const place = frames.at(-1)?.place;
  if (told.length === 0) return { ...(names && { names }) };
  return {
    facts,
    ...(names && { names }),
    ...(unit && { unit }),
    ...(place && { place }),
    ...(corrects && { corrects }),
  };
}

/** `from 8 to 10` of a setting is where it is now; without `from` it may be a range too. Of a reading, nobody can say. */
function stepOf(
  { amount, changes }: Frame,
  { quantity, value, name }: Fit,
): { readonly value: string; readonly others: readonly string[] } | 'unclear' | undefined {
  if (!amount.isStep || !amount.high) return undefined;
  if (quantity.kind !== 'setting') return amount.isStep === 'from' ? 'unclear' : undefined;
  const now = value.replace(/^[^.]*?\.\.(?=[\d.])|^\S*?\.\.(?=[\d.])/, '');
  const isMoved = amount.isStep === 'from' || changes.length > 0;
  return { value: now, others: isMoved ? [] : [`${name} ${value}`] };
}

/** `76 sec` of a jet is the secondary one. */
const placeIn = ({ place, amount }: Frame, { quantity }: Fit, context: Context): string | undefined =>
  amount.unitText === 'sec' && quantity.places?.includes('barrel')
    ? 'secondary'
    : place && placeFor(place, context);

function factOf(frame: Frame, context: Context): Fact | 'counted' | undefined {
  if (frame.counts && !frame.names && frame.states.length === 0 && !frame.place) return 'counted';
  const fits = fitsOfFrame(frame, context);
  const [fit] = fits;
  if (!fit && frame.isIdleWord)
    return factOf(
      { ...frame, names: undefined, isIdleWord: false, states: [...frame.states, 'at idle'] },
      context,
    );
  if (!fit) return isAside(frame) ? 'counted' : undefined;
  const step = stepOf(frame, fit);
  if (step === 'unclear') return undefined;
  const value = step?.value ?? changed(frame, fit);
  if (!value || isOfAnother(frame, fit, context) || isElsewhere(frame, fit)) return undefined;
  return {
    name: fit.name,
    place: placeIn(frame, fit, context),
    value,
    states: fit.name === 'idle' ? frame.states.filter((state) => state !== 'at idle') : frame.states,
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

/** A place that the word does not take, or the look of a plug beside its gap. */
function isElsewhere({ place, remark, names }: Frame, { quantity, name }: Fit): boolean {
  const isLook = name === 'plug gap' && names?.includes('plug gap') && remark.split(/\W+/).some((word) => LOOKS.has(word));
  if (isLook) return true;
  if (!place) return false;
  const kinds = place.split(' ').map((word) => (word.startsWith('#') ? 'cylinder' : PLACE_WORDS.get(word)));
  const isCarb = / carb$/.test(place);
  return isCarb ? !quantity.places?.includes('carburettor') : !kinds.every((kind) => kind && takes(quantity, kind));
}

/** Front and rear are sides, and so are carburettors of a pair. */
const takes = ({ places = [] }: Quantity, kind: PlaceKind): boolean =>
  places.includes(kind) || (kind === 'side' && places.includes('carburettor'));

/** `opened the rear screw 1/4 turn, both 5`: a bare number after a change is of something else. */
function isOfAnother({ names, amount, isWhole, place }: Frame, { name }: Fit, { facts }: Context): boolean {
  const last = facts.at(-1);
  if (names || amount.unit || !last || last.name !== name || !/^(?:[+-]|in |out )/.test(last.value))
    return false;
  return !isWhole || last.place !== place;
}

/** `1 1/2, no 1 5/8` may be a correction or cylinder 1; a lamp shows something at every speed. */
function besides(
  { corrects, amount, states, remark }: Frame,
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
  const isUnsaid = name === 'timing' && states.length === 0 && remark === '' && !amount.unit;
  return isUnsaid ? [`${name} ${value} at idle`, `initial ${value}`] : [];
}

/** `41 mi`, `up in 8 seconds`: how far or how long, where nothing is said that takes it. */
const isAside = ({ amount, names }: Frame): boolean =>
  amount.unit !== undefined &&
  (amount.unit.dimension === 'time' || (amount.unit.dimension === 'distance' && !names));

/** `front` is the front carburettor where the notebook has one. */
export const placeFor = (place: string, { habits: { places = [] } }: Pick<Context, 'habits'>): string =>
  places.includes(`${place} carb`) ? `${place} carb` : place;

/** The value, or how far it was changed; undefined where a change cannot be counted. */
function changed({ changes, isWhole, changeAfter, amount, remark }: Frame, fit: Fit): string | undefined {
  if (changes.length === 0 || isWhole) return fit.value;
  if (changes.every((word) => word === 'changed' || word === 'adjusted' || word === 'reset'))
    return fit.value;
  if (isUsedUp(fit, changes)) return fit.value;
  const direction = directionOf(fit, changes);
  if (isFar(fit, amount)) return undefined;
  if (fit.quantity.kind !== 'setting') return undefined;
  if (!direction || amount.high || amount.prefix) return undefined;
  const size = sizeOf(amount.low[0] as string);
  // `1 3/4 turns out` is where a screw stands, `1/8 out` how far it went.
  if (
    changeAfter &&
    fit.quantity.dimension === 'turns' &&
    fit.name !== 'idle screw' &&
    size > 0.5 &&
    !/\bmore\b/.test(remark)
  )
    return size >= 0.75 && amount.unit?.id !== 'flat' ? fit.value : undefined;
  return `${direction}${fit.value}`;
}

/** No change goes over a great part of what a setting can be; of a float, up and down may mean either. */
const isFar = ({ quantity, name }: Fit, { low, unit }: SpokenAmount): boolean => {
  if (name.startsWith('float')) return true;
  const { band } = quantity;
  if (!band || (unit && unit.id !== quantity.unit)) return false;
  const share = quantity.dimension === 'number' ? 10 : 3;
  return sizeOf(low[0] as string) > (band.high - band.low) / share;
};

/** `planes in 6 secs`, `put 18 gal in`. */
const isUsedUp = ({ quantity }: Fit, changes: readonly string[]): boolean =>
  (quantity.dimension === 'time' || quantity.name === 'fuel used') && changes.every((word) => word === 'in');

function list(clause: Clause, context: Context): Meaning | undefined {
  const numbers = clause.filter(({ kind }) => kind === 'v');
  const { cylinders } = context.habits;
  if (numbers.length < 3 || (cylinders !== undefined && numbers.length !== cylinders)) return undefined;
  const inner = clause.slice(
    clause.findIndex(({ kind }) => kind === 'v'),
    clause.findLastIndex(({ kind }) => kind === 'v'),
  );
  if (inner.some(({ kind }) => !/[v/,fa]/.test(kind)) || clause.some(({ kind }) => /[twk?o]/.test(kind)))
    return undefined;
  const last = numbers.at(-1)?.amount;
  const names = clause.find(({ kind }) => kind === 'n')?.names ?? context.names;
  if (!last || !names || clause.filter(({ kind }) => kind === 'n').length > 1) return undefined;
  const each = numbers.map(
    ({ amount }) =>
      amount &&
      fitsOf(names, { ...amount, unit: amount.unit ?? last.unit, unitText: last.unitText }, context.habits),
  );
  const first = each[0]?.[0];
  if (!first || each.some((fits) => fits?.length !== 1 || fits[0]?.name !== first.name)) return undefined;
  if (!first.quantity.places?.includes('cylinder') && first.name !== 'depression') return undefined;
  const unit = /\d ?([^\d]*)$/.exec(first.value)?.[1] ?? '';
  const size = (value: string) => value.slice(0, value.length - unit.length).trim();
  const text = `${each.map((fits) => size(fits?.[0]?.value ?? '')).join(' ')} ${unit}`.trim();
  const remark = clause
    .filter(({ kind }) => kind === 'r')
    .map((piece) => piece.text)
    .join(' ');
  const states = clause.filter(({ kind }) => kind === 'g').map((piece) => piece.text);
  const isIdle = first.name === 'depression' && states.length === 0;
  const separate = first.quantity.kind === 'setting';
  const facts: Fact[] = separate
    ? each.map((fits, i) => ({
        name: first.name,
        place: `#${i + 1}`,
        value: fits?.[0]?.value ?? '',
        states,
        remark,
        of: 'now',
        others: [],
      }))
    : [
        {
          name: first.name,
          place: undefined,
          value: text,
          states: isIdle ? ['at idle'] : states,
          remark,
          of: 'now',
          others: [],
        },
      ];
  return { facts, names: [first.name] };
}

/** The two places that a pair is given for: those of the notebook, or those the word itself has. */
function pair(clause: Clause, context: Context): Meaning | undefined {
  const numbers = clause.filter(({ kind }) => kind === 'v');
  const [one, other, ...more] = numbers;
  if (!one?.amount || !other?.amount || more.length > 0) return undefined;
  const names = clause.find(({ kind }) => kind === 'n')?.names ?? context.names;
  if (!names || clause.some(({ kind }) => /[twqkpo?]/.test(kind))) return undefined;
  const unit = other.amount.unit ?? one.amount.unit;
  const unitText = other.amount.unitText || one.amount.unitText;
  const [first, second] = [one, other].map(
    ({ amount }) =>
      amount &&
      fitsOf(names, { ...amount, unit, unitText }, context.habits).find((fit) => pairOf(fit, context)),
  );
  const places = first && pairOf(first, context);
  if (!first || !second || first.name !== second.name || !places) return undefined;
  const states = clause.filter(({ kind }) => kind === 'g').map((piece) => piece.text);
  const remark = clause
    .filter(({ kind }) => kind === 'r')
    .map((piece) => piece.text)
    .join(' ');
  const facts = [first, second].map(
    (fit, i): Fact => ({
      name: fit.name,
      place: places[i],
      value: fit.value,
      states,
      remark,
      of: 'now',
      others: [],
    }),
  );
  return { facts, names: [first.name] };
}

function pairOf(
  { quantity }: Fit,
  { habits: { places = [] } }: Context,
): readonly [string, string] | undefined {
  if (quantity.places?.includes('valve')) return ['inlet', 'exhaust'];
  const [one, other, ...more] = places;
  if (one && other && more.length === 0 && quantity.places?.includes('carburettor')) return [one, other];
  if (quantity.name === 'main jet' && places.length === 0) return ['primary', 'secondary'];
  return undefined;
}

/** From one speed to another, then seconds. */
function run(clause: Clause, context: Context): Meaning | undefined {
  const withAt = clause.findIndex(({ kind }) => kind === 'h');
  const [over, time, ...more] = clause
    .slice(0, withAt < 0 ? clause.length : withAt)
    .filter(({ kind }) => kind === 'v');
  const name = clause.find(({ kind }) => kind === 'n')?.names[0];
  if (!over?.amount?.high || !time?.amount || more.length > 0 || (name && name !== 'run time'))
    return undefined;
  const speeds = [over.amount.low[0], over.amount.high[0]].map((each) => sizeOf(each as string));
  const isSpeeds = speeds.every((speed) => speed % 5 === 0 && speed <= 250) && over.amount.link === '..';
  const unit = over.amount.unit;
  const [fit] = fitsOf(['run time'], time.amount, context.habits);
  if (!isSpeeds || !fit || (unit && unit.dimension !== 'road speed') || time.amount.high) return undefined;
  if (clause.some(({ kind }) => /[tw?kqpo]/.test(kind))) return undefined;
  const states = clause.filter(({ kind }) => kind === 'g').map((piece) => piece.text);
  const tail = clause.slice(clause.indexOf(time) + 1).filter(({ kind }) => kind !== 'g');
  const said = tail.length > 0 ? `, ${textOf(tail, context)}` : '';
  const remark = `${speeds.join(' to ')}${unit ? ` ${unit.symbol}` : ''}${said}`;
  return {
    facts: [{ name: 'run time', place: undefined, value: fit.value, states, remark, of: 'now', others: [] }],
    names: ['run time'],
  };
}

/** A number alone after what is told in words. */
function atSpeed(clause: Clause, { facts }: Context): Meaning | undefined {
  const amount = clause.find(({ kind }) => kind === 'v')?.amount;
  const isWorded = /^(?:hesitation|knock)$/.test(facts.at(-1)?.name ?? '');
  if (
    !amount ||
    !isWorded ||
    (amount.unit && amount.unit.id !== 'rpm') ||
    sizeOf(amount.low.at(-1) as string) < 400
  )
    return undefined;
  const number = amount.high ? `${amount.low[0]}..${amount.high[0]}` : amount.low.at(-1);
  return { states: [`@ ${amount.prefix}${number} rpm`] };
}

function newPlug(clause: Clause, { facts }: Context): Meaning | undefined {
  const last = facts.at(-1);
  if (last?.name !== 'plug' || !last.place || clause[0]?.text !== 'new' || clause.at(-1)?.text !== 'in')
    return undefined;
  return { facts: [{ ...last, name: 'plug type', value: '"new"' }] };
}

/** The fact before it was of these cylinders alone. */
function only(clause: Clause, { facts, habits }: Context): Meaning | undefined {
  const last = facts.at(-1);
  const isOnly = clause[0]?.text === 'only' || clause[0]?.text === 'just';
  const cylinders = clause.filter(({ kind }) => kind === 'v').map(({ amount }) => Number(amount?.low[0]));
  const isCylinder = (each: number) => Number.isInteger(each) && each >= 1 && each <= (habits.cylinders ?? 0);
  if (!last || last.place || !isOnly || !cylinders.every(isCylinder)) return undefined;
  return {
    corrects: true,
    facts: cylinders.map((cylinder) => ({ ...last, place: `#${cylinder}` })),
    names: [last.name],
  };
}

const textOf = (clause: Clause, { text }: Context): string =>
  text.slice((clause[0] as Clause[number]).from, (clause.at(-1) as Clause[number]).to);
