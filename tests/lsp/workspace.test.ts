/** Several notebooks and the files around them, over a real connection. */
import {
  mkdtempSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import {
  type DocumentLink,
  type LocationLink,
  LSPErrorCodes,
  type Range,
  type WorkspaceEdit,
} from 'vscode-languageserver/node';
import { textOf } from '../../server/model/snapshot/locate.ts';
import { edit } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { type Editor, LONGEST_WAIT, unready, until } from './connect.ts';
import { putFile } from './disk.ts';

const FILES: Readonly<Record<string, string>> = {
  'shop/limits.tappet': 'limits\n  total <= 30 deg\nwords\n  flap gap: setting, 2..5 mm\n',
  'boats/marsh.tappet':
    'use ../shop/limits.tappet\nsession 2026-05-02  As found\n  total 31 deg\n  flap gap 3 mm\n  photo photos/a b.jpg\n  photo photos/none.jpg ; meant: file-missing\n',
  'boats/other.tappet':
    'use ../shop/limits.tappet\nsession 2031-01-01\n  flap-gap 4 mm\n  photo photos/a b.jpg\n',
  'boats/photos/a b.jpg': 'no picture',
  'node_modules/x/hidden.tappet': 'session 2032-01-01  Hidden\n',
};

let editor: Editor;
let root: string;
const progress: { token: unknown; value: { kind: string; percentage?: number } }[] = [];
const registered: string[] = [];

beforeAll(async () => {
  root = realpathSync(mkdtempSync(join(tmpdir(), 'workspace-')));
  writeAll();
  editor = unready();
  const { connection } = editor;
  connection.onRequest('window/workDoneProgress/create', () => null);
  connection.onRequest('client/registerCapability', ({ registrations }) => {
    registered.push(...registrations.map(({ method }: { method: string }) => method));
    return null;
  });
  connection.onNotification('$/progress', (told) => void progress.push(told as (typeof progress)[number]));
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: null,
    workspaceFolders: [{ uri: uriOf(''), name: 'work' }],
    capabilities: {
      window: { workDoneProgress: true },
      workspace: { workspaceFolders: true, didChangeWatchedFiles: { dynamicRegistration: true } },
      textDocument: { definition: { linkSupport: true } },
    },
  });
  await connection.sendNotification('initialized', {});
});

afterAll(async () => {
  expect(editor.logged).toEqual([]);
  expect(await editor.stop()).toBe(0);
  rmSync(root, { recursive: true });
});

beforeEach(writeAll);

function writeAll(): void {
  for (const [path, text] of Object.entries(FILES)) write(path, text);
}

const write = (path: string, text: string) => putFile(join(root, path), text);

const uriOf = (path: string): string => pathToFileURL(join(root, path)).href;
const named = (uri: string): string => decodeURIComponent(uri).slice(uriOf('-').length - 1);

async function opened(path: string, text = FILES[path] as string) {
  const uri = uriOf(path);
  const before = editor.published().length;
  await editor.connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'tappet', version: 1, text },
  });
  const codes = (holds: (codes: readonly string[]) => boolean) =>
    until(`findings of ${path}`, () => {
      const told = editor
        .published()
        .slice(before)
        .findLast((each) => each.uri === uri);
      const found = told?.diagnostics.map(({ code }) => `${code}`);
      return found && holds(found) ? found : undefined;
    });
  const ask = <Answer>(method: string, params: object = {}): Promise<Answer> =>
    editor.connection.sendRequest(`textDocument/${method}`, { textDocument: { uri }, ...params });
  const close = () => editor.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
  return { uri, codes, ask, close };
}

const changedFile = (path: string, type: 1 | 2 | 3) =>
  editor.connection.sendNotification('workspace/didChangeWatchedFiles', {
    changes: [{ uri: uriOf(path), type }],
  });
const symbols = async (query: string): Promise<readonly string[]> => {
  const found: { name: string; location: { uri: string } }[] = await editor.connection.sendRequest(
    'workspace/symbol',
    { query },
  );
  return found.map(({ name, location }) => `${named(location.uri)}: ${name}`);
};
const at = (line: number, character: number) => ({ position: { line, character } });

