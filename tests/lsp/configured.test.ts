/** Settings of each notebook, as the editor has them for its folder, over a real connection. */
import { mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import type { Diagnostic, WorkspaceDiagnosticReport } from 'vscode-languageserver/node';
import { connect, type Editor, LONGEST_WAIT, until } from './connect.ts';
import { putFile } from './disk.ts';

const WRONG = 'session 2026-05-02\n  initial 9 F\n';

/** By folder. */
let settings: Readonly<Record<string, object | (() => Promise<object>)>>;
const asked: string[] = [];
let editor: Editor;
let root: string;

beforeAll(async () => {
  root = realpathSync(mkdtempSync(join(tmpdir(), 'configured-')));
  for (const folder of ['boats', 'lorries']) putFile(join(root, folder, 'closed.tappet'), WRONG);
  settings = { boats: { severity: { 'wrong-unit': 'error' } }, lorries: {} };
  editor = await connect({
    folders: ['boats', 'lorries'].map(uriOf),
    settings: (uri) => {
      asked.push(pathOf(uri));
      const own = settings[folderOf(uri)];
      return typeof own === 'function' ? own() : own;
    },
  });
});
afterAll(async () => {
  expect(editor.logged).toEqual([]);
  expect(await editor.stop()).toBe(0);
  rmSync(root, { recursive: true });
});
beforeEach(() => void asked.splice(0));

const uriOf = (path: string): string => pathToFileURL(join(root, path)).href;
const pathOf = (uri: string): string => uri.slice(uriOf('').length + 1);
const folderOf = (uri: string): string => pathOf(uri).split('/')[0] as string;
const tell = () => editor.connection.sendNotification('workspace/didChangeConfiguration', { settings: null });

async function opened(path: string, text = WRONG) {
  const textDocument = { uri: uriOf(path), languageId: 'tappet', version: 1, text };
  await editor.connection.sendNotification('textDocument/didOpen', { textDocument });
  const told = () => editor.published().filter(({ uri }) => uri === textDocument.uri);
  const severities = (holds: (severities: readonly unknown[]) => boolean) =>
    until(`findings of ${path}`, () => {
      const found = told()
        .at(-1)
        ?.diagnostics.map(({ severity }: Diagnostic) => severity);
      return found && holds(found) ? found : undefined;
    });
  const ask = <Answer>(method: string, params: object = {}): Promise<Answer> =>
    editor.connection.sendRequest(`textDocument/${method}`, { textDocument, ...params });
  const type = (version: number) =>
    editor.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri: textDocument.uri, version },
      contentChanges: [{ range: { start: AT, end: AT }, text: ' ' }],
    });
  const close = () => editor.connection.sendNotification('textDocument/didClose', { textDocument });
  return { told, severities, ask, type, close };
}

const AT = { line: 1, character: 0 };
const options = { tabSize: 4, insertSpaces: true };
const any = () => true;

test('each notebook is held to the settings of its own folder, from the first answer on', async () => {
  settings = { boats: { severity: { 'wrong-unit': 'error' } }, lorries: { format: { indent: 4 } } };
  await tell();
  const [boat, lorry] = [await opened('boats/a.tappet'), await opened('lorries/a.tappet')];
  expect(await lorry.ask('formatting', { options })).toMatchObject([{ newText: '    ' }, {}]);
  expect(await boat.ask('formatting', { options })).toMatchObject([{ range: { start: { character: 9 } } }]);
  expect([await boat.severities(any), await lorry.severities(any)]).toEqual([[1], [2]]);
  await Promise.all([boat.close(), lorry.close()]);
});

test('a keystroke asks nothing; a change is asked for once, and told', async () => {
  const boat = await opened('boats/b.tappet');
  await boat.severities(any);
  expect(asked).toEqual(['boats/b.tappet']);
  for (let version = 2; version < 9; version++) {
    await boat.type(version);
    await boat.ask('inlayHint', { range: { start: AT, end: AT } });
  }
  await until('the last version', () => boat.told().find(({ version }) => version === 8));
  expect(asked).toEqual(['boats/b.tappet']);
  settings = { ...settings, boats: { severity: { 'wrong-unit': 'hint' } } };
  await tell();
  expect(await boat.severities(([first]) => first === 4)).toEqual([4]);
  expect(asked).toEqual(['boats/b.tappet', 'boats/b.tappet']);
  await boat.close();
});

test('notebooks that are not open are held to those of their folder, which is asked for once', async () => {
  settings = { boats: { severity: { 'wrong-unit': 'off' } }, lorries: {} };
  await tell();
  const ask = () =>
    editor.connection.sendRequest<WorkspaceDiagnosticReport>('workspace/diagnostic', {
      previousResultIds: [],
    });
  const counts = async () =>
    Object.fromEntries(
      (await ask()).items.map((item) => [folderOf(item.uri), 'items' in item && item.items.length]),
    );
  await vi.waitFor(async () => expect(await counts()).toEqual({ boats: 0, lorries: 1 }), LONGEST_WAIT);
  await ask();
  expect(asked.toSorted()).toEqual(['boats', 'lorries']);
});

test('an editor that is slow to answer, or answers with an error, is served all the same', async () => {
  let answer: (settings: object) => void = () => undefined;
  settings = {
    boats: () =>
      new Promise<object>((resolve) => {
        answer = resolve;
      }),
    lorries: () => Promise.reject(new Error('not now')),
  };
  await tell();
  const [boat, lorry] = [await opened('boats/c.tappet'), await opened('lorries/c.tappet')];
  expect(await lorry.severities(any)).toEqual([2]);
  expect(editor.logged).toEqual([expect.stringContaining('not now')]);
  (editor.logged as string[]).splice(0);
  expect(await boat.severities(any)).toEqual([2]);
  answer({ severity: { 'wrong-unit': 'error' } });
  expect(await boat.severities(([first]) => first === 1)).toEqual([1]);
  await Promise.all([boat.close(), lorry.close()]);
});
