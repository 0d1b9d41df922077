/** Every word counts (a word that is misspelt on purpose is none of the trade): what is written in the notation is accounted for, and what is put between its words is not. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseLine } from '../../grammar/index.ts';
import { unaccounted } from '../../server/model/entry/every-word-counts.ts';
import { readEntry } from '../../server/model/entry/read-entry.ts';
import { linesBetween } from '../../server/model/snapshot/locate.ts';
import { CHANGES, COMPARISONS, TROUBLES, WANTS } from '../../server/model/spoken/lexicon.ts';
import { readSpoken } from '../../server/model/spoken/read.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { findQuantity } from '../../server/trade/vocabulary/vocabulary.ts';
import { law } from '../laws/law.ts';
import { keysOf } from './entries.ts';

const root = join(import.meta.dirname, '../..');
const NOTATION = readFileSync(join(root, 'grammar/NOTATION.md'), 'utf8');
const examples = [...NOTATION.matchAll(/^```tappet\n([\s\S]*?)^```$/gm)].map(([, text]) => text as string);
const samples = readdirSync(join(root, 'samples'))
  .filter((name) => name.endsWith('.tappet'))
  .map((name) => [name, readFileSync(join(root, 'samples', name), 'utf8')] as const);

const leftIn = (text: string): readonly string[] =>
  [...linesBetween(openNotebook(text))].flatMap(({ entry, before }) =>
    (entry.kind === 'unknown' ? [] : unaccounted(entry, before.section)).map(
      (word) => `${entry.line.text.trim()}: ${word.text}`,
    ),
  );

test.each(examples)('%s', (text) => expect(leftIn(text)).toEqual([]));
test.each(samples)('%s', (_, text) => expect(leftIn(text)).toEqual([]));

const LEFT: readonly (readonly [text: string, left: string])[] = [
  ['initial 2 deg less', 'less'],
  ['throttle cable stiff', 'stiff'],
  ['idle 7 to 800 rpm', '7'],
  ['oil 50 cold', '50'],
  ['fuel dripping off the bowl', 'dripping bowl'],
  ['idle 850 rpm should be 800', '800 should'],
  ['water 180 F but the fan was on', 'but was'],
  ['main jet 110 next time', 'next time'],
  ['timing 22', '22'],
];

describe('a word that is no part of the meaning', () => {
  test.each(LEFT)('%s', (text, left) => {
    const entry = readEntry(parseLine(text), {
      section: 'session',
      words: new Map(),
      specs: new Map(),
      inConflict: false,
    });
    const found = unaccounted(entry, 'session').map((word) => word.text);
    expect(found).toEqual(expect.arrayContaining(left.split(' ')));
  });
});

const AROUND = { section: 'session', words: new Map(), specs: new Map(), inConflict: false } as const;
const HABITS = { units: 'us', cylinders: 8 } as const;

/** What a line would leave in force: read as it stands, or as plain speech where that reads one thing. */
function stored(text: string): readonly string[] {
  const entry = readEntry(parseLine(text), AROUND);
  const isRead =
    entry.kind !== 'unknown' && entry.kind !== 'row' && unaccounted(entry, 'session').length === 0;
  if (isRead) return keysOf([text]);
  const spoken = readSpoken(text, AROUND, HABITS);
  return spoken.status === 'spoken' ? keysOf(spoken.as) : [];
}

const GOOD = [
  'initial 10 deg',
  'idle 850 rpm in neutral',
  'water 180 F',
  'oil pressure 45 psi hot',
  'mixture left 1 1/2 turns',
  'main jet 70',
  'timing 12 deg @ 800 rpm',
  'depression 17 inHg at idle',
  'plug #4 tan',
  'knock none',
  'plug gap 0.035 in',
  'dwell 30 deg',
  '12 initial, 34 total',
  'oil 50 cold, 28 hot',
];
/** Direction, number and place change what a line means, and so they do where they are put in. */
const TURNS =
  /^(?:in|out|up|down|more|less|back|another|extra|n?either|lower|higher|lowered|raised|added|took|gave|give|advanced?|retard(?:ed)?|richer|leaner|weaker|richened|leaned|weakened|opened|closed|upped|bumped|increased|decreased|bigger|larger|smaller|from|over|under|maybe|hi|high|low|want|todo|now|no|not)$/;
const foreign = [...TROUBLES, ...COMPARISONS, ...WANTS, ...CHANGES].filter(
  (word) => !TURNS.test(word) && findQuantity([word]) === undefined,
);
const word = fc.oneof(
  fc.constantFrom(...foreign),
  fc.stringMatching(/^[bcfghjklmpqrstvwz][aeou]{1,2}[bcdgjklmpqvwxz]{2,5}$/),
);

law(
  '11: a word put into a good line changes no meaning: it is the same, or nothing is stored',
  fc.tuple(fc.constantFrom(...GOOD), word, fc.nat()),
  ([line, put, at]) => {
    const words = line.split(' ');
    const text = words.toSpliced(at % (words.length + 1), 0, put).join(' ');
    const wanted = stored(line);
    expect(wanted.length).toBeGreaterThan(0);
    for (const key of stored(text))
      if (!/^(?:todo|fault|check)/.test(key)) expect(wanted, text).toContain(key);
  },
);
