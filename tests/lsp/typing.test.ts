/** Findings as they follow the typing, over a real connection. */

import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { SEED } from '../laws/law.ts';
import { connect, type Editor, protocolChange, type TextChange } from './connect.ts';

const HOLD_BACK = 400;
const HEAD = 'session 2026-05-02\n';

let holdBack = HOLD_BACK;
let severity: object = {};
let editor: Editor;
beforeAll(async () => {
  editor = await connect({ settings: () => ({ holdBack, severity }) });
});
afterAll(async () => {
  expect(editor.logged).toEqual([]);
  expect(await editor.stop()).toBe(0);
});

const tellOfSettings = () =>
  editor.connection.sendNotification('workspace/didChangeConfiguration', { settings: null });
const codes = (found: readonly Diagnostic[]) => found.map(({ code }) => code);
const has = (code: string) => (found: readonly Diagnostic[]) => codes(found).includes(code);

test('an edit is followed by the findings of its version', async () => {
  const notebook = await editor.open(`${HEAD}  initial 9 F\n  idle 850 rpm\n`);
  expect(codes(await notebook.findings(1))).toEqual(['wrong-unit']);
  await notebook.change(2, [[1, 12], [1, 13], 'deg']);
  expect(await notebook.findings(2)).toEqual([]);
});

test('many edits in a row are told of once, as the last of them is', async () => {
  const notebook = await editor.open(`${HEAD}  note a\n`);
  await notebook.findings(1);
  const versions = Array.from({ length: 40 }, (_, i) => i + 2);
  // None waits for the one before: the server must not be told of them more slowly than they are typed.
  await Promise.all(versions.map((version) => notebook.change(version, [[1, 8], [1, 8], 'x'])));
  await notebook.findings(41);
  expect(notebook.published().length).toBeLessThan(20);
});

test('what cannot be read is held back while its line is typed, then told', async () => {
  const notebook = await editor.open(`${HEAD}  idle 850 rpm\n`);
  await notebook.findings(1);
  await notebook.change(2, [[1, 14], [1, 14], '\n  dweel 50 de']);
  expect(await notebook.firstFindings(2)).toEqual([]);
  await notebook.findings(2, has('unknown-word'));
});

test('it is told at once when the typing goes on elsewhere', async () => {
  const notebook = await editor.open(`${HEAD}  idle 850 rpm\n  note a\n`);
  await notebook.change(2, [[1, 2], [1, 14], 'dweel 50 deg']);
  expect(await notebook.firstFindings(2)).toEqual([]);
  await notebook.change(3, [[2, 8], [2, 8], 'b']);
  expect(codes(await notebook.firstFindings(3))).toEqual(['unknown-word']);
});

test('it is told at once when a line is put in above', async () => {
  const notebook = await editor.open(`${HEAD}  dweel 50 deg\n`);
  await notebook.change(2, [[0, 0], [0, 0], 'notebook  Bench\n\n']);
  expect(codes(await notebook.firstFindings(2))).toEqual(['unknown-word']);
});

test('what the line had before is not held back', async () => {
  const notebook = await editor.open(`${HEAD}  dweel 50 deg\n`);
  await notebook.findings(1);
  await notebook.change(2, [[1, 8], [1, 8], '5']);
  expect(codes(await notebook.firstFindings(2))).toEqual(['unknown-word']);
});

test('nothing is held back for whoever wants it so', async () => {
  holdBack = 0;
  await tellOfSettings();
  const notebook = await editor.open(`${HEAD}  idle 850 rpm\n`);
  await notebook.findings(1);
  await notebook.change(2, [[1, 2], [1, 14], 'dweel 50 deg']);
  expect(codes(await notebook.firstFindings(2))).toEqual(['unknown-word']);
  holdBack = HOLD_BACK;
  await tellOfSettings();
});

test('what the trade says of a value is not held back', async () => {
  const notebook = await editor.open(`${HEAD}  idle 850 rpm\n`);
  await notebook.change(2, [[1, 7], [1, 10], '85000']);
  expect((await notebook.firstFindings(2)).length).toBeGreaterThan(0);
});

test('settings are read live', async () => {
  const notebook = await editor.open(`${HEAD}  initial 9 F\n`);
  expect((await notebook.findings(1))[0]?.severity).toBe(2);
  severity = { 'wrong-unit': 'error', 'no-such-rule': 'error', 'ten-times': 'loud' };
  await tellOfSettings();
  await notebook.findings(1, ([found]) => found?.severity === 1);
  severity = { 'wrong-unit': 'off' };
  await tellOfSettings();
  await notebook.findings(1, (found) => found.length === 0);
  severity = {};
  await tellOfSettings();
  await notebook.findings(1, has('wrong-unit'));
});

test('columns are right behind an emoji and before CRLF', async () => {
  const text = 'session 2026-05-02 😀\r\n  note 😀\r\n  plug #3 "😀"  ~~\r\n  initial 9 F\r\n';
  const document = TextDocument.create('', '', 1, text);
  const notebook = await editor.open(text);
  const found = await notebook.findings(1);
  const told = found.map(({ range }) => document.getText(range));
  expect(told).toContain('F');
  expect(told.join('')).toContain('~~');
});

const PIECES = [
  'session 2026-05-03\n',
  '  initial 9 deg\n',
  '  idle 8',
  '\r\n',
  '\r',
  '😀',
  '9,5',
  ' F',
  '"',
  '#3',
  '',
];
const edits = fc.array(fc.tuple(fc.nat(), fc.nat(12), fc.constantFrom(...PIECES)), { maxLength: 12 });

test('after any edits the findings are those of the text as it then stands', async () => {
  await fc.assert(
    fc.asyncProperty(edits, async (rows) => {
      const document = TextDocument.create('', '', 1, `${HEAD}  initial 9 F\r\n  idle 850 rpm\n`);
      const notebook = await editor.open(document.getText());
      for (const [from, length, text] of rows) {
        const start = from % (document.getText().length + 1);
        const at = [document.positionAt(start), document.positionAt(start + length)] as const;
        const change: TextChange = [[at[0].line, at[0].character], [at[1].line, at[1].character], text];
        TextDocument.update(document, [protocolChange(change)], document.version + 1);
        await notebook.change(document.version, change);
      }
      const fresh = await editor.open(document.getText());
      const expected = await fresh.findings(1);
      await notebook.findings(
        document.version,
        (found) => JSON.stringify(found) === JSON.stringify(expected),
      );
      await Promise.all([notebook.close(), fresh.close()]);
    }),
    { numRuns: 15, seed: SEED },
  );
});
