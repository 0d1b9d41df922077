/** Notebooks as people keep them: pieces of the samples in any order, with lines gone wrong between them. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { cutLines, withoutBreak } from '../../grammar/index.ts';
import { stretchesOf } from '../../server/model/snapshot/section-ranges.ts';
import { open } from '../../server/model/snapshot/snapshot.ts';
import { line } from '../laws/notebooks.ts';

const SAMPLES = new URL('../../samples/', import.meta.url);

export const sample = (name: string): string => readFileSync(new URL(name, SAMPLES), 'utf8');

/** Each the lines of one section, its head first. */
const SECTIONS: readonly (readonly string[])[] = readdirSync(SAMPLES)
  .filter((name) => name.endsWith('.tappet'))
  .map(sample)
  .flatMap((text) => {
    const lines = cutLines(text).map(withoutBreak);
    return stretchesOf(open(text, () => [])).map(({ from, to }) => lines.slice(from, to));
  });

/** Some lines of a section. */
export const section: fc.Arbitrary<readonly string[]> = fc.oneof(
  ...SECTIONS.map((lines) => fc.subarray([...lines], { minLength: 1 })),
);

const workLines = [
  ...new Set(SECTIONS.flatMap((lines) => lines.slice(1)).filter((each) => each.trim() !== '')),
];

export const bookLine: fc.Arbitrary<string> = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...workLines) },
  { weight: 1, arbitrary: line },
);

export const bookLines: fc.Arbitrary<readonly string[]> = fc.array(bookLine, { minLength: 1, maxLength: 8 });

export const book: fc.Arbitrary<string> = fc
  .array(fc.oneof({ weight: 3, arbitrary: section }, { weight: 1, arbitrary: bookLines }), { maxLength: 9 })
  .map((pieces) => pieces.flat().join('\n'));
