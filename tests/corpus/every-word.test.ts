/** Every word counts (a word that is misspelt on purpose is none of the trade): what is written in the notation is accounted for, and what is put between its words is not. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parseLine } from '../../grammar/index.ts';
import { entryOf } from '../../server/model/entries.ts';
import { unaccounted } from '../../server/model/every-word-counts.ts';
import { readingsBetween } from '../../server/model/locate.ts';
import { openNotebook } from '../../server/rules/index.ts';

const root = join(import.meta.dirname, '../..');
const NOTATION = readFileSync(join(root, 'grammar/NOTATION.md'), 'utf8');
const examples = [...NOTATION.matchAll(/^```tappet\n([\s\S]*?)^```$/gm)].map(([, text]) => text as string);
const samples = readdirSync(join(root, 'samples'))
  .filter((name) => name.endsWith('.tappet'))
  .map((name) => [name, readFileSync(join(root, 'samples', name), 'utf8')] as const);

const leftIn = (text: string): readonly string[] =>
  [...readingsBetween(openNotebook(text))].flatMap(({ entry, before }) =>
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
    const entry = entryOf(parseLine(text), { section: 'session', words: new Map(), specs: new Map() });
    const found = unaccounted(entry, 'session').map((word) => word.text);
    expect(found).toEqual(expect.arrayContaining(left.split(' ')));
  });
});
