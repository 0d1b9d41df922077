/** Settings with nothing but settings after them. Set again now, the first value was never used. */

import type { Entry, Origin, QuantityEntry } from '../entry/entry.ts';
import type { Value } from '../entry/value.ts';
import { keyOf, type State } from './state.ts';

type Untried = State['notYetUsed'];

const NOTHING_UNTRIED: Untried = new Map();

/** Any line but a setting is taken to mean that the setting was in use. */
export function afterUse(state: State, entry: Entry): State {
  if (entry.kind === 'setting' || state.notYetUsed.size === 0) return state;
  return { ...state, notYetUsed: NOTHING_UNTRIED };
}

/** A change builds on the value before it, so that one has had its use. */
export function withUnused(
  untried: Untried,
  { quantity, statements: said, text }: QuantityEntry,
  by: Origin,
): Untried {
  const after = new Map(untried);
  for (const { place, values, points } of said) {
    const key = keyOf(quantity.name, place?.text);
    const isWhole = points.length > 0 || (values.length > 0 && !isChange(values[0]));
    if (isWhole || text) after.set(key, by);
    else after.delete(key);
  }
  return after;
}

const isChange = (value: Value | undefined): boolean =>
  value?.form === 'amount' && value.relative !== undefined;
