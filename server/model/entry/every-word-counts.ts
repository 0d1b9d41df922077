/**
 * Every word counts: which words and numbers of a line have no part in its meaning. A line with one left over says something
 * else than what was read of it, and nothing of it may hold.
 */
import { isEmpty, KIND, type Line, runSpan, type Span, tokenSpan } from '../../../grammar/index.ts';
import { unitById } from '../../trade/measure/units.ts';
import type { PlaceKind, Quantity } from '../../trade/vocabulary/quantity.ts';
import { findQuantity, PLACE_WORDS } from '../../trade/vocabulary/vocabulary.ts';
import { LOOKS, REMARKS, STATES } from '../spoken/lexicon.ts';
import type { Condition, Entry, QuantityEntry, SectionKind, Statement } from './entry.ts';
import { isLoaded, namesAnother } from './text-words.ts';
import type { Amount, Value, Word } from './value.ts';

/** Words, numbers and signs without a part in what the entry means; empty where the line is wholly accounted for. */
export function unaccounted(entry: Entry, section?: SectionKind): readonly Word[] {
  if (entry.kind === 'spoken' || entry.kind === 'asked') return [];
  const stray = [...strayIn(entry.line), ...brokenTime(entry)];
  switch (entry.kind) {
    case 'setting':
    case 'reading':
    case 'fact':
    case 'limit':
    case 'target':
      return [...inQuantity(entry, section), ...numbersLeft(entry), ...stray];
    case 'row':
    case 'want':
      return stray;
    case 'unknown':
      return [...entry.words, ...stray];
    default:
      return stray;
  }
}

function strayIn(line: Line): readonly Word[] {
  const { stray } = line.syntax;
  return isEmpty(stray) ? [] : [wordAt(line, runSpan(line, stray))];
}

/** `+` alone, which is no time. */
const brokenTime = ({ time, line }: Entry): readonly Word[] =>
  time !== undefined && /^\+/.test(time) && !/\d\D*\p{L}/u.test(time)
    ? [wordAt(line, runSpan(line, line.syntax.time))]
    : [];

const wordAt = (line: Line, span: Span): Word => ({ text: line.text.slice(span.from, span.to), span });

function inQuantity(entry: QuantityEntry, section: SectionKind | undefined): readonly Word[] {
  const { quantity, statements: said, line } = entry;
  if (said.every((each) => isEmptySaid(each)) && !entry.text) return [wordAt(line, entry.name)];
  if (quantity.form === 'text') return inText(entry, section);
  return said.flatMap((each) => inSaid(line, each, quantity));
}

const isEmptySaid = ({ values, points, words, conditions }: Statement): boolean =>
  values.length + points.length + words.length + conditions.length === 0;

function inSaid(line: Line, said: Statement, quantity: Quantity): readonly Word[] {
  const values = [...said.values, ...said.points.map(({ value }) => value)];
  const isUnsaid =
    quantity.name === 'timing' && said.conditions.length + said.words.length === 0 && !values.some(hasUnit);
  return [
    // A lamp shows something at every speed: a bare number may be the initial timing or any other.
    ...wordsOf(line, isUnsaid ? values : []),
    // `timing set 12` is what was set, and no light was read.
    ...(quantity.name === 'timing' ? said.words.filter(({ text }) => /^set$/i.test(text)) : []),
    // An idle is no reading at another speed.
    ...wordsOf(line, quantity.name === 'idle' ? said.conditions.filter(isSpeed) : []),
    ...wrongPlace(said, quantity),
    ...wordsOf(line, valuesOver(said, quantity)),
    ...wordsOf(
      line,
      values.filter((value) => isOddCount(value, quantity) || !fits(value, quantity)),
    ),
    ...said.words.filter(
      (word) => !isSelf(word, quantity) && (!isRemark(word, quantity) || isNameBefore(word, said)),
    ),
    ...said.conditions.flatMap((condition) => inCondition(line, condition)),
    ...wordsOf(line, said.conditions.filter(isSpeed).slice(1)),
  ];
}

/** Numbers that stand in no value, place, name or condition; of `68 -> 67` and `1/4 in to 3/8 in` the first is what was. */
function numbersLeft({ line, statements: said, name, quantity, text }: QuantityEntry): readonly Word[] {
  if (quantity.form === 'text' && text !== undefined) return [];
  const isStep =
    quantity.kind !== 'reading' && (line.tokens.kinds.includes(KIND.Arrow) || /\bto\b/i.test(line.text));
  if (isStep) return [];
  const used = [name, ...said.flatMap(spansOf)];
  return [...line.tokens.kinds].flatMap((kind, token) => {
    if (!NUMBER_KINDS.includes(kind) || token < line.syntax.time[1]) return [];
    const span = tokenSpan(line, token);
    return used.some(({ from, to }) => span.from >= from && span.to <= to) ? [] : [wordAt(line, span)];
  });
}

