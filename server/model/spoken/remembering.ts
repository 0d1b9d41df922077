/** What was worked out is remembered by its text, for as long as what is around it stays the same. */

/** Held in each of two generations; the older is dropped as a whole. */
const HELD = 1000;
/** What may be around, held at once. */
const SCOPES = 8;

type Cached<T> = (key: string, make: () => T) => T;

/** For each of the last few scopes, told apart by these of their properties, what `make` gave for a key. */
export function remembering<Scope, T>(by: readonly (keyof Scope)[]): (scope: Scope) => Cached<T> {
  const known: { readonly scope: Scope; readonly cached: Cached<T> }[] = [];
  let next = 0;
  let last: (typeof known)[number] | undefined;
  const isOf = (each: (typeof known)[number], scope: Scope): boolean =>
    by.every((property) => each.scope[property] === scope[property]);
  return (scope) => {
    if (last && isOf(last, scope)) return last.cached;
    last = known.find((each) => isOf(each, scope));
    if (last) return last.cached;
    const held = Object.fromEntries(by.map((property) => [property, scope[property]])) as unknown as Scope;
    const made = { scope: held, cached: inGenerations<T>() };
    known[next] = made;
    next = (next + 1) % SCOPES;
    last = made;
    return made.cached;
  };
}

function inGenerations<T>(): Cached<T> {
  let young = new Map<string, T>();
  let old = new Map<string, T>();
  return (key, make) => {
    const recent = young.get(key);
    if (recent !== undefined) return recent;
    const value = old.get(key) ?? make();
    if (young.size >= HELD) {
      old = young;
      young = new Map();
    }
    young.set(key, value);
    return value;
  };
}
