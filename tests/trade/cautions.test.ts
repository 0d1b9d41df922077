/** Cautions by work: every word they name is one of the vocabulary, and none of them calls anything safe. */
import { expect, test } from 'vitest';
import { CAUTIONS, cautionsFor } from '../../server/trade/practice/cautions.ts';
import { VOCABULARY } from '../../server/trade/vocabulary/vocabulary.ts';

const ids = (quantity: string, words = ''): string =>
  cautionsFor(quantity, words.split(' '))
    .map(({ id }) => id)
    .join(' ');

test.each<[quantity: string, words: string, ids: string]>([
  ['idle', '', 'carbon-monoxide hot-parts-and-fans'],
  ['idle', 'Drive', 'carbon-monoxide hot-parts-and-fans idle-in-gear'],
  ['fuel line', '', 'fuel-opened'],
  ['speed', '', 'road-run'],
  ['boost', '', 'boost'],
  ['knock', 'road', 'road-run'],
  ['plug gap', '', ''],
  ['initial', '', ''],
])('%s %s', (quantity, words, expected) => expect(ids(quantity, words)).toBe(expected));

test('they name words of the vocabulary', () => {
  const names = new Set(VOCABULARY.map(({ name }) => name));
  const unknown = CAUTIONS.flatMap(({ quantities }) => [...quantities]).filter((name) => !names.has(name));
  expect(unknown).toEqual([]);
});

test('they are short, and never say that anything is safe', () => {
  for (const { text } of CAUTIONS) {
    expect(text).not.toMatch(/\bsafe/i);
    expect(text.length).toBeLessThan(150);
  }
});