const NUMBER_KINDS = [KIND.Number, KIND.Fraction, KIND.Mixed, KIND.CommaNumber].join('');

const wordsOf = (line: Line, pieces: readonly { readonly span: Span }[]): readonly Word[] =>
  pieces.map(({ span }) => wordAt(line, span));

const spansOf = ({ values, points, words, conditions, place }: Statement): readonly Span[] => [
  ...[...values, ...points, ...words, ...conditions].map(({ span }) => span),
  ...(place ? [place.span] : []),
];

const hasUnit = (value: Value): boolean => value.form === 'amount' && value.unit !== undefined;

/** A place that the word does not take; `lower` may always be how much as well as where. */
function wrongPlace({ place }: Statement, { places = [] }: Quantity): readonly Word[] {
  if (!place) return [];
  const words = place.text.split(' ');
  const kinds = words.map((word) => (word.startsWith('#') ? 'cylinder' : PLACE_WORDS.get(word)));
  const isWhole = PLACE_WORDS.get(place.text);
  const isKnown = isWhole
    ? takes(places, isWhole)
    : kinds.every((kind) => kind === undefined || takes(places, kind));
  const isMixed =
    !isWhole &&
    (kinds.filter((kind) => kind === 'valve').length > 1 ||
      (kinds.includes('cylinder') && kinds.some((kind) => kind !== 'cylinder')));
  return isKnown && !isMixed && place.text !== 'lower' ? [] : [place];
}

/** A side may be that of a carburettor or a bank. */
const takes = (places: readonly PlaceKind[], kind: PlaceKind): boolean =>
  places.includes(kind) ||
  (kind === 'side' && (places.includes('carburettor') || places.includes('bank'))) ||
  (kind === 'carburettor' && places.includes('side'));

/** Numbers beyond the one that a quantity without cylinders takes; two of a setting, or with a word between, are no list. */
function valuesOver(
  { values, words }: Statement,
  { form, places, name, kind, traits }: Quantity,
): readonly Value[] {
  const amounts = values.filter((value) => value.form === 'amount');
  const [first] = amounts;
  const last = amounts.at(-1);
  if (form === 'curve') return amounts.slice(1);
  if (form !== 'number' || !first || !last || amounts.length < 2) return [];
  const isList = places?.includes('cylinder') || traits?.list === true;
  const isTorn = words.some(({ span }) => span.from > first.span.from && span.to < last.span.to);
  const isChange = amounts.some(({ relative }) => relative !== undefined);
  const isPair = amounts.length === 2 && (kind === 'setting' || name === 'depression');
  return isList && !isTorn && !isChange && !isPair ? [] : amounts.slice(1);
}

/** A number that could be read, in a unit that the quantity takes. */
function fits(value: Value, quantity: Quantity): boolean {
  if (value.form === 'text') return true;
  if (value.form === 'order') return quantity.form === 'order';
  if (value.form !== 'amount') return false;
  return value.interval !== undefined && unitFits(value, quantity);
}

/** `idle 1.050`: nobody counts thousandths of a turn, and what looks like them is a thousand; `pv 65` is a valve for 6.5. */
function isOddCount(value: Value, { name, dimension }: Quantity): boolean {
  if (value.form !== 'amount' || !value.interval || value.relative) return false;
  const { low, high } = value.interval;
  if (dimension === 'rotation') return low < 20 && !Number.isInteger(low) && high < 20;
  return name === 'power valve' && low > 12 && !value.unit;
}

function unitFits({ unit, relative, interval, span, numberSpan }: Amount, quantity: Quantity): boolean {
  if (quantity.form === 'several')
    return quantity.parts?.some(({ dimension }) => dimension === unit?.dimension) ?? false;
  const isFar = (relative === 'in' || relative === 'out') && (interval?.high ?? 0) > FARTHEST;
  const isSignedRange = relative === 'more' && interval !== undefined && interval.low !== interval.high;
  if (isFar || !changeFits(isSignedRange ? 'less' : relative, numberSpan.from - span.from <= 1, quantity))
    return false;
  if (!unit) return quantity.bare === true || quantity.unit === undefined || quantity.dimension === 'number';
  if (unit.dimension === quantity.dimension) return true;
  if (!quantity.orIn?.includes(unit.dimension)) return false;
  // A jet is no larger than an inch.
  return (
    unit.dimension !== 'length' ||
    quantity.dimension !== 'number' ||
    (interval?.high ?? 0) * unit.factor <= unitById('in').factor
  );
}

/** Turns that a screw goes in or out at most. */
const FARTHEST = 10;

