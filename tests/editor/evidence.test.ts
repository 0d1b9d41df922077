/** Whether a run counts as passed hangs on this reader, so it must refuse whatever is not a full, good run. */
import { expect, test } from 'vitest';
import { allPassed, suiteReader } from './evidence.ts';

test.each([
  ['a good run', ['[suite]   ok a\n', '[suite] 1 passed, 0 failed\n'], true],
  ['marked lines behind a prefix', ['[log] [suite] 2 passed, 0 failed\n'], true],
  ['a failed test', ['[suite] 1 passed, 1 failed\n'], false],
  ['no test', ['[suite] 0 passed, 0 failed\n'], false],
  ['an end before the summary', ['[suite]   ok a\n'], false],
  ["another program's summary", ['7 passed, 0 failed\n'], false],
  ['a summary inside a message', ['[suite]   FAILED a: 3 passed, 0 failed\n'], false],
  ['silence', [], false],
])('%s', (_, output, good) => {
  const suite = suiteReader(() => undefined);
  for (const text of output) suite.take(text);
  expect(allPassed(suite.counts())).toBe(good);
});

test('hands on every line but the summary', () => {
  const lines: string[] = [];
  suiteReader((line) => lines.push(line)).take('noise\n[suite]   ok a\n[suite] 1 passed, 0 failed\n');
  expect(lines).toEqual(['  ok a']);
});
