/** What is found in notebooks that are not open, over a real connection. */
import { mkdtempSync, readFileSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import type { WorkspaceDiagnosticReport, WorkspaceEdit } from 'vscode-languageserver/node';
import { type Editor, LONGEST_WAIT, unready } from './connect.ts';
import { putFile } from './disk.ts';

/** So many that they are not all read when the first question comes. */
const MANY = 40;

let editor: Editor;
let root: string;
beforeAll(async () => {
  root = realpathSync(mkdtempSync(join(tmpdir(), 'closed-')));
  write('limits.tappet', 'limits\n  total <= 30 deg\nwords\n  flap gap: setting, 2..5 mm\n');
  for (let i = 0; i < MANY; i++)
    write(`many-${i}.tappet`, 'use limits.tappet\nsession 2026-05-02\n  flap gap 3 mm\n');
  write('boat.tappet', 'use limits.tappet\nsession 2026-05-02\n  total 31 deg @ 3000 rpm\n');
  editor = unready();
  await editor.connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: uriOf('').slice(0, -1),
    capabilities: {},
  });
  await editor.connection.sendNotification('initialized', {});
});
afterAll(async () => {
  expect(editor.logged).toEqual([]);
  expect(await editor.stop()).toBe(0);
  rmSync(root, { recursive: true });
});

const uriOf = (name: string): string => pathToFileURL(`${root}/${name}`).href;
const write = (name: string, text: string) => putFile(join(root, name), text);

test('a word renamed before all have been read is renamed in all of them', async () => {
  const uri = uriOf('limits.tappet');
  const text = readFileSync(join(root, 'limits.tappet'), 'utf8');
  const textDocument = { uri, languageId: 'tappet', version: 1, text };
  await editor.connection.sendNotification('textDocument/didOpen', { textDocument });
  const params = { textDocument: { uri }, position: { line: 3, character: 4 }, newName: 'air flap' };
  const { changes }: WorkspaceEdit = await editor.connection.sendRequest('textDocument/rename', params);
  expect(Object.keys(changes ?? {})).toHaveLength(MANY + 1);
  await editor.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
});

const ask = (told: readonly object[] = []) =>
  editor.connection.sendRequest<WorkspaceDiagnosticReport>('workspace/diagnostic', {
    previousResultIds: told,
  });

/** Codes found in the boat's notebook; what kind of report it is where that has none. */
function codes({ items }: WorkspaceDiagnosticReport): readonly unknown[] | string | undefined {
  const found = items.find(({ uri }) => uri === uriOf('boat.tappet'));
  return found?.kind === 'full' ? found.items.map(({ code }) => code) : found?.kind;
}

test('they are made again only when the notebook, or one that it uses, changes', async () => {
  await vi.waitFor(async () => expect((await ask()).items).toHaveLength(MANY + 2), LONGEST_WAIT);
  await vi.waitFor(async () => expect(codes(await ask())).toEqual(['over-limit']), LONGEST_WAIT);
  const told = (await ask()).items.map(({ uri, resultId }) => ({ uri, value: resultId }));
  expect((await ask(told)).items.every(({ kind }) => kind === 'unchanged')).toBe(true);
  write('limits.tappet', 'limits\n  total <= 40 deg\n');
  await editor.connection.sendNotification('workspace/didChangeWatchedFiles', {
    changes: [{ uri: uriOf('limits.tappet'), type: 2 }],
  });
  await vi.waitFor(async () => expect(codes(await ask(told))).toEqual([]), LONGEST_WAIT);
});
