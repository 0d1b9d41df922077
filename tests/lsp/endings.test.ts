/** How a connection begins and ends, and editors that can do little. */
import { randomBytes } from 'node:crypto';
import { expect, test } from 'vitest';
import { ErrorCodes, type Hover } from 'vscode-languageserver/node';
import { connect, exitOf, unready } from './connect.ts';

const codeOf = (answer: Promise<unknown>) =>
  answer.then(
    () => undefined,
    ({ code }) => code,
  );

test('before initialize and after shutdown there are errors, and exit ends it cleanly', async () => {
  const { connection, process } = unready();
  const params = { textDocument: { uri: 'file:///a.tappet' } };
  const fold = () => codeOf(connection.sendRequest('textDocument/foldingRange', params));
  expect(await fold()).toBe(ErrorCodes.ServerNotInitialized);
  await connection.sendRequest('initialize', { processId: null, rootUri: null, capabilities: {} });
  await connection.sendRequest('shutdown');
  expect(await fold()).toBe(ErrorCodes.InvalidRequest);
  const ended = exitOf(process);
  await connection.sendNotification('exit');
  expect(await ended).toBe(0);
});

test('exit without shutdown, and an editor that goes away, end it with an error', async () => {
  const exits = await Promise.all(
    [
      async (editor: Awaited<ReturnType<typeof connect>>) => editor.connection.sendNotification('exit'),
      async (editor: Awaited<ReturnType<typeof connect>>) => void editor.process.stdin?.end(),
    ].map(async (leave) => {
      const editor = await connect();
      const ended = exitOf(editor.process);
      await leave(editor);
      return ended;
    }),
  );
  expect(exits).toEqual([1, 1]);
});

test('an editor without settings, Markdown and related lines is served all the same', async () => {
  const editor = await connect();
  const notebook = await editor.open('session 2026-05-02\n  todo a: b\n  todo a: c\n  water 194 F\n');
  const [found] = await notebook.findings(1);
  expect(found?.message).toMatch(/\nline 2: /);
  expect(found).not.toHaveProperty('relatedInformation');
  const hover = await notebook.ask<Hover>('hover', { position: { line: 3, character: 3 } });
  expect(hover.contents).toMatchObject({
    kind: 'plaintext',
    value: expect.stringMatching(/^water 194 F = 90 C\n/),
  });

  // Settings may also be pushed.
  const settings = { tappet: { severity: { 'same-name-twice': 'hint' }, units: { temperature: '°C' } } };
  await editor.connection.sendNotification('workspace/didChangeConfiguration', { settings });
  await notebook.findings(1, ([first]) => first?.severity === 4);
  const preferred = await notebook.ask<Hover>('hover', { position: { line: 3, character: 3 } });
  expect(preferred.contents).toMatchObject({ value: expect.stringMatching(/^water 90 C = 194 F\n/) });
  await editor.connection.sendNotification('workspace/didChangeConfiguration', {});
  await notebook.findings(1, ([first]) => first?.severity !== 4);
  expect(editor.logged).toEqual([]);
  expect(await editor.stop()).toBe(0);
});

test('a line of 10 MB and random bytes are answered', async () => {
  const editor = await connect();
  const long = await editor.open(`session 2026-05-02\n${'idle 850 '.repeat(1.2e6)}\n  initial 9 F\n`);
  expect((await long.findings(1)).map(({ code }) => code)).toEqual(['line-too-long', 'wrong-unit']);
  await long.change(2, [[1, 5_000_000], [1, 5_000_000], '\n'], [[0, 0], [0, 0], '\n']);
  expect((await long.findings(2)).length).toBe(3);
  const noise = await editor.open(randomBytes(200_000).toString('latin1'));
  await noise.findings(1);
  for (const method of ['foldingRange', 'documentSymbol'])
    expect(await noise.ask(method)).toBeInstanceOf(Array);
  await noise.ask('hover', { position: { line: 3, character: 3 } });
  expect(editor.logged).toEqual([]);
  expect(await editor.stop()).toBe(0);
});
