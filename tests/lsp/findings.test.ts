/** What was found, for editors that ask; and what can be done about it, over a real connection. */
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import type {
  CodeAction,
  Command,
  Diagnostic,
  FullDocumentDiagnosticReport,
  ShowMessageParams,
  WorkspaceDiagnosticReport,
} from 'vscode-languageserver/node';
import { connect, type Editor, LONGEST_WAIT, until } from './connect.ts';

const ALL = {
  workspace: { diagnostics: { refreshSupport: true }, workspaceEdit: { documentChanges: true } },
  textDocument: {
    diagnostic: {},
    publishDiagnostics: { relatedInformation: true, tagSupport: { valueSet: [1 as const] } },
    codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [] } } },
  },
};
const TEXT = 'session 2026-05-02\n  initial 9 deg\n  initial 11 deg\n  mixtrue 1 turn\n';

let settings: object = {};
let editor: Editor;
let asked = 0;
beforeAll(async () => {
  editor = await connect({ capabilities: ALL, settings: () => settings });
  editor.connection.onRequest('workspace/diagnostic/refresh', () => {
    asked++;
    return null;
  });
});
afterAll(async () => {
  expect(editor.logged).toEqual([]);
  expect(await editor.stop()).toBe(0);
});

const codes = ({ items }: FullDocumentDiagnosticReport) => items.map(({ code }) => code);

describe('an editor that asks', () => {
  test('is told what was found, and is sent nothing', async () => {
    const notebook = await editor.open(TEXT);
    const report = await notebook.ask<FullDocumentDiagnosticReport>('diagnostic');
    expect(report.kind).toBe('full');
    expect(codes(report)).toEqual(['overridden', 'unknown-word']);
    expect(notebook.published()).toEqual([]);
  });

  test('is told that nothing has changed, by the name it was told before', async () => {
    const notebook = await editor.open(TEXT);
    const { resultId } = await notebook.ask<FullDocumentDiagnosticReport>('diagnostic');
    const again = { previousResultId: resultId };
    expect(await notebook.ask('diagnostic', again)).toEqual({ kind: 'unchanged', resultId });
    await notebook.change(2, [[1, 10], [1, 11], '8']);
    expect(await notebook.ask('diagnostic', again)).toEqual({ kind: 'unchanged', resultId });
    await notebook.change(3, [[3, 2], [3, 9], 'mixture']);
    const report = await notebook.ask<FullDocumentDiagnosticReport>('diagnostic', again);
    expect(codes(report)).toEqual(['overridden']);
  });

  test('is asked to ask again when typing pauses, and when its settings change', async () => {
    const notebook = await editor.open('session 2026-05-02\n  \n');
    const before = asked;
    // Sent together: by the time that one has gone, the pause may be over.
    const changed = notebook.change(2, [[1, 2], [1, 2], 'mixtrue 1 turn']);
    const report = notebook.ask<FullDocumentDiagnosticReport>('diagnostic');
    await changed;
    expect(codes(await report)).toEqual([]);
    await until('a pause', () => (asked > before ? true : undefined));
    // The pause of an earlier notebook may have come first.
    await vi.waitFor(
      async () => expect(codes(await notebook.ask('diagnostic'))).toEqual(['unknown-word']),
      LONGEST_WAIT,
    );
    const then = asked;
    settings = { severity: { 'unknown-word': 'off' } };
    await editor.connection.sendNotification('workspace/didChangeConfiguration', { settings: null });
    await until('a change', () => (asked > then ? true : undefined));
    expect(codes(await notebook.ask('diagnostic'))).toEqual([]);
    settings = {};
    await editor.connection.sendNotification('workspace/didChangeConfiguration', { settings: null });
    await vi.waitFor(
      async () => expect(codes(await notebook.ask('diagnostic'))).toHaveLength(1),
      LONGEST_WAIT,
    );
  });

  test('is told of all notebooks at once', async () => {
    const notebook = await editor.open(TEXT);
    const ask = (previousResultIds: object[]) =>
      editor.connection.sendRequest<WorkspaceDiagnosticReport>('workspace/diagnostic', { previousResultIds });
    const find = ({ items }: WorkspaceDiagnosticReport) => items.find(({ uri }) => uri === notebook.uri);
    const report = find(await ask([]));
    expect(report).toMatchObject({ kind: 'full', version: 1 });
    const again = find(await ask([{ uri: notebook.uri, value: report?.resultId }]));
    expect(again).toMatchObject({ kind: 'unchanged' });
  });

  test('sees what was never in use faded, with the line that overrides it', async () => {
    const notebook = await editor.open(TEXT);
    const [found] = (await notebook.ask<FullDocumentDiagnosticReport>('diagnostic')).items;
    expect(found).toMatchObject({
      code: 'overridden',
      severity: 4,
      tags: [1],
      range: { start: { line: 1 } },
      relatedInformation: [{ location: { uri: notebook.uri, range: { start: { line: 2 } } } }],
    });
  });
});

const at = (line: number, only?: readonly string[]) => ({
  range: { start: { line, character: 2 }, end: { line, character: 2 } },
  context: { diagnostics: [], ...(only && { only }) },
});

