/** What the engine is said to be, as rules ask for it. */
import { amountIn, firstAmount } from '../model/amounts.ts';
import { type Carried, keyOf, type Stated } from '../model/carry.ts';

/** The fact `cylinders` and how many it says, where it says a whole number of at least one. */
export function cylindersOf({
  facts,
}: Carried): { readonly count: number; readonly fact: Stated } | undefined {
  const fact = facts.get(keyOf('cylinders', undefined));
  const value = fact && amountIn(firstAmount(fact.said.values), 'number');
  if (!fact || !value || value.low !== value.high) return undefined;
  return Number.isInteger(value.low) && value.low > 0 ? { count: value.low, fact } : undefined;
}

/** How many cylinders are told to be in a bank or on a side; undefined where it is not said. */
export function cylindersAt({ facts }: Carried, place: string): number | undefined {
  const order = facts.get(keyOf('bank', place))?.said.values[0];
  return order?.form === 'order' ? order.text.split('-').length : undefined;
}
