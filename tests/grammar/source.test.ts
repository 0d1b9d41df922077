/** Lines and positions, held to the protocol's own text document. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { comparePositions, cutLines, endsInBreak, replaceIn, withoutBreak } from '../../grammar/index.ts';
import { SEED } from '../laws/law.ts';

const piece = fc.oneof(
  fc.constantFrom(
    '\r',
    '\n',
    '\r\n',
    'initial 9 deg',
    '🔧',
    '🇳🇱',
    'שלום',
    '\0',
    '\ud83d',
    '\u2028',
    '\ufeff',
    ' ',
  ),
  fc.string({ unit: 'binary', maxLength: 5 }),
);
const anyText = fc.array(piece, { maxLength: 20 }).map((pieces) => pieces.join(''));
const position = fc.record({ line: fc.nat({ max: 15 }), character: fc.nat({ max: 30 }) });
const range = fc
  .tuple(position, position)
  .map(([a, b]) => (comparePositions(a, b) <= 0 ? { start: a, end: b } : { start: b, end: a }));
const document = (text: string) => TextDocument.create('bench:x', 'tappet', 1, text);
const always = <T>(values: fc.Arbitrary<T>, holds: (value: T) => void) =>
  fc.assert(fc.property(values, holds), { numRuns: 500, seed: SEED });

describe('as the protocol counts them', () => {
  test('lines', () =>
    always(anyText, (text) => {
      const [lines, outside] = [cutLines(text), document(text)];
      expect(lines.join('')).toBe(text);
      expect(lines.length).toBe(outside.lineCount);
      let offset = 0;
      for (const [line, raw] of lines.entries()) {
        expect(outside.offsetAt({ line, character: 0 })).toBe(offset);
        expect(outside.positionAt(offset + withoutBreak(raw).length)).toEqual({
          line,
          character: withoutBreak(raw).length,
        });
        offset += raw.length;
      }
    }));

  test('edits', () =>
    always(fc.tuple(anyText, range, anyText), ([text, where, put]) => {
      const lines = cutLines(text);
      // Lines past the end are the snapshot's to answer for.
      fc.pre(where.end.line < lines.length);
      expect(replaceIn(lines, where, put)).toBe(
        TextDocument.applyEdits(document(text), [{ range: where, newText: put }]),
      );
    }));
});

test.each([
  ['', ['']],
  ['a', ['a']],
  ['a\n', ['a\n', '']],
  ['a\r\nb\rc\nd', ['a\r\n', 'b\r', 'c\n', 'd']],
  ['\n\r', ['\n', '\r', '']],
  ['\r\r\n', ['\r', '\r\n', '']],
  ['a\u2028b\u0085c\fd', ['a\u2028b\u0085c\fd']],
])('%j is cut after its breaks', (text, lines) => expect(cutLines(text)).toEqual(lines));

test.each([
  ['a\r\n', 'a', true],
  ['a\n', 'a', true],
  ['a\r', 'a', true],
  ['a', 'a', false],
  ['\n', '', true],
])('%j without its break', (raw, line, ends) => {
  expect(withoutBreak(raw)).toBe(line);
  expect(endsInBreak(raw)).toBe(ends);
});
