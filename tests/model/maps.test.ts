/** Maps that share what they can, held to the language's own map: the same things in the same order, whatever is done. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  changedKeys,
  ofName,
  put,
  putLast,
  same,
  without,
  withoutKey,
} from '../../server/model/state/immutable.ts';

type Step = readonly [what: 'put' | 'last' | 'drop', key: number, value: number];

const steps = fc.array(
  fc.tuple(
    fc.constantFrom('put', 'put', 'last', 'drop'),
    fc.nat({ max: 300 }),
    fc.nat(),
  ) as fc.Arbitrary<Step>,
  { minLength: 1, maxLength: 900, size: 'max' },
);
const keyOf = (key: number): string => `name ${key % 3}|${key}`;

function taken(map: ReadonlyMap<string, number>, [what, key, value]: Step): ReadonlyMap<string, number> {
  if (what === 'put') return put(map, keyOf(key), value);
  return what === 'last' ? putLast(map, keyOf(key), value) : withoutKey(map, keyOf(key));
}

function model(map: Map<string, number>, [what, key, value]: Step): void {
  if (what !== 'put') map.delete(keyOf(key));
  if (what !== 'drop') map.set(keyOf(key), value);
}

test('as a map that is copied', () =>
  fc.assert(
    fc.property(steps, (all) => {
      let map: ReadonlyMap<string, number> = new Map();
      const expected = new Map<string, number>();
      for (const step of all) {
        map = taken(map, step);
        model(expected, step);
      }
      expect([...map]).toEqual([...expected]);
      expect([map.size, [...map.keys()], [...map.values()]]).toEqual([
        expected.size,
        [...expected.keys()],
        [...expected.values()],
      ]);
      for (const key of [0, 1, 7, 299].map(keyOf))
        expect([map.has(key), map.get(key)]).toEqual([expected.has(key), expected.get(key)]);
      const named = [...expected].filter(([key]) => /^name [02]\|/.test(key)).map(([, value]) => value);
      expect(ofName(map, ['name 2', 'name 0'])).toEqual(named);
      expect(ofName(map, 'name 1', 2)).toEqual(
        [...expected]
          .filter(([key]) => key.startsWith('name 1|'))
          .map(([, value]) => value)
          .slice(-2),
      );
      expect(same(map, expected) && same(expected, map)).toBe(true);
    }),
    { numRuns: 60, seed: 1 },
  ));

const large = Array.from({ length: 500 }, (_, i) => i).reduce<ReadonlyMap<string, number>>(
  (map, i) => put(map, keyOf(i), i),
  new Map(),
);

test('one that was is not changed', () => {
  const before = [...large];
  put(large, keyOf(3), -1);
  without(large, (_, value) => value % 2 === 0);
  expect([...large]).toEqual(before);
});

test('keys that differ are among those named as changed, in the order of the maps', () =>
  fc.assert(
    fc.property(steps, steps, (first, more) => {
      const before = first.reduce(taken, large);
      const after = more.reduce(taken, before);
      const changed = [...changedKeys(before, after)];
      const all = [...new Set([...before.keys(), ...after.keys()])];
      expect(changed).toEqual(all.filter((key) => changed.includes(key)));
      for (const key of all) if (before.get(key) !== after.get(key)) expect(changed).toContain(key);
    }),
    { numRuns: 20, seed: 1 },
  ));

test.each<[name: string, other: ReadonlyMap<string, number>, alike: boolean]>([
  ['put again', put(large, keyOf(3), 3), true],
  ['another value', put(large, keyOf(3), -1), false],
  ['another order', putLast(large, keyOf(3), 3), false],
  ['one less', withoutKey(large, keyOf(3)), false],
  ['there and back', withoutKey(put(large, 'x', 1), 'x'), true],
  ['copied', new Map(large), true],
  ['without what is not there', withoutKey(large, 'x'), true],
])('the same: %s', (_, other, alike) =>
  expect([same(large, other), same(other, large)]).toEqual([alike, alike]),
);
