/** The only callers of what finds its way in a notebook: a marked notebook in, places and texts out. */
import { expect } from 'vitest';
import { comparePositions, cutLines, type Range } from '../../grammar/index.ts';
import { definitionAt } from '../../server/features/definition.ts';
import { linksIn, pathEdits, type TextEdit } from '../../server/features/document-links.ts';
import { mentionAt } from '../../server/features/mentions.ts';
import { highlighting, referring } from '../../server/features/references.ts';
import { renamableAt, renaming } from '../../server/features/rename.ts';
import { runToEnd } from '../../server/model/snapshot/interruptible.ts';
import { textOf } from '../../server/model/snapshot/locate.ts';
import type { Shared } from '../../server/model/snapshot/look-up.ts';
import { edit, type Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { type Fixture, fixture } from './fixture.ts';

interface Asked extends Fixture {
  readonly snapshot: Snapshot;
  readonly cursor: NonNullable<Fixture['cursor']>;
}

function asked(marked: string, shared?: Shared): Asked {
  const read = fixture(marked);
  if (!read.cursor) throw new Error('no ‸ in the notebook');
  return { ...read, cursor: read.cursor, snapshot: openNotebook(read.text, shared) };
}

/** The lines that are gone to, without their indentation; a file as `-> path`, with what is looked for in it. */
export function goneTo(marked: string, shared?: Shared): readonly string[] {
  const { snapshot, cursor, text } = asked(marked, shared);
  const definition = definitionAt(snapshot, cursor);
  if (!definition) return [];
  const lines = definition.lines.map(({ start }) => (cutLines(text)[start.line] ?? '').trim());
  const { file } = definition;
  return file ? [...lines, `-> ${[file.path, file.subject?.name].filter(Boolean).join(' # ')}`] : lines;
}

/** Holds the references at `‸` to what stands between « and ». */
export function expectReferences(marked: string, definitions = true): void {
  const { snapshot, cursor, ranges } = asked(marked);
  const subject = mentionAt(snapshot, cursor.line, cursor.character);
  const found = subject ? runToEnd(referring(snapshot, subject, definitions)) : [];
  expect(found).toEqual(inOrder(ranges));
  if (definitions)
    expect(runToEnd(highlighting(snapshot, cursor)).map(({ range }) => range)).toEqual(inOrder(ranges));
}

const inOrder = (ranges: readonly Range[]): readonly Range[] =>
  [...ranges].sort((a, b) => comparePositions(a.start, b.start));

/** The roles of what is marked in the text, in the order of lines. */
export function rolesAt(marked: string): readonly string[] {
  const { snapshot, cursor } = asked(marked);
  return runToEnd(highlighting(snapshot, cursor)).map(({ role }) => role);
}

/** The text after a rename at `‸`, or why there is none. */
export function renamedTo(newName: string, marked: string, shared?: Shared): string {
  const { snapshot, cursor } = asked(marked, shared);
  const renamable = renamableAt(snapshot, cursor);
  if ('refused' in renamable) return renamable.refused;
  const renamed = runToEnd(renaming(snapshot, renamable.subject, newName));
  return 'refused' in renamed ? renamed.refused : textAfter(snapshot, renamed.edits);
}

/** The text after the paths that begin with `from` begin with `to`. */
export function movedFiles(from: string, to: string, text: string): string {
  const snapshot = openNotebook(fixture(text).text);
  const moved = (path: string) => (path.startsWith(from) ? to + path.slice(from.length) : undefined);
  return textAfter(snapshot, pathEdits(snapshot, moved));
}

/** `word path` of every link, held to what stands between « and ». */
export function linkTexts(marked: string): readonly string[] {
  const { text, ranges } = fixture(marked);
  const links = linksIn(openNotebook(text));
  expect(links.map(({ range }) => range)).toEqual(inOrder(ranges));
  return links.map(({ word, path }) => `${word} ${path}`);
}

/** Edits are of the text as it was; they must not overlap. */
function textAfter(snapshot: Snapshot, edits: readonly TextEdit[]): string {
  const ordered = [...edits].sort((a, b) => comparePositions(a.range.start, b.range.start));
  for (const [i, { range }] of ordered.entries()) {
    const next = ordered[i + 1];
    if (next) expect(comparePositions(range.end, next.range.start)).toBeLessThanOrEqual(0);
  }
  return textOf(ordered.toReversed().reduce(edit, snapshot));
}
