/** How a session names what is specified. */
import { once } from '../../memo.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { PLACE_WORDS } from '../../trade/vocabulary/vocabulary.ts';

/** What is specified of which quantity, by its name. */
export interface NamedSpec {
  readonly name: string;
  readonly quantity: Quantity;
}

type Specs = ReadonlyMap<string, NamedSpec>;

/** `head bolts torque`; a quantity specified as a whole has its own name. */
export const specName = ({ name, quantity }: NamedSpec): string =>
  name === quantity.name ? name : `${name} ${quantity.name}`;

interface Named {
  readonly quantities: ReadonlyMap<string, Quantity>;
  /** The key of a spec by its whole name: `head bolts torque`. */
  readonly keys: ReadonlyMap<string, string>;
}

/**
 * What a session may write beside the words of the trade: `head bolts torque 60 lb-ft`, and `head bolts 60 lb-ft` where
 * only one thing of it is specified. A spec of a place (`intake valve lash`) needs no name of its own.
 */
export const specNames = (specs: Specs): ReadonlyMap<string, Quantity> => namedIn(specs).quantities;

/** All names that specs give, and which spec each whole name is of. */
export const namedIn = once((specs: Specs): Named => {
  const all = [...specs];
  const [own, single] = [all.filter(([, spec]) => hasOwnName(spec)), namedOnce(all.map(([, spec]) => spec))];
  return {
    quantities: new Map(own.flatMap(([, spec]) => namesOfSpec(spec, single.has(spec.name)))),
    keys: new Map(own.toReversed().map(([key, spec]) => [specName(spec), key])),
  };
});

const hasOwnName = ({ name, quantity }: NamedSpec): boolean =>
  name !== quantity.name && !name.split(' ').every((word) => PLACE_WORDS.has(word) || word.startsWith('#'));

function namedOnce(specs: readonly NamedSpec[]): ReadonlySet<string> {
  const [single, more] = [new Set<string>(), new Set<string>()];
  for (const { name } of specs) {
    if (more.has(name)) continue;
    if (single.delete(name)) more.add(name);
    else single.add(name);
  }
  return single;
}

function namesOfSpec(spec: NamedSpec, alone: boolean): readonly (readonly [string, Quantity])[] {
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
