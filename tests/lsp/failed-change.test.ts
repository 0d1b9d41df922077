/** A change that fails on the way, over a real connection: nothing is answered of a text that the editor does not have. */
import { PassThrough } from 'node:stream';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import {
  createConnection,
  createProtocolConnection,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { serve } from '../../server/lsp/serve.ts';
import type * as Snapshots from '../../server/model/snapshot/snapshot.ts';
import { until } from './connect.ts';

/** The fault: a change to a text with this in it throws, as no change should. */
const FAULT = 'FAULT';
vi.mock('../../server/model/snapshot/snapshot.ts', async (original) => {
  const real = await original<typeof Snapshots>();
  const edit: typeof real.edit = (snapshot, change) => {
    if (change.text.includes(FAULT)) throw new Error('a fault of this test');
    return real.edit(snapshot, change);
  };
  return { ...real, edit };
});

const URI = 'file:///notebooks/bench.tappet';
const TEXT = 'session 2026-05-02\n  initial 9 F\n';

let editor: ProtocolConnection;
let told: PublishDiagnosticsParams[];
let logged: string[];
beforeEach(() => {
  const [there, back] = [new PassThrough(), new PassThrough()];
  serve(createConnection(new StreamMessageReader(there), new StreamMessageWriter(back)));
  editor = createProtocolConnection(new StreamMessageReader(back), new StreamMessageWriter(there));
  told = [];
  logged = [];
  editor.onNotification('textDocument/publishDiagnostics', (params) => void told.push(params));
  editor.onNotification('window/logMessage', ({ message }) => void logged.push(message));
  editor.listen();
});
afterEach(async () => {
  await editor.sendRequest('shutdown');
  editor.dispose();
});

async function greet(capabilities: object = {}): Promise<void> {
  await editor.sendRequest('initialize', { processId: null, rootUri: null, capabilities });
  await editor.sendNotification('initialized', {});
}
const open = () =>
  editor.sendNotification('textDocument/didOpen', {
    textDocument: { uri: URI, languageId: 'tappet', version: 1, text: TEXT },
  });
const close = () => editor.sendNotification('textDocument/didClose', { textDocument: { uri: URI } });
const change = (version: number, ...contentChanges: readonly object[]) =>
  editor.sendNotification('textDocument/didChange', { textDocument: { uri: URI, version }, contentChanges });
const at = (line: number) => ({ line, character: 0 });
const put = (text: string) => ({ range: { start: at(2), end: at(2) }, text });
const symbols = () => editor.sendRequest('textDocument/documentSymbol', { textDocument: { uri: URI } });

const published = (found: object) =>
  until(JSON.stringify(found), () => {
    const last = told
      .findLast(({ uri }) => uri === URI)
      ?.diagnostics.map(({ code, message }) => code ?? message);
    return JSON.stringify(last) === JSON.stringify(found) ? last : undefined;
  });
const LOST = [expect.stringContaining('close the notebook and open it again')];
const refused = { code: -32803, message: expect.stringContaining('close the notebook and open it again') };
const saysSo = () =>
  until('the finding that says so', () => {
    const last = (told.at(-1)?.diagnostics ?? []).map(({ message }) => message);
    return JSON.stringify(last).includes('open it again') ? last : undefined;
  });

test('nothing is answered until the notebook is opened again', async () => {
  await greet();
  await open();
  await published(['wrong-unit']);
  await change(2, put(`note ${FAULT}\n`));
  await expect(symbols()).rejects.toMatchObject(refused);
  expect(await saysSo()).toEqual(LOST);
  // Of what text would this be?
  await change(3, put('note later\n'));
  await expect(symbols()).rejects.toMatchObject(refused);
  expect(logged.join()).toContain('a fault of this test');
  await close();
  await published([]);
  await open();
  await published(['wrong-unit']);
  expect(await symbols()).toHaveLength(1);
});

test('nor until the editor sends the whole text', async () => {
  await greet();
  await open();
  await change(2, put(`note ${FAULT}\n`));
  await saysSo();
  await change(3, { text: `${TEXT}session 2026-05-03\n` }, put('  idle 9 F\n'));
  await published(['wrong-unit', 'wrong-unit']);
  expect(await symbols()).toHaveLength(2);
});

test('a change that fails half way leaves nothing of itself', async () => {
  await greet();
  await open();
  await change(2, put('session 2026-05-03\n'), put(FAULT));
  await expect(symbols()).rejects.toMatchObject(refused);
});

test('an editor that asks for findings is told too, and that is taken back', async () => {
  await greet({ textDocument: { diagnostic: {} } });
  await open();
  await change(2, put(`note ${FAULT}\n`));
  expect(await saysSo()).toEqual(LOST);
  const asked = editor.sendRequest('textDocument/diagnostic', { textDocument: { uri: URI } });
  await expect(asked).rejects.toMatchObject(refused);
  await change(3, { text: TEXT });
  await published([]);
  expect(await symbols()).toHaveLength(1);
});

test('half of a surrogate pair in the name of a file is no fault', async () => {
  await greet();
  await open();
  for (const [i, word] of ['photo', 'log', 'use'].entries()) await change(i + 2, put(`  ${word} \uD800.x\n`));
  await change(5, put('session 2026-05-03\n'));
  expect(await symbols()).toHaveLength(2);
  expect(logged).toEqual([]);
});