test('notebooks that are not open are read, with progress, and kept fresh', async () => {
  await until('the end of the reading', () => progress.find(({ value }) => value.kind === 'end'));
  expect(progress.map(({ value }) => value.kind)).toEqual(['begin', 'report', 'report', 'report', 'end']);
  expect(registered).toContain('workspace/didChangeWatchedFiles');
  expect(await symbols('2031')).toEqual(['boats/other.tappet: 2031-01-01']);
  expect(await symbols('flap')).toEqual(['shop/limits.tappet: flap gap']);
  expect(await symbols('hidden')).toEqual([]);
  write('new.tappet', 'session 2033-03-03\n');
  await changedFile('new.tappet', 1);
  expect(await symbols('2033')).toEqual(['new.tappet: 2033-03-03']);
  unlinkSync(join(root, 'new.tappet'));
  await changedFile('new.tappet', 3);
  expect(await symbols('2033')).toEqual([]);
});

test('what an open notebook says wins over its file', async () => {
  const notebook = await opened('boats/other.tappet', 'session 2034-04-04\n');
  expect(await symbols('203')).toEqual(['boats/other.tappet: 2034-04-04']);
  await notebook.close();
  expect(await symbols('203')).toEqual(['boats/other.tappet: 2031-01-01']);
});

test('limits and words come from the page that is used, and follow it', async () => {
  const marsh = await opened('boats/marsh.tappet');
  expect(await marsh.codes((codes) => codes.length > 0)).toEqual(['over-limit']);
  write('shop/limits.tappet', 'limits\n  total <= 40 deg\n');
  await changedFile('shop/limits.tappet', 2);
  expect(await marsh.codes((codes) => !codes.includes('over-limit'))).toEqual(['asked']);
  const shop = await opened('shop/limits.tappet');
  await marsh.codes((codes) => codes.join() === 'over-limit');
  await shop.close();
  await marsh.codes((codes) => codes.join() === 'asked');
  unlinkSync(join(root, 'shop/limits.tappet'));
  await changedFile('shop/limits.tappet', 3);
  await marsh.codes((codes) => codes[0] === 'use-missing');
  write('shop/limits.tappet', 'use ../boats/marsh.tappet\n');
  await changedFile('shop/limits.tappet', 1);
  await marsh.codes((codes) => codes[0] === 'use-cycle');
  await marsh.close();
  await changedFile('shop/limits.tappet', 2);
});

test('a definition in the page that is used', async () => {
  writeAll();
  await changedFile('shop/limits.tappet', 2);
  const marsh = await opened('boats/marsh.tappet');
  await marsh.codes((codes) => codes.join() === 'over-limit');
  const links = await marsh.ask<LocationLink[]>('definition', at(2, 4));
  const places = links.map(({ targetUri, targetRange }) => `${named(targetUri)} ${targetRange.start.line}`);
  expect(places).toEqual(['boats/marsh.tappet 0', 'shop/limits.tappet 1']);
  expect(await marsh.ask('references', { ...at(2, 4), context: { includeDeclaration: true } })).toHaveLength(
    1,
  );
  expect(await marsh.ask('documentHighlight', at(3, 4))).toEqual([{ range: range(3, 2, 3, 10), kind: 3 }]);
  await marsh.close();
});

test('links to the files that are there', async () => {
  const marsh = await opened('boats/marsh.tappet');
  const links = await marsh.ask<DocumentLink[]>('documentLink');
  expect(links.map(({ target }) => named(target as string))).toEqual([
    'shop/limits.tappet',
    'boats/photos/a b.jpg',
  ]);
  await marsh.close();
});

test('a word is renamed in all that use it, open or not', async () => {
  const shop = await opened('shop/limits.tappet');
  const where = at(3, 4);
  expect(await shop.ask('prepareRename', where)).toEqual({
    range: range(3, 2, 3, 10),
    placeholder: 'flap gap',
  });
  const answer = await shop.ask<WorkspaceEdit>('rename', { ...where, newName: 'air flap' });
  const after = textsAfter(answer);
  expect(Object.keys(after).sort()).toEqual([
    'boats/marsh.tappet',
    'boats/other.tappet',
    'shop/limits.tappet',
  ]);
  expect(after['boats/other.tappet']).toBe(FILES['boats/other.tappet']?.replace('flap-gap', 'air flap'));
  expect(after['shop/limits.tappet']).toBe(FILES['shop/limits.tappet']?.replace('flap gap', 'air flap'));
  await expect(shop.ask('prepareRename', at(1, 3))).rejects.toMatchObject({
    code: LSPErrorCodes.RequestFailed,
    message: expect.stringContaining('"total" is a built-in word'),
  });
  await expect(shop.ask('rename', { ...where, newName: 'initial' })).rejects.toMatchObject({
    code: LSPErrorCodes.RequestFailed,
  });
  await shop.close();
});

