/** A rename reads again only what it must; held to reading the whole notebook again from its text, line by line. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutLines } from '../../grammar/index.ts';
import { type LocatedMention, mentionAt, mentionsOf } from '../../server/features/mentions.ts';
import { type Refusal, renamableAt, renaming } from '../../server/features/rename.ts';
import { runToEnd } from '../../server/model/snapshot/interruptible.ts';
import { lineCount, linesBetween, textOf } from '../../server/model/snapshot/locate.ts';
import type { Shared } from '../../server/model/snapshot/look-up.ts';
import { open, type Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { stateGiven } from '../../server/model/snapshot/used-notebooks.ts';
import { kindOfPart } from '../../server/model/state/fitted-parts.ts';
import { findQuantity } from '../../server/trade/vocabulary/vocabulary.ts';
import { SEED } from './law.ts';

const LINES = [
  'parts',
  '  carb twin  "two"',
  '  distributor old',
  'words',
  '  flap gap: setting, 2..5 mm',
  '  widget: reading, 1 mm',
  'specs',
  '  flap gap torque 10 lb-ft',
  'session 2026-05-02',
  'session 2026-05-03',
  '  fit Carb Twin',
  '  fit distributor-old',
  '  remove carb twin',
  '  todo widget: look',
  '  done widget',
  '  recheck widget after 1 heat cycle',
  '  flap-gap 3 mm',
  '  flap gap 4 mm @ 900 rpm',
  '  widget 2 mm',
  '  air flap 2 mm',
  '  idle 850 rpm',
  '  trial flap gap -> widget',
  '  trial flap gap -> flap gap',
  '    3 mm 900 mm',
  '  revert to 2026-05-02',
  '  note flap gap',
  '  carb gap 3 mm',
  'use shop',
  '',
];
const NAMES = [
  'air flap',
  'Widget',
  'flap',
  'carb other',
  'distributor',
  'pump',
  'gap',
  'FLAP-GAP',
  'idle',
  'ä',
  'cold',
];
const notebooks = fc.array(fc.constantFrom(...LINES), { minLength: 3, maxLength: 40 });
const SHOP = stateGiven(open('words\n  shim: reading, 1 mm\n', () => []));
const shared: Shared = () => SHOP;

test.each(NAMES)('to %s', (name) => {
  fc.assert(
    fc.property(notebooks, fc.nat(), (lines, at) => {
      const snapshot = open(lines.join('\n'), () => [], shared);
      for (let line = 0; line < lineCount(snapshot); line++) {
        const found = renamableAt(snapshot, { line: (line + at) % lineCount(snapshot), character: 7 });
        if ('refused' in found) continue;
        const renamed = runToEnd(renaming(snapshot, found.subject, name));
        expect(said(renamed)).toEqual(slowly(snapshot, mentionsOf(snapshot, found.subject), name));
        break;
      }
    }),
    { numRuns: 150, seed: SEED },
  );
});

test('what it tells of the notebook afterwards is what that gives, also where another one gives something else', () => {
  const snapshot = open('use shop\nsession 2026-05-02\n  shim 1 mm\n', () => [], shared);
  const given = stateGiven(open('words\n  washer: reading, 1 mm\n', () => []));
  const subject = mentionAt(snapshot, 2, 4) as LocatedMention;
  expect(subject.of).toBe('word');
  const renamed = runToEnd(renaming(snapshot, subject, 'washer', () => given));
  expect(renamed).toMatchObject({ edits: [{ text: 'washer', range: { start: { line: 2 } } }] });
  expect('given' in renamed && [...renamed.given.words.keys()]).toEqual(['washer']);
  expect(runToEnd(renaming(snapshot, subject, 'washer', () => SHOP))).toHaveProperty('refused');
});

type Renamed = ReturnType<typeof renaming> extends Generator<void, infer R> ? R : never;

const said = (renamed: Renamed) =>
  'refused' in renamed
    ? reasonOf(renamed)
    : { lines: renamed.edits.map(({ range }) => range.start.line), given: renamed.given };

/** What the two ways may word differently is only which of several reasons they come upon. */
const reasonOf = ({ refused }: Refusal): string | undefined =>
  /can't be the name: (.*)/.exec(refused)?.[1] ?? refused;

/** Names that are refused by themselves are not the matter here. */
function slowly(snapshot: Snapshot, mentions: readonly LocatedMention[], text: string): unknown {
  const name = text.toLowerCase().replace(/[\s-]+/g, ' ');
  const [subject] = mentions as [LocatedMention];
  const words = name.split(' ');
  if (subject.of === 'word' && findQuantity(words, 0, undefined)?.length === words.length)
    return expect.stringContaining('is a built-in word');
  if (name !== subject.name && mentionsOf(snapshot, { of: subject.of, name }).length > 0)
    return expect.stringContaining('already');
  const lines = cutLines(textOf(snapshot));
  for (const { at, span } of mentions.toReversed())
    lines[at] = lines[at]?.slice(0, span.from) + text + lines[at]?.slice(span.to);
  const after = open(lines.join(''), () => [], snapshot.shared);
  const [was, is] = [[...linesBetween(snapshot)], [...linesBetween(after)]];
  for (const [i, { entry, before }] of was.entries()) {
    const other = is[i] as (typeof is)[number];
    const [part, otherPart] = [partOf(entry, before), partOf(other.entry, other.before)];
    if (part !== otherPart)
      return otherPart ? `it would be read as a ${otherPart}.` : `the name must say that it is a ${part}.`;
    if (entry.kind !== other.entry.kind) return `line ${i + 1} would be read as something else.`;
  }
  const at = mentionsOf(after, { of: subject.of, name }).map((each) => each.at);
  return at.join() === mentions.map((each) => each.at).join()
    ? { lines: at, given: stateGiven(after) }
    : 'it already means something else here.';
}

type Line = ReturnType<typeof linesBetween> extends Generator<infer R> ? R : never;

const partOf = (entry: Line['entry'], before: Line['before']) =>
  entry.kind === 'part' ? entry.part : entry.kind === 'fit' ? kindOfPart(before, entry.name) : undefined;
