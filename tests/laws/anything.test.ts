/** Laws 4, 6 and 8: any text has an answer, in which everything points inside the text and has its name in the table. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { everyToken, lex } from '../../grammar/index.ts';
import { totalsOf } from '../../server/analysis/ignition/timing-totals.ts';
import { lineCount, lineOf, linesBetween, parsedLine, textOf } from '../../server/model/snapshot/locate.ts';
import { edit, type Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook, ruleOf } from '../../server/rules/check.ts';
import { law } from './law.ts';
import { notebook } from './notebooks.ts';

const anyText = fc.oneof(
  notebook,
  fc.string({ unit: 'binary', maxLength: 400 }),
  fc.string({ unit: 'grapheme', maxLength: 200 }),
  fc.uint8Array({ maxLength: 400 }).map((bytes) => new TextDecoder('utf-8').decode(bytes)),
  fc.uint8Array({ maxLength: 400 }).map((bytes) => String.fromCharCode(...bytes)),
);

/** Everything a snapshot is asked for. */
function ask(snapshot: Snapshot): void {
  for (const { after } of linesBetween(snapshot)) totalsOf(after);
  for (const { message } of snapshot.findings) expect(message).not.toBe('');
}

law('law 4: no text throws, and none is lost', anyText, (text) => {
  const snapshot = openNotebook(text);
  ask(snapshot);
  expect(textOf(snapshot)).toBe(text);
});

const anyPlace = fc.record({
  line: fc.integer({ min: -2, max: 60 }),
  character: fc.integer({ min: -2, max: 500 }),
});
const anyRange = fc.record({ start: anyPlace, end: anyPlace });

law(
  'law 4: no change throws, wherever its range lies',
  fc.tuple(anyText, anyRange, anyText),
  ([text, range, replacement]) => ask(edit(openNotebook(text), { range, text: replacement })),
);

describe('law 4: of any size', () => {
  const long = 10_000_000;
  test.each([
    ['one line of one letter', 'x'.repeat(long)],
    ['one line of numbers', '9 '.repeat(long / 2)],
    ['one line of quotes', '"'.repeat(long)],
    ['line breaks alone', '\n'.repeat(long / 20)],
    ['breaks of both kinds alone', '\r\n\r'.repeat(long / 60)],
    ['noughts', '\0'.repeat(long)],
    ['many short lines', 'initial 9 deg\n'.repeat(long / 200)],
    ['many sections', 'engine\n'.repeat(long / 200)],
  ])(
    '%s',
    (_, text) => {
      const snapshot = openNotebook(text);
      expect(textOf(snapshot) === text).toBe(true);
      const last = { line: lineCount(snapshot) - 1, character: 0 };
      const after = edit(snapshot, { range: { start: last, end: last }, text: 'idle 850 rpm' });
      expect(textOf(after).length).toBe(text.length + 12);
    },
    120_000,
  );

  test.each(['9', ' ', '#', '-', '"', '1-', '1,', '1/', '[a', 'in ', 'all ', '.', ';', 'é', '+9 h '])(
    'a line of 2000 signs that begin a token: %j',
    (sign) => {
      const text = sign.repeat(2000 / sign.length);
      expect([...everyToken(text, lex(text))].map((token) => token.text).join('')).toBe(text);
    },
  );
});

law('law 6: every span lies inside its line', notebook, (text) => {
  for (const { entry } of linesBetween(openNotebook(text)))
    for (const each of entry.kind === 'spoken' ? entry.entries : [entry])
      for (const { from, to } of spansIn(each)) inside(from, to, each.line.text);
});

law('law 6: findings and their fixes lie inside the text, and edits do not overlap', anyText, (text) => {
  const snapshot = openNotebook(text);
  for (const { at, span, related, fixes } of snapshot.findings) {
    const line = parsedLine(snapshot, at).text;
    inside(span.from, span.to, line);
    for (const { origin } of related) expect(lineOf(snapshot, origin.ref)).toBeTypeOf('number');
    for (const { edits } of fixes) {
      const sorted = [...edits].sort((a, b) => a.span.from - b.span.from);
      for (const [i, { span }] of sorted.entries()) {
        inside(span.from, span.to, line);
        expect(span.from).toBeGreaterThanOrEqual(sorted[i - 1]?.span.to ?? 0);
      }
    }
  }
});

law('law 8: every finding has its code in the table', anyText, (text) => {
  for (const { code, severity } of openNotebook(text).findings) expect(ruleOf(code)?.severity).toBe(severity);
});

function inside(from: number, to: number, line: string): void {
  expect(from).toBeGreaterThanOrEqual(0);
  expect(to).toBeGreaterThanOrEqual(from);
  expect(to).toBeLessThanOrEqual(line.length);
}

function* spansIn(value: unknown): Generator<{ readonly from: number; readonly to: number }> {
  if (typeof value !== 'object' || value === null) return;
  if ('from' in value && 'to' in value) yield value as { from: number; to: number };
  else for (const each of Object.values(value)) yield* spansIn(each);
}
