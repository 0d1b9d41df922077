/** Specifications: how a session names what is specified, and which spec a value is held against. */
import type { Quantity } from '../trade/quantity.ts';
import { PLACE_WORDS } from '../trade/vocabulary.ts';
import type { Carried, Spec } from './carry.ts';

type Specs = Carried['specs'];

/** `head bolts torque`; a quantity specified as a whole has its own name. */
export const specName = ({ name, quantity }: Pick<Spec, 'name' | 'quantity'>): string =>
  name === quantity.name ? name : `${name} ${quantity.name}`;

const namesOf = new WeakMap<Specs, ReadonlyMap<string, Quantity>>();

/**
 * What a session may write beside the words of the trade: `head bolts torque 60 lb-ft`, and `head bolts 60 lb-ft` where
 * only one thing of it is specified. A spec of a place (`intake valve lash`) needs no name of its own.
 */
export function specNames(specs: Specs): ReadonlyMap<string, Quantity> {
  let names = namesOf.get(specs);
  if (!names) {
    names = new Map([...specs.values()].filter(hasOwnName).flatMap((spec) => namesOfSpec(spec, specs)));
    namesOf.set(specs, names);
  }
  return names;
}

const hasOwnName = ({ name, quantity }: Spec): boolean =>
  name !== quantity.name && !name.split(' ').every((word) => PLACE_WORDS.has(word) || word.startsWith('#'));

function namesOfSpec(spec: Spec, specs: Specs): readonly (readonly [string, Quantity])[] {
  const { band: _, ...quantity } = spec.quantity;
  const name = specName(spec);
  const own: Quantity = { ...quantity, name, aliases: [] };
  const alone = [...specs.values()].filter((other) => other.name === spec.name).length === 1;
  return alone
    ? [
        [name, own],
        [spec.name, own],
      ]
    : [[name, own]];
}

/** What is said of a quantity, as far as it tells what it is of. */
interface Beside {
  readonly place: { readonly text: string } | undefined;
  readonly words: readonly { readonly text: string }[];
}

/**
 * The spec that what is said of a quantity is held against: the one of that name (`head bolts torque`, `torque 60 lb-ft
 * head bolts`), else of that place, else of the quantity as a whole. Undefined where none is written.
 */
export function specFor(specs: Specs, quantity: Quantity, said: Beside | undefined): Spec | undefined {
  if (specs.size === 0) return undefined;
  const beside = said?.words.map((word) => word.text.toLowerCase()).join(' ') ?? '';
  const place = said?.place?.text;
  const all = [...specs.values()];
  const own = all.filter((spec) => spec.quantity.name === quantity.name);
  return (
    all.find((spec) => hasOwnName(spec) && specName(spec) === quantity.name) ??
    own.find((spec) => spec.name !== quantity.name && spec.name === beside) ??
    own.find((spec) => spec.name === place) ??
    own.find((spec) => spec.name === quantity.name)
  );
}
