/** References and new names of words, parts and items, in one notebook and over several, whatever the names are. */
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { type Location, LSPErrorCodes, type WorkspaceEdit } from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { type LocatedMention, mentionAt, mentionsOf } from '../../server/features/mentions.ts';
import { renamableAt, renaming } from '../../server/features/rename.ts';
import { runToEnd } from '../../server/model/snapshot/interruptible.ts';
import { lineCount, linesBetween, lineText } from '../../server/model/snapshot/locate.ts';
import type { Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { withEdits } from '../harness/checks.ts';
import { line } from '../laws/notebooks.ts';
import { type Disk, FOLDER, talkAbout } from './connection.ts';
import type { Fuzzer } from './fuzzer.ts';
import { wellFormed } from './texts.ts';

/** Few, so that a name is often met again; odd, as a program may trip over them. */
const NAMES = [
  ...['flap gap', 'widget', 'Widget', 'FLAP-GAP', '__proto__', 'then', '9', '1st', 'idle', 'gap', 'in'],
  ...['🔧', 'שלום', 'مسمار', 'İdle', 'ß', 'ä', 'a\u0301', 'ﬁt', '\ud800x', 'x\udfff'],
  ...['constructor', 'toString', 'hasOwnProperty'],
];
const name = fc.constantFrom(...NAMES);
const newName = fc.oneof(
  name,
  fc.constantFrom('air flap', 'carb other', 'a b c d e', 'Gap-', '-', '', 'x\ny', '\u202eabc'),
);

const named = fc
  .tuple(
    fc.constantFrom<(name: string, other: string) => string>(
      (name) => `  carb ${name}  "a pair"`,
      (name) => `  ${name}: setting, 2..5 mm`,
      (name) => `  ${name}: reading, 1 mm`,
      (name) => `  todo ${name}: look at it`,
      (name) => `  done ${name}`,
      (name) => `  fit carb ${name}`,
      (name) => `  remove carb ${name} ; ${name}`,
      (name) => `  ${name} 3 mm`,
      (name) => `  ${name} 4 mm @ 900 rpm`,
      (name) => `  recheck ${name} after 1 heat cycle`,
      (name, other) => `  trial ${name} -> ${other}`,
      (name) => `  note ${name}`,
    ),
    name,
    name,
  )
  .map(([write, name, other]) => write(name, other));
const head = fc.constantFrom('parts', 'words', 'session 2026-05-02', 'session 2026-05-03', 'specs', 'limits');
const body = fc
  .array(
    fc.oneof({ weight: 6, arbitrary: named }, { weight: 2, arbitrary: head }, { weight: 1, arbitrary: line }),
    { minLength: 2, maxLength: 20 },
  )
  .map((lines) => lines.join('\n'));
const text = fc.tuple(name, body).map(([name, body]) => `words\n  ${name}: setting, 2..5 mm\n${body}`);

const kindsIn = (snapshot: Snapshot) => [...linesBetween(snapshot)].map(({ entry }) => entry.kind);
const linesOf = (mentions: readonly LocatedMention[]) => mentions.map(({ at }) => at);
const placesIn = (snapshot: Snapshot): readonly LocatedMention[] =>
  Array.from({ length: lineCount(snapshot) }, (_, at) => at).flatMap((at) => {
    const column = /\S/.exec(lineText(snapshot, at))?.index ?? 0;
    return [column, column + 6].flatMap((character) => mentionAt(snapshot, at, character) ?? []);
  });

/** Renamed, a notebook says of the new name what it said of the old one, and nothing of the old one. */
function isRenamed(text: string, nth: number, newName: string): void {
  const before = openNotebook(text);
  const places = placesIn(before);
  const place = places[nth % Math.max(1, places.length)];
  if (!place) return;
  const found = renamableAt(before, place.range.start);
  if ('refused' in found) return;
  const { subject } = found;
  const mentions = mentionsOf(before, subject);
  assert.ok(linesOf(mentions).includes(place.at), 'a name is not among its own references');
  const renamed = runToEnd(renaming(before, subject, newName));
  if ('refused' in renamed) return;
  assert.deepEqual(
    renamed.edits.map(({ range }) => range),
    mentions.map(({ range }) => range),
  );
  const after = openNotebook(withEdits(text, renamed.edits));
  assert.deepEqual(kindsIn(after), kindsIn(before));
  const [first] = mentions as readonly [LocatedMention];
  const now = mentionAt(after, first.at, first.range.start.character);
  assert.equal(now?.of, subject.of);
  assert.deepEqual(linesOf(mentionsOf(after, now as LocatedMention)), linesOf(mentions));
  if (now?.name !== subject.name) assert.deepEqual(mentionsOf(after, subject), []);
}

const FILES = ['a.tappet', 'b.tappet', 'c.tappet'] as const;
const USES = ['use b.tappet', 'use c.tappet', ''] as const;

interface Asked {
  readonly line: number;
  readonly character: number;
}

/** Over several notebooks a new name is at the places where the old one was. */
async function isRenamedEverywhere(texts: readonly string[], nth: number, newName: string): Promise<void> {
  const disk: Disk = new Map(FILES.map((file, i) => [file, wellFormed(`${USES[i]}\n${texts[i] ?? ''}`)]));
  const own = openNotebook(disk.get('c.tappet') as string);
  // The first of its line: what is renamed before a name moves it.
  const words = placesIn(own).filter(({ of, at }, i, all) => of === 'word' && all[i - 1]?.at !== at);
  const asked = words[nth % Math.max(1, words.length)]?.range.start;
  if (!asked) return;
  const { places, edit } = await renamedIn(disk, asked, newName);
  if (!edit) return;
  const after: Disk = new Map(disk);
  for (const change of edit.documentChanges ?? []) {
    assert.ok('edits' in change);
    const file = change.textDocument.uri.slice(FOLDER.length + 1);
    const document = TextDocument.create(file, 'tappet', 1, disk.get(file) as string);
    after.set(file, TextDocument.applyEdits(document, change.edits as never));
  }
  assert.deepEqual((await renamedIn(after, asked)).places, places);
}

/** What a server that has read the notebooks says of a place in the last of them. */
async function renamedIn(
  disk: Disk,
  position: Asked,
  newName?: string,
): Promise<{ readonly places: readonly string[]; readonly edit: WorkspaceEdit | undefined }> {
  const { connection, logged, stop } = await talkAbout(disk);
  const textDocument = {
    uri: `${FOLDER}/c.tappet`,
    languageId: 'tappet',
    version: 1,
    text: disk.get('c.tappet'),
  };
  await connection.sendNotification('textDocument/didOpen', { textDocument });
  const asked = { textDocument, position };
  // A file that is named is looked for meanwhile, and the notebook read again then: an editor asks again.
  const ask = async <Answer>(method: string, params: object): Promise<Answer> => {
    for (;;) {
      try {
        return await connection.sendRequest<Answer>(method, { ...asked, ...params });
      } catch (error) {
        if (codeOf(error) !== LSPErrorCodes.ContentModified) throw error;
      }
    }
  };
  const context = { includeDeclaration: true };
  const locations = await ask<Location[]>('textDocument/references', { context });
  const places = locations.map(({ uri, range }) => `${uri} ${range.start.line}`).toSorted();
  const edit =
    newName === undefined
      ? undefined
      : await ask<WorkspaceEdit>('textDocument/rename', { newName }).catch((error) => {
          assert.equal(codeOf(error), LSPErrorCodes.RequestFailed, String(error));
          return undefined;
        });
  await stop();
  assert.deepEqual(logged, []);
  return { places, edit };
}

const codeOf = (error: unknown) => (error as { readonly code?: unknown }).code;

export const names: Fuzzer = {
  name: 'names',
  stepsPerRun: 4,
  property: () =>
    fc.asyncProperty(
      fc.array(text, { minLength: 3, maxLength: 3 }),
      fc.nat({ max: 40 }),
      newName,
      async (texts, nth, newName) => {
        for (const each of texts) isRenamed(each, nth, newName);
        await isRenamedEverywhere(texts, nth, newName);
      },
    ),
};
