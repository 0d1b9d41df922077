/** A page that is used and comes late, from an editor that reads it for the server: nothing is told that is soon taken back. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { FullDocumentDiagnosticReport } from 'vscode-languageserver/node';
import { connect, type Editor, until } from './connect.ts';

const SHOP = 'limits\n  total <= 30 deg\nwords\n  flap gap: setting, 2..5 mm\n';
const BOAT = 'use shop.tappet\nsession 2026-05-02\n  flap gap 3 mm\n  total 31 deg @ 3000 rpm\n';
/** Longer than the server puts off what it tells. */
const LATE = 100;

let asks: Editor;
let isTold: Editor;
beforeAll(async () => {
  asks = await connect({ capabilities: { textDocument: { diagnostic: {} } } });
  isTold = await connect();
  for (const { connection } of [asks, isTold])
    connection.onRequest('tappet/readFile', async ({ parts }: { readonly parts: readonly string[] }) => {
      if (parts.join() === 'never.tappet') return new Promise(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, LATE));
      return { text: SHOP };
    });
});
afterAll(async () => {
  for (const editor of [asks, isTold]) expect([editor.logged, await editor.stop()]).toEqual([[], 0]);
});

async function open(editor: Editor, name: string, text: string) {
  const textDocument = { uri: `memory:/boats/${name}.tappet`, languageId: 'tappet', version: 1, text };
  await editor.connection.sendNotification('textDocument/didOpen', { textDocument });
  const codes = (found: readonly { readonly code?: unknown }[] | undefined) => found?.map(({ code }) => code);
  return {
    pulled: async () => {
      const report = editor.connection.sendRequest<FullDocumentDiagnosticReport>('textDocument/diagnostic', {
        textDocument,
      });
      return codes((await report).items);
    },
    published: () =>
      until('findings', () =>
        codes(editor.published().find(({ uri }) => uri === textDocument.uri)?.diagnostics),
      ),
  };
}

test('the first that is told', async () =>
  expect(await (await open(isTold, 'a', BOAT)).published()).toEqual(['over-limit']));

test('the first that is asked for', async () =>
  expect(await (await open(asks, 'a', BOAT)).pulled()).toEqual(['over-limit']));

test('a page that never comes is not waited for without end', async () => {
  const text = BOAT.replace('shop', 'never');
  expect(await (await open(asks, 'b', text)).pulled()).toContain('asked');
  expect(await (await open(isTold, 'b', text)).published()).toContain('asked');
});
