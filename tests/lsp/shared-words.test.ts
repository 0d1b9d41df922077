/** Words that several notebooks share, and changes held to the version that was looked at, over a real connection. */
import { mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import type { CodeAction, Location, TextDocumentEdit, WorkspaceEdit } from 'vscode-languageserver/node';
import { connect, type Editor, LONGEST_WAIT } from './connect.ts';
import { putFile } from './disk.ts';

const FILES: Readonly<Record<string, string>> = {
  'shop.tappet': 'words\n  flap gap: setting, 2..5 mm\n',
  'near.tappet': 'use shop.tappet\nsession 2026-05-02\n  flap gap 3 mm\n  Flap-Gap 4 mm\n',
  'far.tappet': 'use near.tappet\nsession 2026-05-03\n  note flap gap\n  trial flap gap -> idle\n',
  'open.tappet': 'use shop.tappet\n',
  'own.tappet': 'use shop.tappet\nwords\n  flap gap: reading, 1 mm\n',
  'of-own.tappet': 'use own.tappet\nsession 2026-05-02\n  flap gap 1 mm\n',
  'both.tappet': 'use own.tappet\nuse shop.tappet\nsession 2026-05-02\n  flap gap 2 mm\n',
  'none.tappet': 'use shop.tappet\nsession 2026-05-02\n  idle 850 rpm\n',
  'alone.tappet': 'session 2026-05-02\n  flap gap 2 mm\n',
};
const SHARING = ['both 3', 'far 3', 'near 2', 'near 3', 'open 2', 'shop 1'];

let editor: Editor;
let root: string;

beforeAll(async () => {
  root = realpathSync(mkdtempSync(join(tmpdir(), 'words-')));
  for (const [path, text] of Object.entries(FILES)) putFile(join(root, path), text);
  editor = await connect({
    folders: [pathToFileURL(root).href],
    capabilities: {
      workspace: { workspaceEdit: { documentChanges: true } },
      textDocument: { codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [] } } } },
    },
  });
  // Not yet saved: what is typed counts, not the file.
  await open('open', `${FILES['open.tappet']}session 2026-05-02\n  flap gap 5 mm\n`, 7);
});
afterAll(async () => {
  expect(editor.logged).toEqual([]);
  expect(await editor.stop()).toBe(0);
  rmSync(root, { recursive: true });
});

const uriOf = (name: string): string => pathToFileURL(join(root, `${name}.tappet`)).href;
const nameIn = (uri: string): string => uri.slice(uriOf('').length - '.tappet'.length, -'.tappet'.length);

async function open(name: string, text = FILES[`${name}.tappet`] as string, version = 1) {
  const textDocument = { uri: uriOf(name), languageId: 'tappet', version, text };
  await editor.connection.sendNotification('textDocument/didOpen', { textDocument });
  const ask = <Answer>(method: string, params: object): Promise<Answer> =>
    editor.connection.sendRequest(`textDocument/${method}`, { textDocument, ...params });
  const close = () => editor.connection.sendNotification('textDocument/didClose', { textDocument });
  return { ask, close };
}

test.each([
  ['the notebook that says what it is', 'shop', 1, SHARING],
  ['one that uses it', 'near', 2, SHARING],
  ['one that uses it through another', 'far', 3, SHARING],
  ['the last of two that give it', 'both', 3, SHARING],
  ['one that says something else by it', 'own', 2, ['of-own 2', 'own 2']],
  ['one that has it from there', 'of-own', 2, ['of-own 2', 'own 2']],
])('references from %s', async (_, name, line, found) => {
  const notebook = await open(name);
  const asked = { position: { line, character: 8 }, context: { includeDeclaration: true } };
  const places = await notebook.ask<Location[]>('references', asked);
  expect(nameIn(places[0]?.uri ?? '')).toBe(name);
  expect(places.map(({ uri, range }) => `${nameIn(uri)} ${range.start.line}`).toSorted()).toEqual(found);
  await notebook.close();
});

test('references without the line that defines it', async () => {
  const notebook = await open('near');
  const asked = { position: { line: 2, character: 4 }, context: { includeDeclaration: false } };
  const places = await notebook.ask<Location[]>('references', asked);
  expect(places.map(({ uri }) => nameIn(uri))).not.toContain('shop');
  expect(places).toHaveLength(SHARING.length - 1);
  await notebook.close();
});

test('a new name reaches the same lines, each notebook held to its version', async () => {
  const notebook = await open('shop');
  const { documentChanges, changes } = await notebook.ask<WorkspaceEdit>('rename', {
    position: { line: 1, character: 4 },
    newName: 'air flap',
  });
  expect(changes).toBeUndefined();
  const all = documentChanges as TextDocumentEdit[];
  const lines = all.flatMap(({ textDocument, edits }) =>
    edits.map((edit) => `${nameIn(textDocument.uri)} ${'range' in edit && edit.range.start.line}`),
  );
  expect(lines.toSorted()).toEqual(SHARING);
  const versions = all.map(({ textDocument: { uri, version } }) => [nameIn(uri), version]);
  expect(Object.fromEntries(versions)).toEqual({ both: null, far: null, near: null, open: 7, shop: 1 });
  await notebook.close();
});

test('so do paths that follow a file', async () => {
  const files = [{ oldUri: uriOf('shop'), newUri: uriOf('store') }];
  const { documentChanges }: WorkspaceEdit = await editor.connection.sendRequest(
    'workspace/willRenameFiles',
    {
      files,
    },
  );
  const versions = (documentChanges as TextDocumentEdit[]).map(({ textDocument: { uri, version } }) => [
    nameIn(uri),
    version,
  ]);
  expect(Object.fromEntries(versions)).toEqual({ both: null, near: null, none: null, open: 7, own: null });
});

test('a notebook that is used under a wrong path is found by its name', async () => {
  putFile(join(root, 'deep/er/moved.tappet'), 'limits\n  total <= 30 deg\n');
  putFile(join(root, 'moved.txt'), '');
  const uri = pathToFileURL(join(root, 'deep/er/moved.tappet')).href;
  await editor.connection.sendNotification('workspace/didChangeWatchedFiles', {
    changes: [{ uri, type: 1 }],
  });
  const notebook = await open('new', 'use gone/Moved.tappet\n');
  const start = { line: 0, character: 6 };
  const asked = { range: { start, end: start }, context: { diagnostics: [], only: ['quickfix'] } };
  const fix = {
    title: 'Use "deep/er/moved.tappet"',
    isPreferred: true,
    edit: { documentChanges: [{ edits: [{ newText: 'deep/er/moved.tappet' }] }] },
  };
  // The file that was told of has to be read first.
  const offered = async () => (await notebook.ask<CodeAction[]>('codeAction', asked))[0];
  await vi.waitFor(async () => expect(await offered()).toMatchObject(fix), LONGEST_WAIT);
  await notebook.close();
});
