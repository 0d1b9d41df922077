/** Values, words and conditions of a line, as several rules need them. */
import type { Line } from '../../../grammar/index.ts';
import { amountIn, firstAmount, isAmount } from '../../model/entry/amount.ts';
import type { Entry, QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Amount, Value, Word } from '../../model/entry/value.ts';
import { type Interval, scale } from '../../trade/measure/interval.ts';
import type { Dimension } from '../../trade/measure/units.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { knownBeside } from './known-words.ts';

const isRead = (value: Value): value is Amount => isAmount(value) && value.interval !== undefined;

/** The amounts that could be read; the same array where all could, which is nearly always. */
export const amountsOf = (values: readonly Value[]): readonly Amount[] =>
  values.every(isRead) ? values : values.filter(isRead);

/** Every amount of a place in the quantity's unit: its values and those of its points. */
export const ownAmounts = ({ values, points }: Statement): readonly Amount[] =>
  points.length === 0
    ? amountsOf(values)
    : [...amountsOf(values), ...amountsOf(points.map((point) => point.value))];

/** As `ownAmounts`, but with + or - taken as part of the number, except in the values of a setting, where it is a change. */
export function signedAmounts({ values, points }: Statement, kind: Entry['kind']): readonly Amount[] {
  const own = kind === 'setting' ? amountsOf(values) : amountsOf(values).map(withSign);
  return points.length === 0 ? own : [...own, ...amountsOf(points.map((point) => point.value)).map(withSign)];
}

const withSign = (amount: Amount): Amount =>
  amount.interval && (amount.relative === 'less' || amount.relative === 'more')
    ? {
        ...amount,
        relative: undefined,
        interval: scale(amount.interval, amount.relative === 'less' ? -1 : 1),
      }
    : amount;

/** The one value of a place in a unit; a bare number is taken to be in the quantity's own. */
export const valueIn = (said: Statement, unit: string, quantity: Quantity): Interval | undefined =>
  amountIn(firstAmount(said.values), unit, quantity.unit ?? unit);

/** All dimensions a quantity may be given in; none where it is not a number. */
export function dimensionsOf(quantity: Quantity): readonly Dimension[] {
  if (quantity.parts) return quantity.parts.map((part) => part.dimension);
  return quantity.dimension ? [quantity.dimension, ...(quantity.orIn ?? [])] : [];
}

/** A word right after a number without a unit, where the unit should be. */
function wordForUnit(line: Line, amount: Amount, words: readonly Word[]): Word | undefined {
  if (amount.unit) return undefined;
  return words.find(
    (word) =>
      word.span.from >= amount.span.to && line.text.slice(amount.span.to, word.span.from).trim() === '',
  );
}

/** The word in place of a unit, unless it is otherwise known beside this quantity. */
export const strangeUnit = (
  line: Line,
  amount: Amount,
  said: Statement,
  quantity: Quantity,
): Word | undefined => {
  const word = wordForUnit(line, amount, said.words);
  return word && !knownBeside(quantity, word.text) ? word : undefined;
};

/** Values of a quantity line or a specification, place by place; a specification has no place. */
export function saidIn(entry: QuantityEntry | (Entry & { readonly kind: 'spec' })): readonly Statement[] {
  if (entry.kind !== 'spec') return entry.statements;
  const { nameSpan: span, values } = entry;
  return [{ place: undefined, values, points: [], words: [], conditions: [], qualifiers: [], span }];
}
