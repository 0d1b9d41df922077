/** What is found in a text that is streamed is what is found in the notebook that is kept, so that the terminal may let go what it has read. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Ref } from '../../server/model/entry/entry.ts';
import type { LocatedFinding } from '../../server/model/snapshot/finding.ts';
import { lineCount, lineOf, lineText } from '../../server/model/snapshot/locate.ts';
import { streamFindings } from '../../server/model/snapshot/read-pages.ts';
import { checkLine, openNotebook, RULES } from '../../server/rules/check.ts';
import { SEED } from './law.ts';
import { longNotebook, notebook } from './notebooks.ts';

const SHARED = () => ({ problem: 'missing' }) as const;

function same(text: string): void {
  const kept = openNotebook(text, SHARED);
  const stream = streamFindings(text, checkLine, SHARED);
  expect(told(stream.findings, stream.lineOf)).toEqual(told(kept.findings, (ref) => lineOf(kept, ref)));
  for (let line = -1; line <= lineCount(kept); line++)
    expect(stream.lineText(line)).toBe(line < 0 ? '' : lineText(kept, line));
}

const told = (findings: Iterable<LocatedFinding>, line: (ref: Ref) => number | undefined) =>
  [...findings].map(({ related, ...finding }) => ({
    ...finding,
    related: related.map(({ origin, message }) => [line(origin.ref), origin.date, message]),
  }));

test('any notebook', () => {
  fc.assert(fc.property(notebook, same), { numRuns: 300, seed: SEED });
});

test('notebooks longer than a page', () => {
  fc.assert(fc.property(longNotebook, same), { numRuns: 20, seed: SEED });
});

test('the examples of all rules, one after another', () => {
  same(RULES.map(({ bad, good }) => `${bad}${good}`).join(''));
});

test.each([
  'session 2026-05-02\n  initial 9 deg\nsession 2026-05-03\n  initial 30 deg\nsession 2026-05-04\n  revert to 2026-05-02\n  initial +1 deg\n',
  'session 2026-05-02\n  initial 9 deg\nsession 2026-05-02\n  initial 12 deg\n  revert to 2026-05-02\n  initial +1 deg\n',
  'session 2026-05-02\n  initial 9 deg\nlimits\n  initial 10 deg\nsession 2026-05-03\n  revert to 2026-05-02\n  initial +2 deg\n',
  'session 2026-05-03\n  revert to\u2028 2026-05-02\n',
])('days that are gone back to: %j', same);
