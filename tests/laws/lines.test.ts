/** Laws 1 to 3: what a line is, and what it depends on. */
import fc from 'fast-check';
import { expect } from 'vitest';
import { everyToken, parseLine } from '../../grammar/index.ts';
import { linesBetween } from '../../server/model/snapshot/locate.ts';
import { lookUpAbove } from '../../server/model/snapshot/look-up.ts';
import { open, pageAt } from '../../server/model/snapshot/snapshot.ts';
import { entryOfLine } from '../../server/model/spoken/line-entry.ts';
import { applyEntry } from '../../server/model/state/apply-entry.ts';
import { same } from '../../server/model/state/immutable.ts';
import { law } from './law.ts';
import { anyLine, line, notebook } from './notebooks.ts';

const NO_CHECK = () => [];

law('law 1: the tokens of a line joined are the line', fc.oneof(line, anyLine), (text) => {
  const tokens = [...everyToken(text)];
  expect(tokens.map((token) => token.text).join('')).toBe(text);
  for (const token of tokens) expect(text.slice(token.from, token.to)).toBe(token.text);
});

law('law 2: a line reads the same whatever was read before it', fc.tuple(line, notebook), ([text, other]) => {
  const alone = structuredClone(parseLine(text));
  for (const each of other.split('\n')) parseLine(each);
  expect(parseLine(text)).toEqual(alone);
});

law('law 2: a line reads the same wherever it stands', notebook, (text) => {
  for (const { entry } of linesBetween(open(text, NO_CHECK)))
    expect(entry.line).toEqual(parseLine(entry.line.text));
});

law('law 3: an entry depends on its line and on what is carried to it alone', notebook, (text) => {
  const snapshot = open(text, NO_CHECK);
  for (const { entry, before, after, where, at } of linesBetween(snapshot)) {
    // A copy: nothing but plain data can be leaned on.
    const copy = structuredClone(before);
    const again = entryOfLine(entry.line.text, copy);
    expect(again).toEqual(entry);
    if (entry.kind === 'blank') expect(after).toBe(before);
    else
      expect(same(applyEntry(copy, again, where, lookUpAbove(snapshot, pageAt(snapshot, at))), after)).toBe(
        true,
      );
  }
});
