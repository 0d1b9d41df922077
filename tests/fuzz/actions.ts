/** Code actions: each edit lies inside the text, mends what it says it mends, and touches no other line's meaning. */
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { comparePositions, cutLines, type Position } from '../../grammar/index.ts';
import { type ActionAround, type CodeAction, codeActionsAt } from '../../server/features/code-actions.ts';
import {
  findingsIn,
  lineCount,
  linesBetween,
  parsedLine,
  textOf,
} from '../../server/model/snapshot/locate.ts';
import type { LineState } from '../../server/model/snapshot/page.ts';
import type { Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { withEdits } from '../harness/checks.ts';
import type { Fuzzer } from './fuzzer.ts';
import { text } from './texts.ts';

const AROUND: ActionAround = {
  levels: new Map(),
  units: new Map(),
  indent: 2,
  today: '2026-05-03',
  only: undefined,
  elsewhere: () => ['b.tappet', 'a b; c.tappet'],
};

function isInside(snapshot: Snapshot, { title, edits }: CodeAction): void {
  assert.notEqual(title, '');
  const sorted = [...edits].sort((a, b) => comparePositions(a.range.start, b.range.start));
  let last: Position = { line: 0, character: 0 };
  for (const { range } of sorted) {
    assert.ok(comparePositions(last, range.start) <= 0, 'edits overlap');
    assert.ok(comparePositions(range.start, range.end) <= 0, 'an edit ends before it begins');
    assert.ok(range.end.line < lineCount(snapshot), 'an edit below the text');
    assert.ok(
      range.end.character <= parsedLine(snapshot, range.end.line).text.length,
      'an edit behind its line',
    );
    last = range.end;
  }
}

/** What was found is found no more where it was; what another rule finds there then is no matter. */
function isMended(after: Snapshot, { title, found, edits }: CodeAction): void {
  for (const { finding } of found) {
    if (!finding) continue;
    const { at, code, span } = finding;
    const here = edits.filter(({ range }) => range.start.line === at);
    const from = movedTo(span.from, here);
    const stays = findingsIn(after, at, at + 1).filter((each) => each.code === code);
    const isSilence = here.some(({ text }) => text.includes(code));
    const same = stays.find((each) => isSilence || (each.span.from <= from && from < each.span.to));
    assert.equal(same, undefined, `${title}: ${code} on line ${at + 1} stays, ${JSON.stringify(edits)}`);
  }
}

/** A column of a line after the edits that lie before it. */
function movedTo(column: number, edits: CodeAction['edits']): number {
  const before = edits.filter(
    ({ range: { start, end } }) => start.character < column && end.character <= column,
  );
  return before.reduce(
    (at, { range: { start, end }, text }) => at + text.length - (end.character - start.character),
    column,
  );
}

/** Lines on which all below them may hang. */
const GIVES_MEANING: ReadonlySet<string> = new Set([
  'section',
  'session',
  'word',
  'spec',
  'part',
  'trial',
  'file',
  'port',
  'fact',
]);

/** What each line means, by its text where that is the same. Origins differ where a line was put in above. */
const meaningOf = ({ entry }: LineState): string =>
  JSON.stringify(entry, (key, value) =>
    key === 'by' || key === 'ref' || key === 'line' ? undefined : value,
  );

/** Lines that no edit touches mean what they meant. */
function isOtherwiseAsBefore(after: Snapshot, { title, edits }: CodeAction, before: Snapshot): void {
  const touched = new Map(edits.map(({ range, text }) => [range.start.line, text]));
  const [was, is] = [[...linesBetween(before)], [...linesBetween(after)]];
  const mayChangeOthers = [...touched.keys()].some(
    (line) => GIVES_MEANING.has(was[line]?.entry.kind ?? '') || GIVES_MEANING.has(is[line]?.entry.kind ?? ''),
  );
  if (mayChangeOthers) return;
  let moved = 0;
  for (const [line, reading] of was.entries()) {
    const put = touched.get(line);
    if (put !== undefined) moved += cutLines(`${put}x`).length - 1;
    else
      assert.equal(
        meaningOf(is[line + moved] as LineState),
        meaningOf(reading),
        `${title}: line ${line + 1}`,
      );
  }
}

/** Comments stay, but those that an action is about. */
function commentsStay(after: string, { title, found }: CodeAction, before: string): void {
  if (title.startsWith('Silence ') || found.some(({ code }) => code === 'meant-unknown')) return;
  assert.deepEqual(commentsIn(after), commentsIn(before), title);
}

const commentsIn = (text: string) =>
  text.split(/\r\n|\r|\n/).flatMap((line) => /;.*$/.exec(line)?.[0].trim() ?? []);

function acts(text: string, at: Position): void {
  const before = openNotebook(text);
  for (const action of codeActionsAt(before, { start: at, end: at }, AROUND)) {
    isInside(before, action);
    if (action.edits.length === 0) continue;
    const now = withEdits(text, action.edits);
    const after = openNotebook(now);
    assert.notEqual(now, text, `${action.title}: changes nothing`);
    assert.equal(textOf(after), now);
    if (action.kind !== 'refactor.rewrite') isMended(after, action);
    isOtherwiseAsBefore(after, action, before);
    commentsStay(now, action, text);
  }
}

/** Where something was found, or anywhere. */
const place = (text: string): fc.Arbitrary<Position> => {
  const { findings } = openNotebook(text);
  const lines = findings.map(({ at }) => at);
  return fc.record({
    line: fc.oneof(
      { weight: 3, arbitrary: lines.length > 0 ? fc.constantFrom(...lines) : fc.constant(0) },
      { weight: 1, arbitrary: fc.nat({ max: cutLines(text).length }) },
    ),
    character: fc.nat({ max: 40 }),
  });
};

export const actions: Fuzzer = {
  name: 'actions',
  stepsPerRun: 1,
  property: () =>
    fc.property(
      text.chain((text) => fc.tuple(fc.constant(text), place(text))),
      ([text, at]) => acts(text, at),
    ),
};
