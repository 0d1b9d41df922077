/** Suggestions, hints, lenses and commands, over a real connection. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import {
  type ApplyWorkspaceEditParams,
  type CodeLens,
  type CompletionList,
  ErrorCodes,
  type InlayHint,
  InsertTextFormat,
} from 'vscode-languageserver/node';
import { connect, type Editor, until } from './connect.ts';

const TEXT = `session 2026-05-02  As found
  initial  9 deg
  mechanical  0 deg @ 900 rpm, 22 deg @ 3200 rpm
  keep

session 2026-05-03
  initial  11 deg
  ini
  initial 11 
`;

let editor: Editor;
let plain: Editor;
const applied: ApplyWorkspaceEditParams[] = [];
const told: string[] = [];
beforeAll(async () => {
  editor = await connect({
    capabilities: {
      workspace: { applyEdit: true, workspaceEdit: { documentChanges: true } },
      textDocument: { completion: { completionItem: { snippetSupport: true, labelDetailsSupport: true } } },
    },
    settings: () => ({ hints: { totals: false, units: true } }),
  });
  editor.connection.onRequest('workspace/applyEdit', (params: ApplyWorkspaceEditParams) => {
    applied.push(params);
    return { applied: true };
  });
  plain = await connect();
  plain.connection.onNotification('window/showMessage', ({ message }) => void told.push(message));
});
afterAll(async () => {
  expect([editor.logged, plain.logged]).toEqual([[], []]);
  expect([await editor.stop(), await plain.stop()]).toEqual([0, 0]);
});

const at = (line: number, character: number) => ({ position: { line, character } });

test('suggestions: in the order of the list, each with the columns it replaces', async () => {
  const notebook = await editor.open(TEXT);
  const { items } = await notebook.ask<CompletionList>('completion', at(7, 5));
  const ini = items.find(({ label }) => label === 'initial');
  expect(ini).toMatchObject({
    detail: 'setting, deg, now 11 deg',
    textEdit: {
      newText: 'initial',
      range: { start: { line: 7, character: 2 }, end: { line: 7, character: 5 } },
    },
  });
  expect(items.map(({ sortText }) => sortText)).toEqual(items.map(({ sortText }) => sortText).toSorted());
});

test('suggestions: with stops for the cursor only where the editor has them', async () => {
  const find = async (which: Editor) => {
    const notebook = await which.open('lim\n');
    const { items } = await notebook.ask<CompletionList>('completion', at(0, 3));
    return items.find(({ label }) => label === 'limits');
  };
  expect(await find(editor)).toMatchObject({
    insertTextFormat: InsertTextFormat.Snippet,
    textEdit: { newText: expect.stringContaining('$1') },
  });
  const without = await find(plain);
  expect(without).not.toHaveProperty('insertTextFormat');
  expect(without?.textEdit?.newText).not.toContain('$');
});

test('suggestions: a blank that was typed asks for less than the reader does', async () => {
  const notebook = await editor.open('session 2026-05-02\n  idle 850 \n');
  const typed = { context: { triggerKind: 2, triggerCharacter: ' ' } };
  expect(await notebook.ask('completion', { ...at(1, 11), ...typed })).toMatchObject({ items: [] });
  expect(await notebook.ask('completion', { ...at(1, 11), context: { triggerKind: 1 } })).not.toMatchObject({
    items: [],
  });
});

test('suggestions: found by another name, which is shown where the editor can', async () => {
  const find = async (which: Editor) => {
    const notebook = await which.open('session 2026-05-02\n  base ti\n');
    const { items } = await notebook.ask<CompletionList>('completion', at(1, 9));
    return items.find(({ label }) => label === 'initial');
  };
  expect(await find(editor)).toMatchObject({
    filterText: 'base timing',
    labelDetails: { detail: ', base timing' },
  });
  expect(await find(plain)).not.toHaveProperty('labelDetails');
});

test('suggestions: none by themselves between the stops of a template, where Tab goes on', async () => {
  const { ask, change } = await editor.open('session 2026-05-02\n');
  await change(2, [[1, 0], [1, 0], 'specs\n    torque   source ""\n  ']);
  await change(3, [[2, 2], [2, 2], 'head bolts']);
  await change(4, [[2, 21], [2, 21], '60 ']);
  const typed = { triggerKind: 2, triggerCharacter: ' ' };
  expect(await ask('completion', { ...at(2, 24), context: typed })).toMatchObject({ items: [] });
  const { items } = await ask<CompletionList>('completion', { ...at(2, 24), context: { triggerKind: 1 } });
  expect(items.map(({ label }) => label)).toContain('lb-ft');
});

test('suggestions: files beside a notebook on the disk', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'notebooks-'));
  writeFileSync(join(folder, 'run.csv'), 'x\n');
  try {
    const uri = pathToFileURL(join(folder, 'x.tappet')).href;
    const textDocument = { uri, languageId: 'tappet', version: 1, text: 'session 2026-05-02\n  log \n' };
    await editor.connection.sendNotification('textDocument/didOpen', { textDocument });
    const params = { textDocument: { uri }, ...at(1, 6) };
    const { items } = await editor.connection.sendRequest<CompletionList>('textDocument/completion', params);
    expect(items.map(({ label }) => label)).toEqual(['run.csv']);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test('hints: of the lines asked for, of the kinds that the settings choose', async () => {
  const notebook = await editor.open(TEXT);
  const range = { start: { line: 5, character: 0 }, end: { line: 6, character: 0 } };
  const hints = await notebook.ask<InlayHint[]>('inlayHint', { range });
  expect(hints).toEqual([
    {
      position: { line: 6, character: 17 },
      label: '2 deg more',
      tooltip: 'before: 9 deg of 2026-05-02',
      paddingLeft: true,
    },
  ]);
});

test('lenses, and the commands they name', async () => {
  const notebook = await editor.open(TEXT);
  const lenses = await notebook.ask<CodeLens[]>('codeLens');
  const compare = lenses.find(({ command }) => command?.title === 'Compare with 2026-05-02, kept');
  expect(compare).toMatchObject({ range: { start: { line: 5, character: 0 } } });
  const { command, arguments: given } = compare?.command ?? { command: '' };
  const answer = await plainly(editor, command, given ?? []);
  expect(answer).toEqual({ text: expect.stringContaining('| initial | 9 deg  | 11 deg | 2 deg more |') });
});

const plainly = (which: Editor, command: string, given: readonly unknown[]) =>
  which.connection.sendRequest('workspace/executeCommand', { command, arguments: given });

test('a comparison is told by the server where the editor does not show it', async () => {
  const { uri } = await plain.open(TEXT);
  await plainly(plain, 'tappet.compare', [{ uri }]);
  expect(await until('the comparison', () => told[0])).toContain('against 2026-05-02 As found');
});

test('a session is started by an edit that the editor makes', async () => {
  const { uri, change } = await editor.open(TEXT);
  await change(2, [[0, 0], [0, 0], '\n']);
  const given = { uri, title: 'Again', date: '2026-07-01', line: 1 };
  expect(await plainly(editor, 'tappet.start', [given])).toEqual({ line: 13, character: 2 });
  const newText = '\nsession 2026-07-01  Again\n  revert to 2026-05-02\n  ';
  expect(applied.at(-1)?.edit).toMatchObject({
    documentChanges: [{ textDocument: { uri, version: 2 }, edits: [{ newText }] }],
  });
});

test('where it cannot be held to a version, the edit comes without', async () => {
  const simple = await connect({ capabilities: { workspace: { applyEdit: true } } });
  simple.connection.onRequest('workspace/applyEdit', (params: ApplyWorkspaceEditParams) => {
    applied.push(params);
    return { applied: false };
  });
  const { uri } = await simple.open(TEXT);
  expect(await plainly(simple, 'tappet.start', [{ uri }])).toBeNull();
  expect(applied.at(-1)?.edit).toMatchObject({ changes: { [uri]: [{}] } });
  expect(await simple.stop()).toBe(0);
});

test('commands that cannot be done are refused', async () => {
  const { uri } = await plain.open(TEXT);
  const code = (answer: Promise<unknown>) =>
    answer.then(
      () => 'answered',
      (error) => error.code,
    );
  expect(await code(plainly(plain, 'tappet.start', [{ uri }]))).toBe(ErrorCodes.InvalidParams);
  expect(await code(plainly(plain, 'tappet.compare', []))).toBe(ErrorCodes.InvalidParams);
  expect(await code(plainly(plain, 'no.such', [{ uri }]))).toBe(ErrorCodes.InvalidParams);
});
