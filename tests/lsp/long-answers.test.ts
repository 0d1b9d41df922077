/** Answers about a long notebook: typing does not wait for them, and they end when nobody does, over a real connection. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { CancellationTokenSource, LSPErrorCodes, type SelectionRange } from 'vscode-languageserver/node';
import { notebookOf } from '../bench/notebook.ts';
import { connect, type Editor, type OpenNotebook } from './connect.ts';

/** Long enough that no machine reads it in the time for which an answer may hold up the others. */
const LINES = 12_000;
const WORD = 'words\n  flap gap: setting, 2..5 mm\n';
const LONG = `${WORD}${notebookOf(LINES)}session 2026-05-02\n  flap gap 3 mm\n  idle 850 rpm in neutral\n`;
const WHOLE = { start: { line: 0, character: 0 }, end: { line: 2 * LINES, character: 0 } };
const options = { tabSize: 2, insertSpaces: true };
const before = (lines: number, character: number) => ({
  line: LONG.split('\n').length - 1 - lines,
  character,
});

/** All that reads the whole notebook. */
const ASKED: readonly (readonly [method: string, params: object])[] = [
  ['textDocument/hover', { position: before(1, 4) }],
  ['textDocument/references', { position: before(1, 4), context: { includeDeclaration: true } }],
  ['textDocument/documentHighlight', { position: before(1, 4) }],
  ['textDocument/rename', { position: before(2, 4), newName: 'air flap' }],
  ['textDocument/semanticTokens/full', {}],
  ['textDocument/documentSymbol', {}],
  ['textDocument/documentLink', {}],
  ['textDocument/formatting', { options }],
  ['textDocument/inlayHint', { range: WHOLE }],
  ['workspace/symbol', { query: 'sheet' }],
];

let editor: Editor;
beforeAll(async () => {
  editor = await connect();
});
afterAll(async () => {
  expect(editor.logged).toEqual([]);
  expect(await editor.stop()).toBe(0);
});

interface Asked {
  readonly notebook: OpenNotebook;
  readonly answer: Promise<unknown>;
  readonly isAnswered: () => boolean;
  readonly source: CancellationTokenSource;
}

async function ask(method: string, params: object): Promise<Asked> {
  const notebook = await editor.open(LONG);
  const source = new CancellationTokenSource();
  let isAnswered = false;
  const all = { textDocument: { uri: notebook.uri }, ...params };
  const answer = editor.connection.sendRequest(method, all, source.token).then(
    (result) => result,
    ({ code }) => code,
  );
  answer.then(() => {
    isAnswered = true;
  });
  return { notebook, answer, isAnswered: () => isAnswered, source };
}

/** What is asked later and takes no time. */
const smallAnswer = ({ notebook }: Asked) =>
  notebook.ask<SelectionRange[]>('selectionRange', { positions: [] });

test.each(ASKED)(
  '%s: others are answered first, and it ends when it is cancelled',
  async (method, params) => {
    const asked = await ask(method, params);
    expect(await smallAnswer(asked)).toEqual([]);
    expect(asked.isAnswered()).toBe(false);
    asked.source.cancel();
    expect(await asked.answer).toBe(LSPErrorCodes.RequestCancelled);
    await asked.notebook.close();
  },
);

test('an answer about a text that is typed on ends too', async () => {
  const asked = await ask('textDocument/references', { position: before(1, 4), context: {} });
  await asked.notebook.change(2, [[0, 0], [0, 0], '\n']);
  expect(await asked.answer).toBe(LSPErrorCodes.ContentModified);
  await asked.notebook.close();
});
