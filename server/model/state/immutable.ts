/**
 * Immutable maps: each change gives another map, and no change is the same one. They keep the order in which
 * keys were first put. A small one is copied; a large one shares what it can with the one before, so that a line costs the
 * same however much is carried to it.
 */
import { alike, differing, itemAt, itemsOf, NO_ITEMS, PLACES, type Trie, withItemAt } from './trie.ts';

type Maps<T> = ReadonlyMap<string, T>;
type Item<T> = readonly [key: string, value: T];

interface Large<T> extends Maps<T> {
  /** Not `parts`: states have that name too, and are no maps. */
  readonly innards: Parts<T>;
}

interface Parts<T> {
  readonly size: number;
  /** The items in their order, each at its place. */
  readonly items: Trie;
  /** The next place. */
  readonly next: number;
  /** By a key's hash: keys with their places. */
  readonly places: Trie;
  /** The items by the part of their key before the first `|`; undefined in one of these groups itself. */
  readonly groups: Maps<Maps<T>> | undefined;
}

type Place = readonly [key: string, place: number];

/** Size up to which a map is copied: that is faster, and most are smaller. */
const LARGEST_COPIED = 64;

const isLarge = <T>(map: Maps<T>): map is Large<T> => 'innards' in map;

const isMap = (value: object): value is Maps<unknown> => value instanceof Map || 'innards' in value;

/** With one thing more, or another in its place. */
export const put = <K extends string, T>(map: ReadonlyMap<K, T>, key: K, value: T): ReadonlyMap<K, T> =>
  putIn(map as Maps<T>, key, value, true) as ReadonlyMap<K, T>;

/** With one thing more, or another, behind all others. */
export function putLast<T>(map: Maps<T>, key: string, value: T): Maps<T> {
  if (isLarge(map) || map.size >= LARGEST_COPIED) return put(withoutKey(map, key), key, value);
  const after = new Map(map);
  after.delete(key);
  return after.set(key, value);
}

/** With all of these put, one after another. */
export function putAll<T>(map: Maps<T>, items: Iterable<Item<T>>): Maps<T> {
  let after = map;
  for (const [key, value] of items) after = put(after, key, value);
  return after;
}

/** Without one thing; the same map where it is not there. */
export function withoutKey<K extends string, T>(map: ReadonlyMap<K, T>, key: K): ReadonlyMap<K, T> {
  if (!map.has(key)) return map;
  const known: Maps<T> = map as Maps<T>;
  if (isLarge(known)) return removed(known.innards, key) as ReadonlyMap<K, T>;
  const after = new Map(map);
  after.delete(key);
  return after;
}

/** Without what is to be dropped; the same map where nothing is. */
export function without<T>(map: Maps<T>, drop: (key: string, value: T) => boolean): Maps<T> {
  let after = map;
  for (const [key, value] of map) if (drop(key, value)) after = withoutKey(after, key);
  return after;
}

/** What has one of these names, by keys as `name|place`; the last of each, so many at most, in the order of the map. */
export function ofName<T>(
  map: Maps<T>,
  names: string | readonly string[],
  most = Number.POSITIVE_INFINITY,
): readonly T[] {
  const all = typeof names === 'string' ? [names] : names;
  if (!isLarge(map)) return inSmall(map, all, most);
  const found = all.flatMap((name) => lastIn(map.innards.groups?.get(name), most));
  if (all.length > 1)
    found.sort(([a], [b]) => (placeOf(map.innards, a) ?? 0) - (placeOf(map.innards, b) ?? 0));
  return found.map(([, value]) => value);
}

/** One by one: this is looked up for most lines. */
function inSmall<T>(map: Maps<T>, names: readonly string[], most: number): readonly T[] {
  const found: Item<T>[] = [];
  for (const item of map) {
    for (const name of names)
      if (isOf(item[0], name)) {
        found.push(item);
        break;
      }
  }
  const last =
    found.length <= most ? found : found.filter(([key], i) => countAfter(found, i, nameOf(key)) < most);
  return last.map(([, value]) => value);
}

const countAfter = (items: readonly Item<unknown>[], from: number, name: string): number =>
  items.filter(([key], i) => i > from && isOf(key, name)).length;

/** The last keys, so many at most, in the order of the map. */
export const lastKeys = (map: Maps<unknown>, most: number): readonly string[] =>
  lastIn(map, most).map(([key]) => key);

function lastIn<T>(group: Maps<T> | undefined, most: number): Item<T>[] {
  if (!group || !isLarge(group)) return group ? [...group].slice(-most) : [];
  const last: Item<T>[] = [];
  for (const item of itemsOf(group.innards.items, true)) {
    if (last.length === most) break;
    last.push(item as Item<T>);
  }
  return last.reverse();
}

/** Keys of all that is not the same object in both, and maybe of some that is: those of `a` first, each in its order. */
export function changedKeys(a: Maps<unknown>, b: Maps<unknown>): ReadonlySet<string> {
  if (!isLarge(a) || !isLarge(b)) return new Set([...a.keys(), ...b.keys()]);
  return new Set(
    differing(a.innards.items, b.innards.items).flatMap((items) =>
      items.map((item) => (item as Item<unknown>)[0]),
    ),
  );
}

