/** Facts of the engine that several rules need. */
import { amountIn, firstAmount } from '../../model/entry/amount.ts';
import { type Declared, keyOf, type State } from '../../model/state/state.ts';

/** The fact `cylinders` and its count; undefined unless it is a whole number of at least one. */
export function cylindersOf({
  facts,
}: State): { readonly count: number; readonly fact: Declared } | undefined {
  const fact = facts.get(keyOf('cylinders', undefined));
  const value = fact && amountIn(firstAmount(fact.statement.values), 'number');
  if (!fact || !value || value.low !== value.high) return undefined;
  return Number.isInteger(value.low) && value.low > 0 ? { count: value.low, fact } : undefined;
}

/** The number of cylinders in a bank or on a side; undefined where it is not written. */
export function cylindersAt({ facts }: State, place: string): number | undefined {
  const order = facts.get(keyOf('bank', place))?.statement.values[0];
  return order?.form === 'order' ? order.text.split('-').length : undefined;
}
