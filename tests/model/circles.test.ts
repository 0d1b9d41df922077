/** Circles of notebooks, held to the plain meaning of the word: each leads to the other. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findingCircles, usedFirst } from '../../server/model/snapshot/use-circles.ts';

type Uses = readonly (readonly number[])[];

const targetsIn = (uses: Uses) => (name: string) => (uses[Number(name)] ?? []).map(String);

function leads(uses: Uses, from: number, to: number): boolean {
  const seen = new Set([from]);
  for (const each of seen) for (const used of uses[each] ?? []) seen.add(used);
  return seen.has(to);
}

test('two are in a circle where each leads to the other, in whatever order it is asked', () =>
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 9 }).chain((count) => {
        const one = fc.nat(count - 1);
        return fc.tuple(
          fc.array(fc.array(one, { maxLength: 3 }), { minLength: count, maxLength: count }),
          fc.array(fc.tuple(one, one), { minLength: 1, maxLength: 12 }),
        );
      }),
      ([uses, questions]) => {
        const isCircle = findingCircles(targetsIn(uses));
        for (const [one, other] of questions)
          expect(isCircle(String(one), String(other))).toBe(
            leads(uses, one, other) && leads(uses, other, one),
          );
      },
    ),
    { seed: 1, numRuns: 1000 },
  ));

test.each([
  ['a chain', [] as readonly number[], false],
  ['a circle', [0], true],
])('%s of 100,000, each looked at once', (_, end, answer) => {
  const length = 100_000;
  const uses = Array.from({ length }, (_, i) => (i < length - 1 ? [i + 1] : end));
  let looks = 0;
  const isCircle = findingCircles((name) => {
    looks++;
    return targetsIn(uses)(name);
  });
  expect(isCircle('0', '1')).toBe(answer);
  expect(isCircle('70000', '3')).toBe(answer);
  expect(looks).toBe(length);
});

test('all come after what they use, each once, but for those of their circle', () =>
  fc.assert(
    fc.property(
      fc
        .integer({ min: 1, max: 9 })
        .chain((count) =>
          fc.array(fc.array(fc.nat(count - 1), { maxLength: 3 }), { minLength: count, maxLength: count }),
        ),
      (uses) => {
        const order = usedFirst(['0'], targetsIn(uses));
        expect(order.toSorted()).toEqual(uses.flatMap((_, i) => (leads(uses, 0, i) ? [String(i)] : [])));
        for (const [place, name] of order.entries())
          for (const used of uses[Number(name)] ?? [])
            if (!leads(uses, used, Number(name))) expect(order.indexOf(String(used))).toBeLessThan(place);
      },
    ),
    { seed: 1, numRuns: 1000 },
  ));

test('a chain of 100,000 in order', () => {
  const length = 100_000;
  const order = usedFirst(
    ['0'],
    targetsIn(Array.from({ length }, (_, i) => (i < length - 1 ? [i + 1] : []))),
  );
  expect([order[0], order.at(-1), order.length]).toEqual(['99999', '0', length]);
});