/** Only screws and what is counted in steps go in and out; a reading has at most a sign, straight before its number. */
function changeFits(relative: Amount['relative'], isJoined: boolean, { kind, dimension }: Quantity): boolean {
  if (relative === undefined) return true;
  const isTurned = relative === 'in' || relative === 'out';
  if (kind === 'setting') return !isTurned || dimension === 'turns' || dimension === 'steps';
  return relative === 'less' && isJoined;
}

/** A word that may stand beside a value and says how or when it was read. */
const isRemark = ({ text }: Word, { words }: Quantity): boolean => {
  const lower = text.toLowerCase();
  return (words?.includes(lower) ?? false) || REMARKS.has(lower) || STATES.has(lower);
};

/** `timing 11 deg initial`: what it was resolved to. */
const isSelf = ({ text }: Word, { name }: Quantity): boolean => text.toLowerCase() === name;

const isSpeed = ({ value }: Condition): boolean =>
  value?.interval !== undefined &&
  (value.unit?.dimension === 'rotation' || (!value.unit && value.interval.low >= 200));

/** `hours idle 850`: a word of the trade before the number may be what it is of. */
const isNameBefore = ({ text, span }: Word, { values }: Statement): boolean =>
  /^(?:idle|speed|throttle|road|load|water|oil|head|air|fuel|exhaust)$/i.test(text) &&
  values.some((value) => value.span.from > span.from);

function inCondition(line: Line, { value, words, span }: Condition): readonly Word[] {
  if (value)
    return value.interval && !value.relative && (value.unit || value.interval.high >= 200)
      ? []
      : [wordAt(line, span)];
  if (words.length === 0) return [wordAt(line, span)];
  return words.filter(({ text }) => !STATES.has(text.toLowerCase()) && !REMARKS.has(text.toLowerCase()));
}

/** Text in quotes is text; bare words are, where they name nothing, change nothing and complain of nothing. */
function inText(
  { quantity, statements: said, line, text, name }: QuantityEntry,
  section: SectionKind | undefined,
): readonly Word[] {
  // A word of the notebook's own without a unit takes any text.
  if (findQuantity(quantity.name.split(' '))?.quantity !== quantity) return [];
  const values = said.flatMap((each) => each.values);
  const elsewhere = said.flatMap((each) => wrongPlace(each, quantity));
  if (elsewhere.length > 0) return elsewhere;
  if (values.some((value) => value.form === 'text')) return besideQuotes(said, quantity);
  const counted = said.flatMap((each) => each.conditions).filter(({ value }) => value !== undefined);
  // `plugs gapped at .040`: a number is no text.
  if (counted.length > 0 && quantity.kind === 'setting') return wordsOf(line, counted);
  const words = said.flatMap((each) => [
    ...each.words,
    ...each.conditions.flatMap((condition) => condition.words),
  ]);
  const known = words.every((word) => isRemark(word, quantity)) && values.length === 0;
  if (known) return [];
  const measured = values.find((value) => value.form === 'amount' && value.unit !== undefined);
  if (measured) return [wordAt(line, measured.span)];
  const isDescribed = section === 'engine' || section === 'vehicle';
  const isGraded = quantity.name === 'oil grade' && /\bsae\b|\dw\b/i.test(text ?? '');
  if (!isDescribed && !isGraded && SWITCHED.has(quantity.name) && values.some(isNumber))
    return [wordAt(line, values[0]?.span ?? name)];
  // Of what the word knows its own names for, any other word is something else that happened.
  if (quantity.words && section === 'session') return words.filter((word) => !isRemark(word, quantity));
  if (quantity.kind === 'fact' && section === 'session') return [wordAt(line, name)];
  if (quantity.name === 'plug')
    return [
      ...words.filter(({ text: word }) => !LOOKS.has(word.toLowerCase())),
      ...wordsOf(line, values.filter(isNumber)),
    ];
  const left = words.filter(
    (word, i) => isLoaded(word.text) || namesAnother(words, i, quantity, values.some(isNumber)),
  );
  return text === '' ? [wordAt(line, name)] : left;
}

const besideQuotes = (said: readonly Statement[], quantity: Quantity): readonly Word[] =>
  said
    .flatMap((each) => each.words)
    .filter(
      (word) =>
        !isRemark(word, quantity) && !(quantity.name === 'plug' && LOOKS.has(word.text.toLowerCase())),
    );

const isNumber = (value: Value): boolean => value.form === 'amount';

/** Words of the trade that are text by themselves and a reading by their unit: a bare number may be either. */
const SWITCHED: ReadonlySet<string> = new Set(
  'needle, oil grade, coolant, exhaust, head, transmission, fuel, fuel pump, plug type, coil, plug leads, knock, smoke, tyre, starting, hesitation, spark, lift pin, throttle linkage'.split(
    ', ',
  ),
);
