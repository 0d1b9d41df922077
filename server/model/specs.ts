/** Specifications: how a session names what is specified, and which spec a value is held against. */
import type { Quantity } from '../trade/quantity.ts';
import { PLACE_WORDS } from '../trade/vocabulary.ts';
import { type Carried, keyOf, type Spec } from './carry.ts';

type Specs = Carried['specs'];

/** `head bolts torque`; a quantity specified as a whole has its own name. */
export const specName = ({ name, quantity }: Pick<Spec, 'name' | 'quantity'>): string =>
  name === quantity.name ? name : `${name} ${quantity.name}`;

interface Named {
  readonly quantities: ReadonlyMap<string, Quantity>;
  /** By the whole name: `head bolts torque`. */
  readonly specs: ReadonlyMap<string, Spec>;
}

const namesOf = new WeakMap<Specs, Named>();

/**
 * What a session may write beside the words of the trade: `head bolts torque 60 lb-ft`, and `head bolts 60 lb-ft` where
 * only one thing of it is specified. A spec of a place (`intake valve lash`) needs no name of its own.
 */
export const specNames = (specs: Specs): ReadonlyMap<string, Quantity> => namedIn(specs).quantities;

function namedIn(specs: Specs): Named {
  let named = namesOf.get(specs);
  if (!named) {
    const all = [...specs.values()];
    const [own, once] = [all.filter(hasOwnName), namedOnce(all)];
    named = {
      quantities: new Map(own.flatMap((spec) => namesOfSpec(spec, once.has(spec.name)))),
      specs: new Map(own.toReversed().map((spec) => [specName(spec), spec])),
    };
    namesOf.set(specs, named);
  }
  return named;
}

const hasOwnName = ({ name, quantity }: Spec): boolean =>
  name !== quantity.name && !name.split(' ').every((word) => PLACE_WORDS.has(word) || word.startsWith('#'));

function namedOnce(specs: readonly Spec[]): ReadonlySet<string> {
  const [once, more] = [new Set<string>(), new Set<string>()];
  for (const { name } of specs) {
    if (more.has(name)) continue;
    if (once.delete(name)) more.add(name);
    else once.add(name);
  }
  return once;
}

function namesOfSpec(spec: Spec, alone: boolean): readonly (readonly [string, Quantity])[] {
  const { band: _, ...quantity } = spec.quantity;
  const name = specName(spec);
  const own: Quantity = { ...quantity, name, aliases: [] };
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
  const own = (name: string | undefined) =>
    name === undefined ? undefined : specs.get(keyOf(name, quantity.name));
  return (
    namedIn(specs).specs.get(quantity.name) ??
    (beside === quantity.name ? undefined : own(beside)) ??
    own(place) ??
    own(quantity.name)
  );
}
