/** Each word of the trade in the ways it is pencilled. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { law } from '../laws/law.ts';
import { keysOf } from './entries.ts';
import { PENCILLED, storedBy } from './pencilled.ts';

test.each(PENCILLED.map((each) => [each.text, each] as const))('%s', (_, each) =>
  expect(storedBy(each)).toEqual(each.lines.length > 0 ? keysOf(each.lines) : undefined),
);

/** Words that go on to mean something in the next clause: a hair over a range, all plugs, where it was flat out. */
const RUNNING_ON = /hair|plugs? |flat out|governor/;
const ROWS = PENCILLED.filter(
  ({ units, text, lines }) => units === 'us' && lines.length > 0 && !RUNNING_ON.test(text),
);

law(
  '11: two lines in one mean what each means, or nothing is stored',
  fc.tuple(fc.constantFrom(...ROWS), fc.constantFrom(...ROWS), fc.constantFrom(', ', '; ', ' but ')),
  ([one, other, between]) => {
    const text = `${one.text}${between}${other.text}`;
    const apart = [...(storedBy(one) ?? []), ...(storedBy(other) ?? [])];
    for (const key of storedBy({ text, units: 'us' }) ?? []) expect(apart, text).toContain(key);
  },
);
