/** Which specification a value is held against. */
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { specKey } from '../entry/spec-names.ts';
import { keyOf, type Spec, type State } from './state.ts';

/** What is said of a quantity, as far as it tells what it is of. */
interface Beside {
  readonly place: { readonly text: string } | undefined;
  readonly words: readonly { readonly text: string }[];
}

/**
 * The spec that what is said of a quantity is held against: the one of that name (`head bolts torque`, `torque 60 lb-ft
 * head bolts`), else of that place, else of the quantity as a whole. Undefined where none is written.
 */
export function specFor(
  specs: State['specs'],
  quantity: Quantity,
  said: Beside | undefined,
): Spec | undefined {
  if (specs.size === 0) return undefined;
  const beside = said?.words.map((word) => word.text.toLowerCase()).join(' ') ?? '';
  const place = said?.place?.text;
  const own = (name: string | undefined) =>
    name === undefined ? undefined : specs.get(keyOf(name, quantity.name));
  const named = specKey(specs, quantity.name);
  return (
    (named === undefined ? undefined : specs.get(named)) ??
    (beside === quantity.name ? undefined : own(beside)) ??
    own(place) ??
    own(quantity.name)
  );
}
