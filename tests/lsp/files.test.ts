/** A log under the cursor is read: from the server's own disk, or by asking the editor where there is none. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { connect, type Editor } from './connect.ts';

const LOG = 'Time (s),RPM,AFR\n0,900,13.1\n1,1900,12.4\n';
let editor: Editor;
let folder: string;
const asked: { readonly notebook: string; readonly parts: readonly string[] }[] = [];
let answer: unknown;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'notebooks-'));
  writeFileSync(join(folder, 'run.csv'), LOG);
  editor = await connect();
  editor.connection.onRequest('tappet/readFile', (params: (typeof asked)[number]) => {
    asked.push(params);
    return answer;
  });
});

afterAll(async () => {
  await editor.stop();
  rmSync(folder, { recursive: true });
});

async function hoverOfLog(uri: string, path: string): Promise<string> {
  const { connection } = editor;
  const text = `session 2026-05-02\n  log ${path}\n`;
  const textDocument = { uri, languageId: 'tappet', version: 1, text };
  await connection.sendNotification('textDocument/didOpen', { textDocument });
  const position = { line: 1, character: 8 };
  const hover = await connection.sendRequest<{ contents: { value: string } } | null>('textDocument/hover', {
    textDocument: { uri },
    position,
  });
  await connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
  return hover?.contents.value ?? '';
}

const onDisk = () => pathToFileURL(join(folder, 'x.tappet')).href;

test.each<[path: string, says: string]>([
  ['run.csv', '2 lines'],
  ['none.csv', 'file not found'],
  ['../run.csv', "outside the notebook's folder"],
])('on the disk: %s', async (path, says) => {
  expect(await hoverOfLog(onDisk(), path)).toContain(says);
  expect(asked).toEqual([]);
});

test.each<[what: string, answers: unknown, says: string]>([
  ['a text', { text: LOG }, '2 lines'],
  ['a problem', { problem: 'too large' }, 'larger than 20 MB'],
  ['a problem nobody knows', { problem: 'bored' }, 'could not be read'],
  ['nothing', null, 'could not be read'],
])('where there is no disk the editor answers with %s', async (_, answers, says) => {
  answer = answers;
  expect(await hoverOfLog('memory:/notebooks/x.tappet', 'logs/run.csv')).toContain(says);
  // Whether the log is there at all is asked too, from the folder that may be read.
  const ofNotebook = asked.filter(({ notebook }) => notebook.endsWith('x.tappet'));
  expect(ofNotebook.at(-1)).toMatchObject({ parts: ['logs', 'run.csv'] });
});

test('a path that climbs out is never asked of the editor', async () => {
  expect(await hoverOfLog('memory:/notebooks/x.tappet', '../../secret.csv')).toContain(
    "outside the notebook's folder",
  );
  // Files are looked for behind the answers, one after another: once this one is, nothing is still to be asked.
  await hoverOfLog('memory:/notebooks/y.tappet', 'last.csv');
  const namesAsked = () => asked.flatMap(({ parts }) => parts);
  await expect.poll(() => asked.filter(({ parts }) => parts.at(-1) === 'last.csv').length).toBe(2);
  expect(namesAsked()).not.toContain('secret.csv');
});
