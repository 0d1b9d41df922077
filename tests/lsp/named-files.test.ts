/** Photos and logs that are not there are told, over a real connection, and are right again when they come. */
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { WorkspaceDiagnosticReport } from 'vscode-languageserver/node';
import { type Editor, unready, until } from './connect.ts';

let editor: Editor;
let root: string;
const watched: string[] = [];
const asked: { readonly notebook: string; readonly parts: readonly string[] }[] = [];
let answer: (parts: readonly string[]) => unknown = () => ({ problem: 'missing' });

beforeAll(async () => {
  root = realpathSync(mkdtempSync(join(tmpdir(), 'named-')));
  mkdirSync(join(root, 'boats/photos'), { recursive: true });
  writeFileSync(join(root, 'boats/closed.tappet'), 'session 2026-05-02\n  photo lost.jpg\n');
  editor = unready();
  const { connection } = editor;
  connection.onRequest('client/registerCapability', ({ registrations }) => {
    for (const { registerOptions } of registrations)
      watched.push(
        ...(registerOptions?.watchers ?? []).map((each: { globPattern: string }) => each.globPattern),
      );
    return null;
  });
  connection.onRequest('tappet/readFile', (params) => {
    asked.push(params);
    return answer(params.parts);
  });
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: null,
    workspaceFolders: [
      { uri: pathToFileURL(root).href, name: 'work' },
      { uri: 'memory:/bench', name: 'bench' },
    ],
    capabilities: { workspace: { didChangeWatchedFiles: { dynamicRegistration: true } } },
  });
  await connection.sendNotification('initialized', {});
});

afterAll(async () => {
  expect(editor.logged).toEqual([]);
  expect(await editor.stop()).toBe(0);
  rmSync(root, { recursive: true });
});

const onDisk = (path: string) => pathToFileURL(join(root, path)).href;
const notebookOf = (...lines: readonly string[]) => ['session 2026-05-02', ...lines, ''].join('\n');

async function opened(uri: string, text: string) {
  const { connection, published } = editor;
  let version = 1;
  await connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'tappet', version, text },
  });
  const told = (wanted: readonly string[], typeOn?: () => void) =>
    until(`${wanted.join() || 'nothing'} of ${uri}`, () => {
      const last = published().findLast((each) => each.uri === uri && each.version === version);
      const messages = last?.diagnostics.map(({ code, message }) => `${code} ${message}`);
      const fits =
        messages?.length === wanted.length && wanted.every((each, i) => messages[i]?.includes(each));
      if (last && !fits) typeOn?.();
      return fits ? messages : undefined;
    });
  const type = (line: number, text: string) => {
    const start = { line, character: 0 };
    version++;
    return connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [{ range: { start, end: start }, text }],
    });
  };
  const close = () => connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
  return { uri, told, type, close };
}

const changedFile = (path: string, type: 1 | 2 | 3) =>
  editor.connection.sendNotification('workspace/didChangeWatchedFiles', {
    changes: [{ uri: onDisk(path), type }],
  });

test('a photo and a log that are missing are reported, until the disk tells that they are', async () => {
  const text = notebookOf('  photo photos/a.jpg', '  log run.csv', '  photo ../../out.jpg', '  photo photos');
  const notebook = await opened(onDisk('boats/marsh.tappet'), text);
  const [photo, log] = await notebook.told(['file-missing', 'file-missing']);
  expect(photo).toContain('find the photo "photos/a.jpg"');
  expect(photo).toContain('at boats/photos/a.jpg');
  expect(log).toContain('the log "run.csv"');
  expect(watched).toContain('**/*.tappet');
  expect(watched.join()).toMatch(/\{.*\bcsv\b.*\bjpg\b.*\bJPG\b.*\}/);
  writeFileSync(join(root, 'boats/photos/a.jpg'), 'no picture');
  await changedFile('boats/photos/a.jpg', 1);
  await notebook.told(['run.csv']);
  rmSync(join(root, 'boats/photos/a.jpg'));
  await changedFile('boats/photos/a.jpg', 3);
  await notebook.told(['photos/a.jpg', 'run.csv']);
  await notebook.close();
});

test('an editor that tells nothing of files: right again at the next change, a little later', async () => {
  const notebook = await opened(onDisk('boats/second.tappet'), notebookOf('  photo later.jpg'));
  await notebook.told(['later.jpg']);
  writeFileSync(join(root, 'boats/later.jpg'), 'no picture');
  await notebook.told([], () => void notebook.type(1, '  note x\n'));
  await notebook.close();
});

test('a path that is typed is told once its line is left', async () => {
  const notebook = await opened(onDisk('boats/third.tappet'), notebookOf());
  await notebook.told([]);
  await notebook.type(1, '  photo nowhere.jpg\n');
  await notebook.told(['nowhere.jpg']);
  await notebook.close();
});

test('a notebook that is not open', async () => {
  const { items } = await editor.connection.sendRequest<WorkspaceDiagnosticReport>('workspace/diagnostic', {
    previousResultIds: [],
  });
  const report = items.find(({ uri }) => uri === onDisk('boats/closed.tappet'));
  expect(report).toMatchObject({ items: [{ code: 'file-missing' }] });
});

test('where the server has no disk the editor is asked, and never for what lies outside', async () => {
  answer = ([name = '']) => (name === 'there.jpg' ? { problem: 'too large' } : { problem: 'missing' });
  const text = notebookOf('  photo none.jpg', '  photo there.jpg', '  photo ../x.jpg', '  photo https:/x');
  const notebook = await opened('memory:/bench/x.tappet', text);
  await notebook.told(['none.jpg']);
  const parts = asked.flatMap((each) => (each.notebook.startsWith('memory:') ? [each.parts.join('/')] : []));
  expect(new Set(parts)).toEqual(new Set(['none.jpg', 'there.jpg']));
  await notebook.close();
});

test('an editor that does not answer holds nothing up, and nothing is told that nobody knows', async () => {
  answer = () => new Promise(() => undefined);
  const notebook = await opened('memory:/bench/y.tappet', notebookOf('  photo slow.jpg'));
  await notebook.type(1, '  initial 9 F\n');
  await notebook.told(['wrong-unit']);
  await notebook.close();
});