/** Equality including order: what is listed from a map must not depend on how the text came about. */
function sameMaps(a: Maps<unknown>, b: Maps<unknown>, same: (a: unknown, b: unknown) => boolean): boolean {
  if (a.size !== b.size) return false;
  if (isLarge(a) && isLarge(b) && alike(a.innards.items, b.innards.items, same)) return true;
  const others = b.entries();
  for (const [key, value] of a) {
    const [otherKey, other] = others.next().value as Item<unknown>;
    if (key !== otherKey || !same(value, other)) return false;
  }
  return true;
}

function putIn<T>(map: Maps<T>, key: string, value: T, grouped: boolean): Maps<T> {
  if (isLarge(map)) return added(map.innards, key, value);
  if (map.size < LARGEST_COPIED || map.has(key)) return new Map(map).set(key, value);
  return added(partsOf(map, grouped), key, value);
}

const partsOf = <T>(map: Iterable<Item<T>>, grouped: boolean): Parts<T> => {
  let parts: Parts<T> = {
    size: 0,
    items: NO_ITEMS,
    next: 0,
    places: NO_ITEMS,
    groups: grouped ? new Map() : undefined,
  };
  for (const [key, value] of map) parts = withPart(parts, key, value);
  return parts;
};

function added<T>(parts: Parts<T>, key: string, value: T): Maps<T> {
  const crowded = parts.next > 4 * parts.size + LARGEST_COPIED || parts.next === PLACES - 1;
  return large(withPart(crowded ? partsOf(items<T>(parts), parts.groups !== undefined) : parts, key, value));
}

function withPart<T>(parts: Parts<T>, key: string, value: T): Parts<T> {
  const { size, next, groups } = parts;
  const known = placeOf(parts, key);
  const hash = hashOf(key);
  const name = nameOf(key);
  return {
    size: known === undefined ? size + 1 : size,
    items: withItemAt(parts.items, known ?? next, [key, value]),
    next: known === undefined ? next + 1 : next,
    places:
      known === undefined
        ? withItemAt(parts.places, hash, [...placesAt(parts, hash), [key, next]])
        : parts.places,
    groups:
      name === ''
        ? groups
        : groups && putIn(groups, name, putIn(groups.get(name) ?? new Map(), key, value, false), false),
  };
}

function removed<T>(parts: Parts<T>, key: string): Maps<T> {
  const hash = hashOf(key);
  const left = placesAt(parts, hash).filter(([each]) => each !== key);
  const name = nameOf(key);
  const group = parts.groups?.get(name);
  const after: Parts<T> = {
    ...parts,
    size: parts.size - 1,
    items: withItemAt(parts.items, placeOf(parts, key) as number, undefined),
    places: withItemAt(parts.places, hash, left.length > 0 ? left : undefined),
    groups: group && parts.groups ? putIn(parts.groups, name, withoutKey(group, key), false) : parts.groups,
  };
  return after.size > LARGEST_COPIED / 2 ? large(after) : new Map(items<T>(after));
}

/** A map as the language has it, over its parts. */
function large<T>(parts: Parts<T>): Large<T> {
  const get = (key: string): T | undefined => {
    const place = placeOf(parts, key);
    return place === undefined ? undefined : (itemAt(parts.items, place) as Item<T>)[1];
  };
  const map: Large<T> = {
    innards: parts,
    size: parts.size,
    get,
    has: (key) => placeOf(parts, key) !== undefined,
    forEach: (each) => {
      for (const [key, value] of items<T>(parts)) each(value, key, map);
    },
    entries: () => mutable<T>(parts),
    keys: () => keysOf(parts),
    values: () => valuesOf<T>(parts),
    [Symbol.iterator]: () => mutable<T>(parts),
  };
  return map;
}

const items = <T>({ items }: Parts<T>): Generator<Item<T>> => itemsOf(items) as Generator<Item<T>>;
const mutable = <T>(parts: Parts<T>) =>
  items(parts) as Generator<unknown> as Generator<[string, T], undefined>;

function* keysOf<T>(parts: Parts<T>): Generator<string, undefined> {
  for (const [key] of items(parts)) yield key;
  return undefined;
}

function* valuesOf<T>(parts: Parts<T>): Generator<T, undefined> {
  for (const [, value] of items(parts)) yield value;
  return undefined;
}

const placesAt = ({ places }: Pick<Parts<unknown>, 'places'>, hash: number): readonly Place[] =>
  (itemAt(places, hash) ?? []) as readonly Place[];

const placeOf = (parts: Pick<Parts<unknown>, 'places'>, key: string): number | undefined =>
  placesAt(parts, hashOf(key)).find(([each]) => each === key)?.[1];

const isOf = (key: string, name: string): boolean =>
  key.charCodeAt(name.length) === BAR && key.startsWith(name);

const BAR = '|'.charCodeAt(0);

const nameOf = (key: string): string => key.slice(0, Math.max(0, key.indexOf('|')));

/** Any number below `PLACES`, the same for the same text. */
function hashOf(key: string): number {
  let hash = 0;
  for (let i = 0; i < key.length; i++) hash = Math.imul(hash ^ key.charCodeAt(i), 0x9e3779b1) ^ (hash >>> 13);
  return (hash ^ (hash >>> 15)) & (PLACES - 1);
}

/** Deep equality of readonly data; the same object is equal at once, which is nearly always the case. */
export function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (isMap(a)) return isMap(b) && sameMaps(a, b, same);
  if (Array.isArray(a))
    return Array.isArray(b) && a.length === b.length && a.every((each, i) => same(each, b[i]));
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every((key) => same(a[key as keyof typeof a], b[key as keyof typeof b]));
}
