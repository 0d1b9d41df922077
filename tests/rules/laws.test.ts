/** What holds for the findings of any text: made of the rules' own examples, broken and shuffled, and of any signs. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutLines, withoutBreak } from '../../grammar/index.ts';
import { RULES, ruleOf } from '../../server/rules/check.ts';
import { SEED } from '../laws/law.ts';
import { found } from './found.ts';

const LINES = RULES.flatMap(({ good, bad }) => [...good.split('\n'), ...bad.split('\n')]).filter(
  (line) => line.length < 200,
);
const line = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...LINES) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(fc.constantFrom(...LINES), fc.constantFrom(...LINES), fc.nat(40))
      .map(([a, b, at]) => a.slice(0, at) + b.slice(at)),
  },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 30 }) },
);
const notebook = fc.array(line, { maxLength: 30 }).map((lines) => lines.join('\n'));

test('nothing throws, every code is in the table, every span and edit lies inside its line', () => {
  fc.assert(
    fc.property(notebook, (text) => {
      const lines = cutLines(text).map(withoutBreak);
      for (const { at, code, span, message, fixes } of found(text)) {
        const end = (lines[at] as string).length;
        const spans = [span, ...fixes.flatMap((fix) => fix.edits.map((edit) => edit.span))];
        expect(ruleOf(code)).toBeDefined();
        expect(message).not.toMatch(/undefined|NaN|\[object|Infinity/);
        for (const { from, to } of spans)
          expect([0 <= from, from <= to, to <= end]).toEqual([true, true, true]);
      }
    }),
    { numRuns: 500, seed: SEED },
  );
});

test('the edits of a fix do not overlap', () => {
  fc.assert(
    fc.property(notebook, (text) => {
      for (const fix of found(text).flatMap(({ fixes }) => fixes)) {
        const edits = [...fix.edits].sort((a, b) => a.span.from - b.span.from);
        edits.slice(1).forEach((edit, i) => {
          expect(edit.span.from).toBeGreaterThanOrEqual(edits[i]?.span.to ?? 0);
        });
      }
    }),
    { seed: SEED },
  );
});

test('a message names no line: it would be stale once a line is added above', () => {
  // A fuel line, or a red line, is no line of the notebook: `fuel line 3 in is outside`.
  const named = /(?<!fuel |red )\bline \d/i;
  fc.assert(
    fc.property(notebook, (text) =>
      found(text).every(({ message }) => !named.test(message.replace(/"[^"]*"/g, ''))),
    ),
    { seed: SEED },
  );
});
