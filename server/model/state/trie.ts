/** Immutable sparse list (trie): a change gives another list that shares all but a few nodes. */

/** Up to 32 nodes, or items at the lowest level; what is not there is undefined. */
export type Trie = readonly unknown[];

export const NO_ITEMS: Trie = [];

const BITS = 5;
const TOP = 20;
const MASK = 2 ** BITS - 1;
/** Places are whole numbers from zero, below this. */
export const PLACES = 2 ** (TOP + BITS);

export function itemAt(trie: Trie, place: number): unknown {
  let node: unknown = trie;
  for (let shift = TOP; shift >= 0 && node !== undefined; shift -= BITS)
    node = (node as Trie)[(place >>> shift) & MASK];
  return node;
}

/** Undefined takes the item away. */
export function withItemAt(trie: Trie, place: number, item: unknown, shift = TOP): Trie {
  const at = (place >>> shift) & MASK;
  const after = trie.slice();
  after[at] = shift === 0 ? item : withItemAt((trie[at] ?? NO_ITEMS) as Trie, place, item, shift - BITS);
  return after;
}

/** In the order of their places, or from the last to the first. */
export function* itemsOf(trie: Trie, backwards = false, shift = TOP): Generator<unknown> {
  for (let i = 0; i < trie.length; i++) {
    const node = trie[backwards ? trie.length - 1 - i : i];
    if (node === undefined) continue;
    if (shift === 0) yield node;
    else yield* itemsOf(node as Trie, backwards, shift - BITS);
  }
}

/** Items that are not at the same place in both, first those of `a`. Nodes that both share are not looked into. */
export function differing(
  a: Trie,
  b: Trie,
  shift = TOP,
): readonly [ofA: readonly unknown[], ofB: readonly unknown[]] {
  const [ofA, ofB]: [unknown[], unknown[]] = [[], []];
  for (let i = 0; i < Math.max(a.length, b.length); i++) {
    const [one, other] = [a[i], b[i]];
    if (one === other) continue;
    const deeper: readonly [readonly unknown[], readonly unknown[]] =
      shift === 0
        ? [[one], [other]]
        : differing((one ?? NO_ITEMS) as Trie, (other ?? NO_ITEMS) as Trie, shift - BITS);
    for (const item of deeper[0]) if (item !== undefined) ofA.push(item);
    for (const item of deeper[1]) if (item !== undefined) ofB.push(item);
  }
  return [ofA, ofB];
}

/** Whether the same items are at the same places. Nodes that both share are not looked into. */
export function alike(a: Trie, b: Trie, same: (a: unknown, b: unknown) => boolean, shift = TOP): boolean {
  if (a === b) return true;
  for (let i = 0; i < Math.max(a.length, b.length); i++) {
    const [one, other] = [a[i], b[i]];
    if (one === other) continue;
    if (
      shift === 0
        ? !same(one, other)
        : !alike((one ?? NO_ITEMS) as Trie, (other ?? NO_ITEMS) as Trie, same, shift - BITS)
    )
      return false;
  }
  return true;
}
