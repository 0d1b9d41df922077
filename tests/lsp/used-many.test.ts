/** Notebooks by the thousand that use one another, in the editor: typing is answered all the same. */
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import type { FullDocumentDiagnosticReport } from 'vscode-languageserver/node';
import { connect, type Editor } from './connect.ts';

const COUNT = 5000;
/** Milliseconds, on a machine that has other work to do. */
const SOON = 15_000;
const LIMITS = 'limits\n  total <= 30 deg\n';
const numberIn = (name: string): number => Number(/\d+/.exec(name)?.[0]);
/** By folder, what a notebook in it holds. */
const TEXTS: Readonly<Record<string, (name: string) => string>> = {
  leaves: () => LIMITS,
  chain: (name) => `use n${numberIn(name) + 1}.tappet\n`,
  chain150: (name) => (numberIn(name) < 150 ? `use n${numberIn(name) + 1}.tappet\n` : LIMITS),
  circle: (name) => `use n${(numberIn(name) + 1) % 150}.tappet\n${LIMITS}`,
  dense: (name) =>
    Array.from({ length: 150 }, (_, i) => i)
      .filter((i) => i > numberIn(name))
      .map((i) => `use n${i}.tappet\n`)
      .join('') + LIMITS,
};

let editor: Editor;
beforeAll(async () => {
  editor = await connect({ capabilities: { textDocument: { diagnostic: {} } } });
  editor.connection.onRequest(
    'tappet/readFile',
    ({ notebook, parts }: { readonly notebook: string; readonly parts: readonly string[] }) => {
      const folder = /memory:\/([^/]*)/.exec(notebook)?.[1] ?? '';
      return { text: TEXTS[folder]?.(parts.at(-1) as string) ?? '' };
    },
  );
});
afterAll(async () => expect([editor.logged, await editor.stop()]).toEqual([[], 0]));

const USES = Array.from({ length: COUNT }, (_, i) => `use n${i}.tappet\n`).join('');
const IDLE = 'session 2026-05-02\n  idle 82000 rpm\n';
const DAY = 'session 2026-05-02\n  total 31 deg @ 3000 rpm\n';

test.each<[what: string, folder: string, text: string, code: string]>([
  ['a chain that never ends', 'chain', `use n0.tappet\n${IDLE}`, 'outside-band'],
  ['a chain of 150', 'chain150', `use n0.tappet\n${DAY}`, 'over-limit'],
  ['a circle of 150', 'circle', `use n0.tappet\n${DAY}`, 'over-limit'],
  ['each using all after it', 'dense', `use n0.tappet\n${DAY}`, 'over-limit'],
  ['5000 of them', 'leaves', USES + DAY, 'use-missing'],
])('%s', async (_, folder, text, code) => {
  const textDocument = { uri: `memory:/${folder}/a.tappet`, languageId: 'tappet', version: 1, text };
  await editor.connection.sendNotification('textDocument/didOpen', { textDocument });
  const codes = async () => {
    const { items } = await editor.connection.sendRequest<FullDocumentDiagnosticReport>(
      'textDocument/diagnostic',
      { textDocument },
    );
    return items.map((item) => item.code);
  };
  await vi.waitFor(async () => expect(await codes()).toContain(code), { timeout: SOON, interval: 50 });
  await editor.connection.sendNotification('textDocument/didClose', { textDocument });
});