describe('what can be done', () => {
  test('a fix of the version that was looked at, with its finding', async () => {
    const notebook = await editor.open(TEXT);
    const [fix] = await notebook.ask<CodeAction[]>('codeAction', at(3, ['quickfix']));
    const report = await notebook.ask<{ items: Diagnostic[] }>('diagnostic');
    expect(fix).toEqual({
      title: 'Write "mixture"',
      kind: 'quickfix',
      isPreferred: true,
      diagnostics: [report.items[1]],
      edit: {
        documentChanges: [
          {
            textDocument: { uri: notebook.uri, version: 1 },
            edits: [
              {
                range: { start: { line: 3, character: 2 }, end: { line: 3, character: 9 } },
                newText: 'mixture',
              },
            ],
          },
        ],
      },
    });
  });

  test('everything that is sure, when it is asked for', async () => {
    const notebook = await editor.open(TEXT);
    const actions = await notebook.ask<CodeAction[]>('codeAction', at(0, ['source.fixAll']));
    expect(actions).toMatchObject([{ title: 'Fix all obvious slips (1)', kind: 'source.fixAll.tappet' }]);
  });

  test('the page of a check, by its code alone', async () => {
    const notebook = await editor.open(TEXT);
    const actions = await notebook.ask<CodeAction[]>('codeAction', at(3));
    const command = actions.find(({ command }) => command)?.command as Command;
    expect(command).toMatchObject({ command: 'tappet.explain', arguments: [{ code: 'unknown-word' }] });
    const told = new Promise<ShowMessageParams>((resolve) => {
      editor.connection.onNotification('window/showMessage', resolve);
    });
    const page = await editor.connection.sendRequest<{ text: string }>('workspace/executeCommand', command);
    expect(page.text).toContain('# A word that is not known');
    expect((await told).message).toBe(page.text);
    const { rules } = await editor.connection.sendRequest<{ rules: object[] }>('workspace/executeCommand', {
      command: 'tappet.explain',
    });
    expect(rules).toContainEqual({
      code: 'overridden',
      title: 'Set twice with nothing in between',
      severity: 'hint',
    });
    const unknown = { command: 'tappet.explain', arguments: [{ code: 'no-such-rule' }] };
    await expect(editor.connection.sendRequest('workspace/executeCommand', unknown)).rejects.toThrow(
      'no rule',
    );
  });
});

describe('plain speech', () => {
  const PENCILLED = 'session 2026-05-02\n  12 initial, 34 all in\n  idle 7 to 800\n  back to 850\n';
  const edited = (actions: readonly CodeAction[]) =>
    actions.map(({ title, kind, edit }) => {
      const [change] = edit?.documentChanges ?? [];
      const edits = change && 'edits' in change ? change.edits : [];
      return [title, kind, edits.map((each) => ('newText' in each ? each.newText : '')).join(' / ')];
    });

  test('is written as read, all of it, when that is asked for', async () => {
    const notebook = await editor.open(PENCILLED);
    expect(edited(await notebook.ask<CodeAction[]>('codeAction', at(0, ['source.asRead'])))).toEqual([
      ['Write all as read (2)', 'source.asRead.tappet', 'initial 12 deg\n  total 34 deg / idle 700..800 rpm'],
    ]);
  });

  test('that may mean several things is asked, each reading one key away', async () => {
    const notebook = await editor.open(PENCILLED);
    const { items } = await notebook.ask<FullDocumentDiagnosticReport>('diagnostic');
    expect(items.map(({ code, severity }) => [code, severity])).toEqual([['asked', 3]]);
    const fixes = await notebook.ask<CodeAction[]>('codeAction', at(3, ['quickfix']));
    expect(edited(fixes).slice(0, 3)).toEqual([
      ['Write "idle 850 rpm"', 'quickfix', 'idle 850 rpm'],
      ['Keep it as a note', 'quickfix', 'note back to 850'],
      ['Write "todo back: back to 850"', 'quickfix', 'todo back: back to 850'],
    ]);
  });
});

test('an editor that knows no actions gets commands, and one that cannot be asked to ask again gets all at once', async () => {
  const plain = await connect({ capabilities: { textDocument: { diagnostic: {} } } });
  const notebook = await plain.open('session 2026-05-02\n  \n');
  await notebook.change(2, [[1, 2], [1, 2], 'mixtrue 1 turn']);
  expect(codes(await notebook.ask('diagnostic'))).toEqual(['unknown-word']);
  const actions = await notebook.ask<Command[]>('codeAction', at(1));
  expect(actions.map(({ command }) => command)).toEqual(['tappet.explain']);
  expect(await plain.stop()).toBe(0);
});

test('what the terminal reports of limits written late, heads misspelt and numbers below zero is reported here too', async () => {
  const notebook = await editor.open(
    'session 2026-05-02\n  initial at -2 deg ; meant: outside-band\n  weather -5 C, 1011 hPa\n  cam timing 4 deg retarded\nlimits\n  initial >= 0 deg\nports\n  sesion 2026-05-03\n',
  );
  const { items } = await notebook.ask<FullDocumentDiagnosticReport>('diagnostic');
  expect(items.map(({ code, range }) => [code, range.start.line])).toEqual([
    ['limit-passed-already', 5],
    ['unknown-word', 7],
  ]);
  expect(items[0]?.message).toBe('Initial is already -2 deg, under this limit of 0 deg.');
  expect(items[0]?.relatedInformation?.[0]?.location.range.start.line).toBe(1);
  const range = items[1]?.range;
  const context = { diagnostics: [] };
  const actions = await notebook.ask<CodeAction[]>('codeAction', { range, context });
  expect(actions.map(({ title }) => title)).toContain('Write "session"');
  const at = (line: number, character: number) => ({ position: { line, character } });
  const hover = await notebook.ask<{ contents: { value: string } }>('hover', at(2, 11));
  expect(hover.contents.value).toMatch(/-5 C.* = 23 F/);
});
