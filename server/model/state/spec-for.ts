/** Spec that applies to a value. */
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { specKey } from '../entry/spec-names.ts';
import { keyOf, type Spec, type State } from './state.ts';

/** Words and place of a statement, as far as they identify a spec. */
interface Beside {
  readonly place: { readonly text: string } | undefined;
  readonly words: readonly { readonly text: string }[];
}

/**
 * The spec that applies to a statement about a quantity: the one of that name (`head bolts torque`, `torque 60 lb-ft
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
