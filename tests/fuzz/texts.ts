/** Texts to fuzz with: notebooks of the laws, lines of the samples and of every rule's examples, and what goes wrong with a text. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { RULES } from '../../server/rules/check.ts';
import { anyLine, line, longNotebook, notebook } from '../laws/notebooks.ts';

const SAMPLES = join(import.meta.dirname, '../../samples');

const samples = readdirSync(SAMPLES)
  .filter((name) => name.endsWith('.tappet'))
  .map((name) => readFileSync(join(SAMPLES, name), 'utf8'));
const examples = RULES.flatMap(({ good, bad }) => [good, bad]);

const linesOf = (texts: readonly string[]) => [...new Set(texts.flatMap((text) => text.split('\n')))];
const writtenLine = fc.constantFrom(...linesOf([...samples, ...examples]));

/** Characters that a program may trip over: halves of a pair, directions, marks, breaks that are none here, controls. */
const TRAPS = [
  ...['\ud800', '\udfff', '\u202e', '\u2066', '\u200b', '\u0301', '\u2028', '\u0085', '\v', '\f', '\ufeff'],
  ...['\u00a0', '\0', '\t', '🔧', '🇳🇱', 'שלום', 'ﬁ', 'İ', 'ß', '½', '٣', '—', '“', '”'],
];
export const trap = fc.constantFrom(...TRAPS);

/** What a merge leaves behind where two people changed the same lines. */
const CONFLICT = ['<<<<<<< mine', '=======', '||||||| before', '>>>>>>> theirs'];

const anyWrittenLine = fc.oneof(
  { weight: 6, arbitrary: writtenLine },
  { weight: 4, arbitrary: line },
  { weight: 1, arbitrary: anyLine },
  { weight: 1, arbitrary: fc.constantFrom(...CONFLICT) },
);

/** A line with something put in, taken out or doubled at one place. */
const wornLine = fc
  .tuple(anyWrittenLine, fc.nat({ max: 40 }), fc.nat({ max: 3 }), fc.oneof(trap, fc.string({ maxLength: 3 })))
  .map(([text, at, taken, put]) => text.slice(0, at) + put.replace(/[\r\n]/g, '') + text.slice(at + taken));

const mixed = fc
  .array(fc.oneof({ weight: 5, arbitrary: anyWrittenLine }, { weight: 1, arbitrary: wornLine }), {
    maxLength: 30,
  })
  .chain((lines) => fc.constantFrom('\n', '\r\n', '\r').map((lineBreak) => lines.join(lineBreak)));

/** A notebook of any sort. */
export const text = fc.oneof(
  { weight: 6, arbitrary: mixed },
  { weight: 3, arbitrary: notebook },
  { weight: 2, arbitrary: fc.constantFrom(...examples) },
  { weight: 1, arbitrary: fc.constantFrom(...samples) },
  { weight: 1, arbitrary: longNotebook },
);

const HALF_OF_A_PAIR = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** As a text comes through the protocol: a lone half of a pair becomes another character. */
export const wellFormed = (text: string): string => text.replace(HALF_OF_A_PAIR, '\ufffd');
