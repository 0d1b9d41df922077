/** What an editor is answered, over a real connection. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import {
  CancellationTokenSource,
  type DocumentSymbol,
  ErrorCodes,
  type FoldingRange,
  type Hover,
  LSPErrorCodes,
  type MarkupContent,
} from 'vscode-languageserver/node';
import { HANDLERS } from '../../server/lsp/handlers.ts';
import { connect, type Editor } from './connect.ts';

const TEXT = `limits
  total  <= 34 deg

session 2026-05-02  As found
  initial     9 deg
  mechanical  0 deg @ 900 rpm, 22 deg @ 3200 rpm

session 2026-05-03
  todo strainer: clean it out
  todo strainer: again
`;

let editor: Editor;
beforeAll(async () => {
  editor = await connect({
    capabilities: {
      textDocument: {
        hover: { contentFormat: ['markdown', 'plaintext'] },
        publishDiagnostics: { relatedInformation: true },
      },
    },
  });
});
afterAll(async () => {
  expect(editor.logged).toEqual([expect.stringContaining('textDocument/hover: TypeError')]);
  expect(await editor.stop()).toBe(0);
});

const markdownOf = ({ contents }: Hover) => (contents as MarkupContent).value;
const rejection = (answer: Promise<unknown>) =>
  answer.then(
    (result) => ({ code: undefined, result }),
    ({ code }) => ({ code }),
  );

test('the capabilities are those of the rows', () => {
  const rows = Object.assign({}, ...HANDLERS.map(({ capability }) => capability));
  expect(editor.capabilities).toEqual({ textDocumentSync: { openClose: true, change: 2 }, ...rows });
});

test('a hover in Markdown, about the columns of its word', async () => {
  const notebook = await editor.open(TEXT);
  const hover = await notebook.ask<Hover>('hover', { position: { line: 5, character: 4 } });
  expect(hover.range).toEqual({ start: { line: 5, character: 2 }, end: { line: 5, character: 12 } });
  expect(hover.contents).toMatchObject({ kind: 'markdown' });
  expect(markdownOf(hover)).toContain('**total 31 deg** = 9 deg + 22 deg');
});

test('no hover where nothing stands, nor outside the text', async () => {
  const notebook = await editor.open(TEXT);
  expect(await notebook.ask('hover', { position: { line: 2, character: 0 } })).toBeNull();
  expect(await notebook.ask('hover', { position: { line: 1e9, character: 1e9 } })).toBeNull();
});

test('folds', async () => {
  const notebook = await editor.open(`${TEXT}; one\n; two\n`);
  const folds = await notebook.ask<FoldingRange[]>('foldingRange');
  expect(folds).toEqual([
    { startLine: 0, endLine: 1 },
    { startLine: 3, endLine: 5 },
    { startLine: 7, endLine: 11 },
    { startLine: 10, endLine: 11, kind: 'comment' },
  ]);
});

test('an outline with children', async () => {
  const notebook = await editor.open(TEXT);
  const [, session] = await notebook.ask<DocumentSymbol[]>('documentSymbol');
  expect(session).toMatchObject({
    name: '2026-05-02 As found',
    range: { start: { line: 3, character: 0 }, end: { line: 6, character: 0 } },
    selectionRange: { start: { line: 3, character: 0 }, end: { line: 3, character: 28 } },
  });
  expect(session?.children?.map(({ name }) => name)).toEqual(['initial', 'mechanical']);
});

test('sessions and items of all open notebooks by name', async () => {
  const { uri } = await editor.open('session 2031-01-01  Winter\n  todo sump: drain it\n');
  const find = (query: string) => editor.connection.sendRequest('workspace/symbol', { query });
  expect(await find('2031')).toMatchObject([{ name: '2031-01-01 Winter', location: { uri } }]);
  expect(await find('drain SUMP')).toMatchObject([
    {
      name: 'todo sump: drain it',
      containerName: '2031-01-01 Winter',
      location: { uri, range: { start: { line: 1 } } },
    },
  ]);
  expect(await find('no such thing')).toEqual([]);
});

test('findings name their source, their code and the lines that belong to them', async () => {
  const notebook = await editor.open(TEXT);
  const [found] = await notebook.findings(1);
  expect(found).toMatchObject({
    source: 'tappet',
    code: 'same-name-twice',
    relatedInformation: [{ location: { uri: notebook.uri, range: { start: { line: 8, character: 0 } } } }],
  });
  expect(found).not.toHaveProperty('codeDescription');
});

test('a document that is not open is an error, not an empty answer', async () => {
  const params = { textDocument: { uri: 'file:///other.tappet' } };
  const answer = editor.connection.sendRequest('textDocument/foldingRange', params);
  expect(await rejection(answer)).toEqual({ code: ErrorCodes.InvalidParams });
  expect(await rejection(editor.connection.sendRequest('textDocument/hover', {}))).toEqual({
    code: ErrorCodes.InvalidParams,
  });
});

test('a request in the wrong form is an error that is logged, and the next one is answered', async () => {
  const notebook = await editor.open(TEXT);
  const broken = notebook.ask('hover', { position: null });
  expect(await rejection(broken)).toEqual({ code: ErrorCodes.InternalError });
  // Parameters by position, as JSON-RPC allows and no editor should send.
  const asked = { textDocument: { uri: notebook.uri } };
  const byPosition = editor.connection.sendRequest('textDocument/foldingRange', asked, null as never);
  expect(await byPosition).toHaveLength(3);
  expect(await notebook.ask('foldingRange')).toHaveLength(3);
});

test('a cancelled request is an error, not an empty answer', async () => {
  const { connection } = editor;
  const textDocument = { uri: 'memory:/run.tappet', languageId: 'tappet', version: 1 };
  const text = 'session 2026-05-02\n  log run.csv\n';
  await connection.sendNotification('textDocument/didOpen', { textDocument: { ...textDocument, text } });
  const source = new CancellationTokenSource();
  // The server is at work on the answer, and waits for the file.
  connection.onRequest('tappet/readFile', () => {
    source.cancel();
    return { text: 'Time (s),RPM\n0,900\n' };
  });
  const params = { textDocument, position: { line: 1, character: 8 } };
  const answer = connection.sendRequest('textDocument/hover', params, source.token);
  expect(await rejection(answer)).toEqual({ code: LSPErrorCodes.RequestCancelled });
});

test('what was told of a notebook is taken back when it is closed', async () => {
  const notebook = await editor.open(TEXT);
  await notebook.findings(1);
  await notebook.close();
  expect(await rejection(notebook.ask('foldingRange'))).toEqual({ code: ErrorCodes.InvalidParams });
  expect(notebook.published().at(-1)).toEqual({ uri: notebook.uri, diagnostics: [] });
});
