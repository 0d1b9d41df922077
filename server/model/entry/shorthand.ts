/**
 * Bench shorthand that a line itself makes clear: `750 in D`, `17"` of vacuum, `0.6` of a plug gap that can only be
 * millimetres. What is assumed here is marked as taken, so that a rule can report it.
 */
import { atLeast, atMost, isExact } from '../../trade/measure/interval.ts';
import { convertInterval, type Dimension, unitById } from '../../trade/measure/units.ts';
import type { Band, Quantity } from '../../trade/vocabulary/quantity.ts';
import type { Condition, Point, Statement } from './entry.ts';
import type { Amount, Value, Word } from './value.ts';

/** Statements of a line with the shorthand written out. */
export const expandShorthand = (said: Statement, quantity: Quantity): Statement => {
  if (quantity.form === 'text' || quantity.form === 'order') return said;
  const steps = [bounded, inGears, inDepression, overWhat, bySize, turnedBack, atMark];
  return steps.reduce((each, step) => step(each, quantity), said);
};

/** `min 35 psi`, `34 deg max`. */
function bounded(said: Statement): Statement {
  const [value] = said.values;
  const word = said.words.find(({ text }) => BOUNDS.get(text.toLowerCase()));
  const bound = word && BOUNDS.get(word.text.toLowerCase());
  if (!bound || said.values.length !== 1 || value?.form !== 'amount' || !value.interval) return said;
  if (value.relative || !isExact(value.interval)) return said;
  const interval = bound === 'most' ? atMost(value.interval.low) : atLeast(value.interval.low);
  return { ...said, values: [{ ...value, interval }], words: said.words.filter((each) => each !== word) };
}

const BOUNDS: ReadonlyMap<string, 'least' | 'most'> = new Map([
  ['min', 'least'],
  ['minimum', 'least'],
  ['max', 'most'],
  ['maximum', 'most'],
]);

/** The letters of a selector. */
const GEARS: ReadonlyMap<string, string> = new Map([
  ['d', 'drive'],
  ['n', 'neutral'],
  ['p', 'park'],
  ['r', 'reverse'],
]);

/** `850 in D`, `900 N`: the letter after the value is a gear, and an N no newton. */
function inGears(said: Statement, { kind, dimension }: Quantity): Statement {
  if (kind !== 'reading' || !dimension || !IN_A_GEAR.has(dimension)) return said;
  const newtons = said.values.filter(isNewton).map(({ unitSpan }) => ({ text: 'neutral', span: unitSpan }));
  if (newtons.length === 0 && !said.qualifiers.some((word) => GEARS.has(word))) return said;
  return {
    ...said,
    values: said.values.map((value) => (isNewton(value) ? withoutUnit(value) : value)),
    words: [...newtons, ...said.words.map(inFull)],
    conditions: said.conditions.map((each) => ({ ...each, words: each.words.map(inFull) })),
  };
}

const IN_A_GEAR: ReadonlySet<Dimension> = new Set(['rotation', 'pressure', 'angle', 'ratio', 'percent']);

const inFull = (word: Word): Word => {
  const gear = GEARS.get(word.text.toLowerCase());
  return gear ? { ...word, text: gear } : word;
};

const isNewton = (value: Value): value is Amount =>
  value.form === 'amount' && value.unit?.id === 'N' && value.unitSpan.to - value.unitSpan.from === 1;

const withoutUnit = (amount: Amount): Amount => ({
  ...amount,
  unit: undefined,
  unitSpan: { from: amount.numberSpan.to, to: amount.numberSpan.to },
  span: { from: amount.span.from, to: amount.numberSpan.to },
});

/** Inches of a vacuum gauge or a barometer are inches of mercury. */
function inDepression(said: Statement, { unit, against, parts, dimension }: Quantity): Statement {
  if (!parts && !inInches(said)) return said;
  const values = unit === 'inHg' ? said.values.map(ofMercury) : said.values;
  const atIsDepression = against?.unit === 'inHg';
  const points = atIsDepression ? said.points.map(atOfMercury) : said.points;
  const conditions =
    dimension === 'angle' || atIsDepression ? said.conditions.map(ofDepression) : said.conditions;
  return { ...said, values: parts ? said.values.map(ofBarometer) : values, points, conditions };
}

/** Most lines have no inch in them, and are left as they are. */
const inInches = ({ values, points, conditions }: Statement): boolean =>
  values.some(isInch) ||
  points.some(({ at }) => isInch(at)) ||
  conditions.some(({ value }) => value !== undefined && isInch(value));

const isInch = (value: Value): boolean => value.form === 'amount' && value.unit?.id === 'in';
const ofMercury = (value: Value): Value =>
  value.form === 'amount' && isInch(value) ? { ...value, unit: unitById('inHg') } : value;
const atOfMercury = (point: Point): Point => ({ ...point, at: ofMercury(point.at) as Amount });
const ofDepression = (condition: Condition): Condition =>
  condition.value ? { ...condition, value: ofMercury(condition.value) as Amount } : condition;

