/** Formatting, selecting and colouring by meaning, over a real connection. */
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import type {
  SelectionRange,
  SemanticTokens,
  SemanticTokensDelta,
  TextEdit,
} from 'vscode-languageserver/node';
import { connect, type Editor, LONGEST_WAIT } from './connect.ts';

const TEXT = 'session 2026-05-02\r\ninitial 9 deg\r\n  idle   0.85" ; 🔧\r\n';

let settings: object = {};
let editor: Editor;
beforeAll(async () => {
  editor = await connect({ settings: () => settings });
});
afterAll(async () => {
  expect(editor.logged).toEqual([]);
  expect(await editor.stop()).toBe(0);
});

const put = (line: number, from: number, to: number, newText: string) => ({
  range: { start: { line, character: from }, end: { line, character: to } },
  newText,
});
const options = { tabSize: 4, insertSpaces: false };

test('formatting gives edits of the blanks alone', async () => {
  const notebook = await editor.open(TEXT);
  expect(await notebook.ask<TextEdit[]>('formatting', { options })).toEqual([
    put(1, 0, 0, '  '),
    put(1, 7, 8, '          '),
    put(2, 6, 9, '             '),
    put(2, 14, 15, '  '),
  ]);
});

test('of a range, and of the line that is left', async () => {
  const notebook = await editor.open(TEXT);
  const range = { start: { line: 1, character: 0 }, end: { line: 1, character: 4 } };
  const edits = [put(1, 0, 0, '  '), put(1, 7, 8, '          ')];
  expect(await notebook.ask('rangeFormatting', { range, options })).toEqual(edits);
  const left = { position: { line: 2, character: 0 }, ch: '\n', options };
  expect(await notebook.ask('onTypeFormatting', left)).toEqual(edits);
  expect(await notebook.ask('onTypeFormatting', { ...left, ch: '}' })).toEqual([]);
});

test('as the reader has set it', async () => {
  const notebook = await editor.open(TEXT);
  const put = async () =>
    (await notebook.ask<TextEdit[]>('formatting', { options })).map(({ newText }) => newText);
  const change = (to: object) => {
    settings = to;
    return editor.connection.sendNotification('workspace/didChangeConfiguration', { settings: null });
  };
  await change({ format: { indent: 0, unitSpelling: 'table' } });
  // The server asks for its settings before they count.
  await vi.waitFor(
    async () => expect(await put()).toEqual(expect.arrayContaining([' ', 'in'])),
    LONGEST_WAIT,
  );
  await change({ format: { indent: 'x', unitSpelling: 7 } });
  await vi.waitFor(async () => expect(await put()).toHaveLength(4), LONGEST_WAIT);
});

test('selections, each inside the next', async () => {
  const notebook = await editor.open(TEXT);
  const positions = [{ line: 1, character: 9 }];
  const [innermost] = await notebook.ask<SelectionRange[]>('selectionRange', { positions });
  expect(innermost?.range).toEqual({ start: { line: 1, character: 8 }, end: { line: 1, character: 9 } });
  expect(innermost?.parent?.range.end.character).toBe(13);
});

test('meanings at once, by what has changed, and of a range', async () => {
  const notebook = await editor.open(TEXT);
  const first = await notebook.ask<SemanticTokens>('semanticTokens/full');
  await notebook.change(2, [[1, 0], [1, 0], '  ']);
  const delta = await notebook.ask<SemanticTokensDelta>('semanticTokens/full/delta', {
    previousResultId: first.resultId,
  });
  expect(delta.edits).toHaveLength(1);
  const [{ start, deleteCount, data = [] }] = delta.edits as [SemanticTokensDelta['edits'][number]];
  const whole = await notebook.ask<SemanticTokens>('semanticTokens/full');
  expect(first.data.toSpliced(start, deleteCount, ...data)).toEqual(whole.data);
  const none = await notebook.ask<SemanticTokensDelta>('semanticTokens/full/delta', {
    previousResultId: whole.resultId,
  });
  expect(none.edits).toEqual([]);
  const unknown = await notebook.ask<SemanticTokens>('semanticTokens/full/delta', { previousResultId: 'x' });
  expect(unknown.data).toEqual(whole.data);
  const range = { start: { line: 1, character: 0 }, end: { line: 1, character: 99 } };
  const part = await notebook.ask<SemanticTokens>('semanticTokens/range', { range });
  expect(part.data).toEqual([1, ...whole.data.slice(11, 25)]);
});
