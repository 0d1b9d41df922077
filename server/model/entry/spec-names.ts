/** Names by which a session may refer to specs. */
import { once, onceOrCarried } from '../../memo.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { PLACE_WORDS } from '../../trade/vocabulary/vocabulary.ts';
import { put } from '../state/immutable.ts';

/** Specs by name: which quantity each is of. */
export interface NamedSpec {
  readonly name: string;
  readonly quantity: Quantity;
}

type Specs = ReadonlyMap<string, NamedSpec>;

/** `head bolts torque`; a quantity specified as a whole has its own name. */
export const specName = ({ name, quantity }: NamedSpec): string =>
  name === quantity.name ? name : `${name} ${quantity.name}`;

/** Names of specs: by whole name (`head bolts torque`), and by `head bolts` where only one thing of it is. */
export interface SpecNames {
  readonly size: number;
  readonly get: (name: string) => Quantity | undefined;
  /** The whole names; those shorter begin alike. */
  readonly keys: () => Iterable<string>;
}

interface Named {
  /** By whole name. */
  readonly quantities: ReadonlyMap<string, Quantity>;
  /** The key of a spec by its whole name. */
  readonly keys: ReadonlyMap<string, string>;
  /** What is specified of a thing, by its name: the one spec, or `several`. */
  readonly things: ReadonlyMap<string, NamedSpec | 'several'>;
}

const NONE: Named = { quantities: new Map(), keys: new Map(), things: new Map() };

/**
 * Spec names a session may use beside the words of the trade: `head bolts torque 60 lb-ft`, and `head bolts 60 lb-ft` where
 * only one thing of it is specified. A spec of a place (`intake valve lash`) needs no name of its own.
 */
export const specNames = once((specs: Specs): SpecNames => {
  const { quantities, things } = named.of(specs);
  const wholeOf = (name: string): string => {
    const spec = things.get(name);
    return spec && spec !== 'several' && hasOwnName(spec) ? specName(spec) : name;
  };
  return {
    size: quantities.size,
    get: (name) => quantities.get(name) ?? quantities.get(wholeOf(name)),
    keys: () => quantities.keys(),
  };
});

/** The quantities that specs name, in their order. */
export const specQuantities = (specs: Specs): Iterable<Quantity> => named.of(specs).quantities.values();

/** The key of a spec, by its whole name. */
export const specKey = (specs: Specs, whole: string): string | undefined => named.of(specs).keys.get(whole);

const named = onceOrCarried((specs: Specs): Named => {
  let names = NONE;
  for (const [key, spec] of specs) names = withName(names, key, spec, false);
  return names;
});

/** With one spec more, and its name beside those gathered before: a spec costs the same however many there are. */
export function withSpec<Spec extends NamedSpec>(
  specs: ReadonlyMap<string, Spec>,
  key: string,
  spec: Spec,
): ReadonlyMap<string, Spec> {
  const after = put(specs, key, spec);
  named.carry(after, withName(named.of(specs), key, spec, specs.has(key)));
  return after;
}

/** `again`: under this key there was one already. Of two specs with one whole name the first has it. */
function withName(named: Named, key: string, spec: NamedSpec, again: boolean): Named {
  const { name } = spec;
  const isOnly = again ? named.things.get(name) !== 'several' : !named.things.has(name);
  const things = put(named.things, name, isOnly ? spec : 'several');
  const whole = specName(spec);
  if (!hasOwnName(spec) || (named.keys.get(whole) ?? key) !== key) return { ...named, things };
  const { band: _, ...quantity } = spec.quantity;
  return {
    things,
    keys: put(named.keys, whole, key),
    quantities: put(named.quantities, whole, { ...quantity, name: whole, aliases: [] }),
  };
}

const hasOwnName = ({ name, quantity }: NamedSpec): boolean =>
  name !== quantity.name && !name.split(' ').every((word) => PLACE_WORDS.has(word) || word.startsWith('#'));