/** Barometer without a unit: only it reads 25 to 32 (inches) or some hundreds to 1090 (hectopascals) in the weather. */
function ofBarometer(value: Value): Value {
  if (value.form !== 'amount' || !value.interval || value.relative) return value;
  const { low, high } = value.interval;
  const [inches, hecto] = [low >= 25 && high <= 32, low >= 800 && high <= 1090];
  if (isInch(value)) return inches ? ofMercury(value) : value;
  if (value.unit || !(inches || hecto)) return value;
  return { ...value, unit: unitById(inches ? 'inHg' : 'hPa'), taken: true };
}

/** Units a bare number may also have been read in, where it cannot be in the usual one. */
const ALSO_READ_IN: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    in: ['mm', 'thou'],
    mm: ['in'],
    psi: ['bar', 'kPa'],
  }),
);

/** A bare number far outside the usual, which another unit brings inside it. */
function bySize(said: Statement, { unit, band, bare, orIn }: Quantity): Statement {
  const amounts = said.values.filter((value): value is Amount => value.form === 'amount');
  if (
    !unit ||
    !band ||
    (bare && !orIn?.includes('length')) ||
    amounts.length === 0 ||
    amounts.length < said.values.length
  )
    return said;
  if (amounts.some((each) => each.unit || each.relative || !each.interval)) return said;
  const fits = (id: string) => amounts.every((each) => isUsual(each, id, band));
  if (fits(unit)) return said;
  const meant = ALSO_READ_IN.get(unit)?.find(fits) ?? (bare && amounts.every(isDrilled) ? 'in' : undefined);
  if (!meant) return said;
  return { ...said, values: amounts.map((each) => ({ ...each, unit: unitById(meant), taken: true })) };
}

/** A jet under a tenth of a number is known by its bore in inches: `jet .090`. */
const isDrilled = ({ interval }: Amount): boolean =>
  interval !== undefined && interval.low > 0.01 && interval.high < 0.2;

function isUsual({ interval }: Amount, id: string, { low, high, unit }: Band): boolean {
  if (!interval) return false;
  const read = convertInterval(interval, unitById(id), unitById(unit));
  return read.low >= low && read.high <= high;
}

/** Direction words before a value, which make it a change: `initial retard 2 deg`, `mixture up 2 flats`. */
function turnedBack(said: Statement, { kind, dimension }: Quantity): Statement {
  const [value] = said.values;
  const ways = kind === 'setting' && dimension ? WAYS[dimension] : undefined;
  if (!ways || said.values.length !== 1 || value?.form !== 'amount' || value.relative) return said;
  const word = said.words.find(
    ({ text, span }) => span.to <= value.span.from && ways.has(text.toLowerCase()),
  );
  const relative = word && ways.get(word.text.toLowerCase());
  if (!relative) return said;
  return { ...said, values: [{ ...value, relative }], words: said.words.filter((each) => each !== word) };
}

/** Direction of a jet under a bridge: up leans, down richens. */
const WAYS: Partial<Record<Dimension, ReadonlyMap<string, Amount['relative']>>> = {
  angle: new Map([['retard', 'less']]),
  turns: new Map([
    ['up', 'in'],
    ['down', 'out'],
  ]),
};

/** `fuel used 14 L in 130 km`, `run 50-80 km/h 11.2 s`: the distance covered or the speed range is no second value. */
function overWhat(said: Statement, { name, dimension }: Quantity): Statement {
  const [first, second] = said.values;
  if (first?.form !== 'amount' || second?.form !== 'amount' || said.values.length > 2) return said;
  if (name === 'fuel used' && second.relative === 'in' && second.unit?.dimension !== dimension)
    return { ...said, values: [first], words: [...said.words, remark(second)] };
  if (name === 'run time' && isOver(first))
    return { ...said, values: [second], words: [remark(first), ...said.words] };
  return said;
}

/** From one speed to another. */
const isOver = ({ interval, unit, unitSpan }: Amount): boolean =>
  interval !== undefined &&
  (unit?.dimension === 'road speed' || (!isExact(interval) && unitSpan.from === unitSpan.to));

/** Runs are alike by the speeds alone, with their unit or without. */
const remark = ({ interval, numberSpan, span, relative, unit }: Amount): Word => {
  const number = interval && [...new Set([interval.low, interval.high])].join('-');
  return relative === 'in'
    ? { text: `in ${number} ${unit?.symbol ?? ''}`.trim(), span }
    : { text: `${number}`, span: numberSpan };
};

/** `float level at the bottom of the sight hole`: the position is the setting. */
function atMark(said: Statement, { kind, words }: Quantity): Statement {
  if (kind !== 'setting' || !words || said.values.length + said.points.length > 0) return said;
  const marks = said.conditions.filter(({ value }) => value === undefined);
  const beside = marks.flatMap((each) => each.words);
  if (!beside.some(({ text }) => words.includes(text.toLowerCase()))) return said;
  return {
    ...said,
    words: [...said.words, ...beside],
    conditions: said.conditions.filter(({ value }) => value !== undefined),
  };
}