test.each<[from: string, to: string, changed: Readonly<Record<string, readonly [string, string]>>]>([
  [
    'boats/photos/a b.jpg',
    'boats/photos/c.jpg',
    {
      'boats/marsh.tappet': ['photos/a b.jpg', 'photos/c.jpg'],
      'boats/other.tappet': ['photos/a b.jpg', 'photos/c.jpg'],
    },
  ],
  [
    'shop',
    'store',
    { 'boats/marsh.tappet': ['../shop/', '../store/'], 'boats/other.tappet': ['../shop/', '../store/'] },
  ],
  ['boats/other.tappet', 'boats/old/other.tappet', { 'boats/other.tappet': ['', ''] }],
  ['boats', 'ships', {}],
])('paths follow a file: %s to %s', async (oldPath, newPath, changed) => {
  const marsh = await opened('boats/marsh.tappet');
  const answer: WorkspaceEdit = await editor.connection.sendRequest('workspace/willRenameFiles', {
    files: [{ oldUri: uriOf(oldPath), newUri: uriOf(newPath) }],
  });
  const after = textsAfter(answer);
  expect(Object.keys(after).sort()).toEqual(Object.keys(changed));
  for (const [path, [from, to]] of Object.entries(changed))
    if (from) expect(after[path]).toBe(FILES[path]?.replaceAll(from, to));
  if (oldPath === 'boats/other.tappet')
    expect(after[oldPath]).toBe(
      FILES[oldPath]?.replace('../shop', '../../shop').replace('photos/', '../photos/'),
    );
  await marsh.close();
});

test('a folder more, and one less', async () => {
  const other = realpathSync(mkdtempSync(join(tmpdir(), 'second-')));
  writeFileSync(join(other, 'second.tappet'), 'session 2035-05-05\n');
  const folder = { uri: pathToFileURL(other).href, name: 'second' };
  const tell = (event: object) =>
    editor.connection.sendNotification('workspace/didChangeWorkspaceFolders', { event });
  await tell({ added: [folder], removed: [] });
  await untilFound('2035', [`${named(pathToFileURL(join(other, 'second.tappet')).href)}: 2035-05-05`]);
  await tell({ added: [], removed: [folder] });
  await untilFound('2035', []);
  rmSync(other, { recursive: true });
});

test('a folder renamed, and one deleted', async () => {
  const tell = (what: string, files: readonly object[]) =>
    editor.connection.sendNotification(`workspace/${what}`, { files });
  write('barges/ebb.tappet', 'session 2036-06-06\n');
  await changedFile('barges/ebb.tappet', 1);
  await untilFound('2036', ['barges/ebb.tappet: 2036-06-06']);
  renameSync(join(root, 'barges'), join(root, 'lighters'));
  await tell('didRenameFiles', [{ oldUri: uriOf('barges'), newUri: uriOf('lighters') }]);
  await untilFound('2036', ['lighters/ebb.tappet: 2036-06-06']);
  rmSync(join(root, 'lighters'), { recursive: true });
  await tell('didDeleteFiles', [{ uri: uriOf('lighters') }]);
  await untilFound('2036', []);
});

async function untilFound(query: string, wanted: readonly string[]): Promise<void> {
  await vi.waitFor(async () => expect(await symbols(query)).toEqual(wanted), LONGEST_WAIT);
}

const range = (line: number, from: number, toLine: number, to: number): Range => ({
  start: { line, character: from },
  end: { line: toLine, character: to },
});

/** The texts of the files after the edits, by path. */
function textsAfter({ changes = {} }: WorkspaceEdit): Readonly<Record<string, string>> {
  const texts = Object.entries(changes).map(([uri, edits]) => {
    const path = named(uri);
    const backwards = edits.toReversed().map(({ range, newText }) => ({ range, text: newText }));
    return [path, textOf(backwards.reduce(edit, openNotebook(readFileSync(join(root, path), 'utf8'))))];
  });
  return Object.fromEntries(texts);
}
