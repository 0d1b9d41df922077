/** A new name for a shared word is refused where not every notebook that may use it can be changed, over a real connection. */
import { mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { WorkspaceEdit } from 'vscode-languageserver/node';
import { MOST_NOTEBOOKS } from '../../server/lsp/workspace/notebook-index.ts';
import { LARGEST_USED } from '../../server/model/snapshot/used-notebooks.ts';
import { connect, type Editor } from './connect.ts';
import { putFile } from './disk.ts';

const SHOP = 'words\n  flap gap: setting, 2..5 mm\n';
const USER = 'use shop.tappet\nsession 2026-05-02\n  flap gap 3 mm\n';

let editor: Editor;
let root: string;
beforeEach(() => {
  root = realpathSync(mkdtempSync(join(tmpdir(), 'in-all-')));
  put('shop.tappet', SHOP);
});
afterEach(async () => {
  expect(await editor.stop()).toBe(0);
  rmSync(root, { recursive: true });
});

const put = (name: string, text: string) => putFile(join(root, name), text);
const uriOf = (name: string) => pathToFileURL(join(root, name)).href;
const open = (name: string, text: string) =>
  editor.connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri: uriOf(name), languageId: 'tappet', version: 1, text },
  });

async function renamed(): Promise<readonly string[]> {
  await open('shop.tappet', SHOP);
  const asked = { textDocument: { uri: uriOf('shop.tappet') }, position: { line: 1, character: 4 } };
  const { changes }: WorkspaceEdit = await editor.connection.sendRequest('textDocument/rename', {
    ...asked,
    newName: 'air flap',
  });
  return Object.keys(changes ?? {}).map((uri) => uri.slice(uriOf('').length + 1));
}
const start = async () => {
  editor = await connect({ folders: [uriOf('')] });
};

test.each([
  [MOST_NOTEBOOKS - 1, undefined],
  [MOST_NOTEBOOKS, `More than ${MOST_NOTEBOOKS} notebooks`],
])('shared by %d others', async (others, refused) => {
  for (let i = 0; i < others; i++) put(`boat-${i}.tappet`, USER);
  await start();
  if (refused) await expect(renamed()).rejects.toMatchObject({ message: expect.stringContaining(refused) });
  else expect(await renamed()).toHaveLength(others + 1);
});

test('one more that comes later', async () => {
  for (let i = 0; i < MOST_NOTEBOOKS - 1; i++) put(`boat-${i}.tappet`, 'engine\n');
  await start();
  expect(await renamed()).toEqual(['shop.tappet']);
  put('late.tappet', USER);
  await editor.connection.sendNotification('workspace/didChangeWatchedFiles', {
    changes: [{ uri: uriOf('late.tappet'), type: 1 }],
  });
  await expect(renamed()).rejects.toMatchObject({ message: expect.stringContaining('More than') });
});

test('one that is too large to be read, until it is open', async () => {
  put('near.tappet', USER);
  const large = USER + '; wide\n'.repeat(LARGEST_USED / 7 + 1);
  put('large.tappet', large);
  await start();
  await expect(renamed()).rejects.toMatchObject({
    message: expect.stringContaining('large.tappet cannot be read'),
  });
  await open('large.tappet', large);
  expect((await renamed()).toSorted()).toEqual(['large.tappet', 'near.tappet', 'shop.tappet']);
});
