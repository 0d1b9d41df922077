/** Each word of the trade in the ways it is pencilled. */
import { expect, test } from 'vitest';
import { keysOf } from './entries.ts';
import { PENCILLED, storedBy } from './pencilled.ts';

test.each(PENCILLED.map((each) => [each.text, each] as const))('%s', (_, each) =>
  expect(storedBy(each)).toEqual(each.lines.length > 0 ? keysOf(each.lines) : undefined),
);
