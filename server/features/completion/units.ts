/** Units for a number: those the quantity may be given in, as this notebook gives it first. */
import { KIND, type Line, tokenText } from '../../../grammar/index.ts';
import { readEntry } from '../../model/entry/read-entry.ts';
import { symbolAfter } from '../../trade/measure/format.ts';
import { type Dimension, UNITS, type Unit, unitById } from '../../trade/measure/units.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { type UnitChoice, unitsBeside } from '../units.ts';
import type { CompletionQuestion, Offer } from './suggestion.ts';
import { type UsageCounts, unitKey, usedAbove } from './usage-counts.ts';

const NUMBERS: ReadonlySet<string> = new Set([KIND.Number, KIND.Fraction, KIND.Mixed]);

export const endsInNumber = ({ tokens: { kinds } }: Line): boolean => NUMBERS.has(kinds.at(-1) ?? '');

export function unitOffers(question: CompletionQuestion, quantity: Quantity): readonly Offer[] {
  const { name, dimension, orIn = [], parts = [] } = quantity;
  const said = parts.length > 0 ? dimensionsSaid(question) : [];
  const left = parts.map((part) => part.dimension).filter((each) => !said.includes(each));
  const dimensions = [...(dimension ? [dimension] : []), ...orIn, ...left];
  const used = usedAbove(question.snapshot, question.line);
  const beside = quantity.unit
    ? unitsBeside(unitById(quantity.unit), quantity, NO_CHOICE).others
    : OF_THE_AIR;
  return offersOf(
    question,
    dimensions,
    (unit) => weightOf(unit, quantity.unit, used, name) + Number(beside.includes(unit)) / 2,
  );
}

const NO_CHOICE: UnitChoice = new Map();
/** What weather is given in. Common practice, no source. */
const OF_THE_AIR: readonly Unit[] = ['C', 'F', 'hPa', 'inHg', '%RH'].map(unitById);

/** Units of the weather; each quantity is offered once. */
function dimensionsSaid({ written, state }: CompletionQuestion): readonly Dimension[] {
  const entry = readEntry(written, state);
  const values = 'statements' in entry ? entry.statements.flatMap((each) => each.values) : [];
  return values.flatMap((value) =>
    value.form === 'amount' && value.unit && !value.taken ? [value.unit.dimension] : [],
  );
}

/** Behind `@`: for a curve what it runs over, else a speed or a depression. */
export function conditionUnitOffers(question: CompletionQuestion, { against }: Quantity): readonly Offer[] {
  const dimensions: readonly Dimension[] = against
    ? [against.dimension]
    : ['rotation', 'pressure', 'temperature'];
  const usual = against?.unit ?? 'rpm';
  return offersOf(question, dimensions, (unit) => Number(unit.id === usual) + Number(unit.id === 'inHg') / 2);
}

/** Of any of the dimensions, in the order of the table; `first` comes before the others of its kind. */
export const unitsOf = (
  question: CompletionQuestion,
  dimensions: readonly Dimension[],
  first?: Unit,
): readonly Offer[] => offersOf(question, dimensions, (unit) => Number(unit === first));

/** Every unit there is, for a word of the notebook's own. */
export const allUnits = (question: CompletionQuestion): readonly Offer[] =>
  offersOf(question, [...new Set(UNITS.map(({ dimension }) => dimension))], () => 0);

function weightOf(unit: Unit, usual: string | undefined, used: UsageCounts, name: string): number {
  const uses = used.get(unitKey(name, unit.id)) ?? 0;
  return uses > 0 ? uses + 1 : Number(unit.id === usual);
}

function offersOf(
  { written, from }: CompletionQuestion,
  dimensions: readonly Dimension[],
  weight: (unit: Unit) => number,
): readonly Offer[] {
  const number = endsInNumber(written) ? tokenText(written, written.tokens.kinds.length - 1) : '';
  const touches = endsInNumber(written) && !/\s$/.test(written.text);
  return UNITS.filter(({ dimension, symbol }) => dimensions.includes(dimension) && /^[\p{L}%°]/u.test(symbol))
    .toSorted((a, b) => rank(dimensions, a) - rank(dimensions, b))
    .toSorted((a, b) => weight(b) - weight(a))
    .map((unit) => ({ symbol: symbolAfter(number, unit), dimension: unit.dimension }))
    .map(({ symbol, dimension }) => ({
      label: symbol,
      kind: 'unit',
      detail: dimension,
      text: touches ? ` ${symbol}` : symbol,
      from,
      ...(touches && { foundBy: symbol }),
    }));
}

const rank = (dimensions: readonly Dimension[], { dimension }: Unit): number => dimensions.indexOf(dimension);

/** What a reminder can count, as this notebook writes its distances. */
export function countedUnits(question: CompletionQuestion): readonly Offer[] {
  const used = usedAbove(question.snapshot, question.line);
  const distance = ['mi', 'km', 'nmi'].toSorted((a, b) => usesOf(used, b) - usesOf(used, a));
  const order = ['heat-cycle', ...distance.slice(0, 2), 'h', 'day', 'week'];
  const offers = offersOf(question, ['distance', 'time', 'heat cycles'], ({ id }) =>
    order.includes(id) ? order.length - order.indexOf(id) : 0,
  );
  return offers.slice(0, order.length);
}

const usesOf = (used: UsageCounts, unit: string): number => used.get(unitKey('odometer', unit)) ?? 0;

/** For an elapsed time before an entry: `+20 min`. */
export const timeUnits = (question: CompletionQuestion): readonly Offer[] =>
  unitsOf(question, ['time'], unitById('min'));
