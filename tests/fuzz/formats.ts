/** Formatting: keeps tokens and meaning, twice is once, and leaves alone what it cannot read. */
import assert from 'node:assert/strict';
import fc from 'fast-check';
import {
  cutLines,
  everyToken,
  isEmpty,
  KIND,
  parseLine,
  type Range,
  withoutBreak,
} from '../../grammar/index.ts';
import { type FormatStyle, formatEdits } from '../../server/features/formatting.ts';
import { WRITING_REQUESTS } from '../../server/lsp/requests/writing.ts';
import { linesBetween } from '../../server/model/snapshot/locate.ts';
import type { Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { withEdits } from '../harness/checks.ts';
import type { Fuzzer } from './fuzzer.ts';
import { text } from './texts.ts';

const style = fc.record<FormatStyle>({
  indent: fc.nat({ max: 8 }),
  unitSpelling: fc.constantFrom('as written', 'table'),
});
const at = fc.record({ line: fc.nat({ max: 40 }), character: fc.oneof(fc.constant(0), fc.nat({ max: 60 })) });
const range = fc
  .tuple(at, at)
  .map(([a, b]): Range => (a.line <= b.line ? { start: a, end: b } : { start: b, end: a }));

const CONFLICT = /^(?:<{7}|={7}|>{7}|\|{7})(?: |$)/;

/** Whether a line is to stay as it is, to the last space. */
function isBroken(line: string): boolean {
  const { syntax, tokens } = parseLine(withoutBreak(line));
  return !isEmpty(syntax.stray) || tokens.kinds.includes(KIND.Unknown) || CONFLICT.test(line);
}

const tokensOf = (line: string) =>
  [...everyToken(line)].filter(({ kind }) => kind !== KIND.Blank).map(({ kind, text }) => kind + text);
const breakOf = (line: string) => line.slice(withoutBreak(line).length);
const kindsIn = (snapshot: Snapshot) => [...linesBetween(snapshot)].map(({ entry }) => entry.kind);
const foundIn = ({ findings }: Snapshot) => findings.map(({ at, code }) => `${at} ${code}`);

/** What must hold between a text and what formatting makes of it, line by line. */
function sameLines(
  before: string,
  after: string,
  { unitSpelling }: FormatStyle,
  isMeant: (line: number) => boolean,
) {
  const [old, now] = [cutLines(before), cutLines(after)];
  assert.equal(now.length, old.length);
  for (const [i, line] of old.entries()) {
    const other = now[i] as string;
    if (!isMeant(i) || isBroken(line)) assert.equal(other, line);
    assert.equal(breakOf(other), breakOf(line));
    if (unitSpelling === 'as written') assert.deepEqual(tokensOf(other), tokensOf(line));
  }
}

function formatsWhole(before: string, style: FormatStyle): void {
  const snapshot = openNotebook(before);
  const after = withEdits(before, formatEdits(snapshot, style));
  sameLines(before, after, style, () => true);
  const again = openNotebook(after);
  assert.deepEqual(formatEdits(again, style), []);
  assert.deepEqual(kindsIn(again), kindsIn(snapshot));
  assert.deepEqual(foundIn(again), foundIn(snapshot));
}

function formatsRange(before: string, style: FormatStyle, range: Range): void {
  const after = withEdits(before, formatEdits(openNotebook(before), style, range));
  const { start, end } = range;
  sameLines(before, after, style, (line) => line >= start.line && line <= end.line);
  assert.deepEqual(formatEdits(openNotebook(after), style, range), []);
}

/** As the row of the protocol answers a break that was typed. */
async function formatsOnType(before: string, style: FormatStyle, { start: { line } }: Range): Promise<void> {
  const row = WRITING_REQUESTS.find(({ method }) => method === 'textDocument/onTypeFormatting');
  assert.equal(row?.about, 'notebook');
  const asked = { snapshot: openNotebook(before), settings: { format: style } };
  const params = { ch: '\n', position: { line, character: 0 } };
  const edits = (await row.answer(asked as never, params)) as {
    readonly range: Range;
    readonly newText: string;
  }[];
  const after = withEdits(
    before,
    edits.map(({ range, newText }) => ({ range, text: newText })),
  );
  sameLines(before, after, style, (each) => each === line - 1);
}

export const formats: Fuzzer = {
  name: 'formats',
  stepsPerRun: 3,
  property: () =>
    fc.asyncProperty(text, style, range, async (text, style, range) => {
      formatsWhole(text, style);
      formatsRange(text, style, range);
      await formatsOnType(text, style, range);
    }),
};
