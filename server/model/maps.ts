/** Maps that are never changed: each change is another map, and no change is the same one. */

/** With one thing more, or another in its place. */
export function put<K, T>(map: ReadonlyMap<K, T>, key: K, value: T): ReadonlyMap<K, T> {
  return new Map(map).set(key, value);
}

/** Without what is to be dropped; the same map where nothing is. */
export function without<K, T>(
  map: ReadonlyMap<K, T>,
  drop: (key: K, value: T) => boolean,
): ReadonlyMap<K, T> {
  let after: Map<K, T> | undefined;
  for (const [key, value] of map) {
    if (!drop(key, value)) continue;
    after ??= new Map(map);
    after.delete(key);
  }
  return after ?? map;
}
