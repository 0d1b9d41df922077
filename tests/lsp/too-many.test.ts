/** Of more findings than are shown, those at hand are, pushed and pulled, over a real connection. */
import { afterEach, expect, test } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver/node';
import { MOST_DIAGNOSTICS } from '../../server/features/diagnostics.ts';
import { connect, type Editor } from './connect.ts';

let editor: Editor;
afterEach(async () => expect(await editor.stop()).toBe(0));

/** One warning at the top, more errors below than are shown, and a last session. */
const TEXT = `session 2026-05-01
  dwell 49 F
${'  note rest\n'.repeat(60)}session 2026-05-02
${'  initial 9 deg ~~\n'.repeat(MOST_DIAGNOSTICS)}session 2026-05-03
  initial 9 deg
  mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm
  total 121 deg @ 3200 rpm
`;
const LAST = TEXT.split('\n').length - 2;
const linesOf = (found: readonly Diagnostic[]) => found.map(({ range }) => range.start.line);

test('pushed', async () => {
  editor = await connect();
  const notebook = await editor.open(TEXT);
  const first = linesOf(await notebook.findings(1));
  expect(first).toContain(LAST);
  expect(first).not.toContain(1);
  await notebook.change(2, [[5, 2], [5, 6], 'note']);
  expect(linesOf(await notebook.findings(2))).toEqual(expect.arrayContaining([1, LAST]));
  await notebook.close();
});

test('pulled', async () => {
  editor = await connect({ capabilities: { textDocument: { diagnostic: {} } } });
  const notebook = await editor.open(TEXT);
  const pulled = async () => linesOf((await notebook.ask<{ items: Diagnostic[] }>('diagnostic')).items);
  expect(await pulled()).toContain(LAST);
  expect(await pulled()).not.toContain(1);
  await notebook.change(2, [[5, 2], [5, 6], 'note']);
  expect(await pulled()).toEqual(expect.arrayContaining([1, LAST]));
  await notebook.close();
});
