/** What an editor must show of a notebook. Only the editor's API, so that the same tests run in Node and in a web worker. */
import * as vscode from 'vscode';
import { SEVERAL_NOTEBOOKS } from './several.ts';
import { expect, until } from './waiting.ts';

interface EditorTest {
  readonly name: string;
  /** Left out: in both. */
  readonly host?: 'node' | 'web worker';
  readonly test: () => Promise<void>;
}

const WRONG_UNIT = 'initial          9 F';
const RIGHT_UNIT = 'initial          9 deg';

export const TESTS: readonly EditorTest[] = [
  {
    name: 'a value in the wrong kind of unit is found',
    test: async () => findingAt(await open(), WRONG_UNIT),
  },
  { name: 'the hover of a timing setting has a total', test: hoverHasTotal },
  { name: 'a session folds from its head to its last line', test: sessionsFold },
  { name: 'a ready line is suggested where a word is begun', test: suggestsReadyLine },
  { name: 'a session is summed up above its head, and compared', test: comparesSessions },
  { name: 'a total stands behind the setting that makes it', test: hintsTotal },
  { name: 'the finding goes once the unit is put right', test: findingGoes },
  { name: 'a rule that is set to off falls silent at once, and speaks again', test: severityIsLive },
  { name: 'an unsaved notebook is checked too', test: unsavedIsChecked },
  { name: 'a notebook is laid out, and what was found in it is mended', test: laidOutAndMended },
  ...SEVERAL_NOTEBOOKS,
  { name: 'the restart command brings a server that answers', test: restarts },
  { name: 'a killed server comes back and no typing is lost', host: 'node', test: survivesKill },
];

async function hoverHasTotal(): Promise<void> {
  const notebook = await open();
  const text = await until('a hover', () => hoverOn(notebook, 'mechanical'));
  expect(/total/i.test(text) && /31 ?(deg|°)/.test(text), `a total of 31 deg in the hover, not: ${text}`);
}

async function sessionsFold(): Promise<void> {
  const notebook = await open();
  const [head, last] = [lineOf(notebook, 'session 2026-05-02'), lineOf(notebook, 'depression')];
  // An editor folds by itself, by what is moved in, as long as no server answers.
  await until(`a fold from line ${head} to ${last}`, async () => {
    const folds = await vscode.commands.executeCommand<vscode.FoldingRange[]>(
      'vscode.executeFoldingRangeProvider',
      notebook.uri,
    );
    return folds.some(({ start, end }) => start === head && end === last);
  });
}

async function suggestsReadyLine(): Promise<void> {
  const content = 'session 2026-05-02\n  initial  9 deg\nsession 2026-05-03\n  ini';
  const notebook = await vscode.workspace.openTextDocument({ language: 'tappet', content });
  // An editor suggests the words of the text by itself, as long as no server answers.
  await until('a ready line among the suggestions', async () => {
    const { items } = await vscode.commands.executeCommand<vscode.CompletionList>(
      'vscode.executeCompletionItemProvider',
      notebook.uri,
      notebook.positionAt(content.length),
    );
    return items.some(({ label }) => label === 'initial 9 deg');
  });
}

async function comparesSessions(): Promise<void> {
  const notebook = await open();
  const { command, arguments: given = [] } = await until('a lens that counts the settings', async () => {
    const lenses = await vscode.commands.executeCommand<vscode.CodeLens[]>(
      'vscode.executeCodeLensProvider',
      notebook.uri,
    );
    return lenses.find((lens) => lens.command?.title.startsWith('3 settings first written'))?.command;
  });
  await vscode.commands.executeCommand(command, ...given);
  await until('the comparison in front', async () => frontTab().includes('Comparison'));
  await vscode.commands.executeCommand('workbench.action.closeActiveEditor');
}

const frontTab = (): string => vscode.window.tabGroups.activeTabGroup.activeTab?.label ?? '';

async function hintsTotal(): Promise<void> {
  const notebook = await open();
  const all = new vscode.Range(0, 0, notebook.lineCount, 0);
  const line = lineOf(notebook, 'mechanical');
  await until('a hint with the total', async () => {
    const hints = await vscode.commands.executeCommand<vscode.InlayHint[]>(
      'vscode.executeInlayHintProvider',
      notebook.uri,
      all,
    );
    return hints.some(({ position, label }) => position.line === line && label === 'total 31 deg');
  });
}

async function findingGoes(): Promise<void> {
  const notebook = await open();
  await findingAt(notebook, WRONG_UNIT);
  const line = lineOf(notebook, WRONG_UNIT);
  await replace(notebook, WRONG_UNIT, RIGHT_UNIT);
  await until('the finding to go', async () => findings(notebook, line).length === 0);
  await vscode.commands.executeCommand('workbench.action.files.revert');
  await findingAt(notebook, WRONG_UNIT);
}

async function severityIsLive(): Promise<void> {
  const notebook = await open();
  await findingAt(notebook, WRONG_UNIT);
  const line = lineOf(notebook, WRONG_UNIT);
  const code = String(findings(notebook, line)[0]?.code);
  await setSeverity({ [code]: 'off' });
  await until('the finding to go', async () => findings(notebook, line).length === 0);
  await setSeverity(undefined);
  await findingAt(notebook, WRONG_UNIT);
}

async function unsavedIsChecked(): Promise<void> {
  const content = `notebook  Scratch\n\nsession 2026-05-02\n  ${WRONG_UNIT}\n`;
  await findingAt(await vscode.workspace.openTextDocument({ language: 'tappet', content }), WRONG_UNIT);
}

async function laidOutAndMended(): Promise<void> {
  const content = 'session 2026-05-02\ndweel 50 deg\nwater 150 F\n';
  const notebook = await vscode.workspace.openTextDocument({ language: 'tappet', content });
  await findingAt(notebook, 'dweel');
  const range = notebook.lineAt(1).range;
  const command = 'vscode.executeCodeActionProvider';
  const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(command, notebook.uri, range);
  const titles = actions.map(({ title }) => title);
  expect(
    titles.some((title) => title.startsWith('About this rule')),
    `the page of the check in ${titles}`,
  );
  const fix = actions.find(({ isPreferred }) => isPreferred);
  expect(fix?.edit !== undefined && (await vscode.workspace.applyEdit(fix.edit)), `a fix in ${titles}`);
  const options = { tabSize: 2, insertSpaces: true };
  const edits = await vscode.commands.executeCommand<vscode.TextEdit[]>(
    'vscode.executeFormatDocumentProvider',
    notebook.uri,
    options,
  );
  const edit = new vscode.WorkspaceEdit();
  edit.set(notebook.uri, edits);
  expect(await vscode.workspace.applyEdit(edit), 'the layout to be taken');
  const laid = 'session 2026-05-02\n  dwell            50 deg\n  water            150 F\n';
  expect(notebook.getText() === laid, `columns, not ${JSON.stringify(notebook.getText())}`);
}

async function restarts(): Promise<void> {
  const notebook = await open();
  await vscode.commands.executeCommand('tappet.restartServer');
  await until('a hover after the restart', () => hoverOn(notebook, 'mechanical'));
  await findingAt(notebook, WRONG_UNIT);
}

async function survivesKill(): Promise<void> {
  const notebook = await open();
  const [server, ...others] = await serverProcesses();
  expect(server !== undefined && others.length === 0, 'exactly one server process');
  process.kill(Number(server), 'SIGKILL');
  // Typed while no server is there: the new one has to be told.
  const typed = 'typed while the server was away';
  await replace(notebook, 'idles more evenly', typed);
  await replace(notebook, RIGHT_UNIT, WRONG_UNIT);
  await until('another server process', async () => (await serverProcesses()).some((pid) => pid !== server));
  await until('findings of the text as it is now', async () => bothWrong(notebook));
  expect(notebook.getText().includes(typed), 'the typing still there');
  await vscode.commands.executeCommand('workbench.action.files.revert');
}

// Loaded only when it is called: a web worker has no such module.
async function serverProcesses(): Promise<readonly string[]> {
  const { children } = await import('./processes.ts');
  return children('server.cjs');
}

function bothWrong(notebook: vscode.TextDocument): boolean {
  const lines = [...Array(notebook.lineCount).keys()].filter((line) =>
    notebook.lineAt(line).text.includes(WRONG_UNIT),
  );
  return lines.length === 2 && lines.every((line) => findings(notebook, line).length > 0);
}

async function setSeverity(value: Readonly<Record<string, string>> | undefined): Promise<void> {
  const settings = vscode.workspace.getConfiguration('tappet');
  await settings.update('severity', value, vscode.ConfigurationTarget.Global);
}

async function open(): Promise<vscode.TextDocument> {
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  if (!folder) throw new Error('no folder is open');
  const notebook = await vscode.workspace.openTextDocument(vscode.Uri.joinPath(folder.uri, 'bench.tappet'));
  await vscode.window.showTextDocument(notebook);
  return notebook;
}

async function findingAt(notebook: vscode.TextDocument, text: string): Promise<void> {
  const line = lineOf(notebook, text);
  await until(`a finding on "${text}"`, async () => findings(notebook, line).length > 0);
}

function findings(notebook: vscode.TextDocument, line: number): vscode.Diagnostic[] {
  return vscode.languages.getDiagnostics(notebook.uri).filter(({ range }) => range.start.line === line);
}

async function hoverOn(notebook: vscode.TextDocument, word: string): Promise<string> {
  const position = notebook.positionAt(notebook.getText().indexOf(word) + 1);
  const command = 'vscode.executeHoverProvider';
  const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(command, notebook.uri, position);
  const contents = hovers.flatMap((hover) => hover.contents);
  return contents.map((content) => (typeof content === 'string' ? content : content.value)).join('\n');
}

async function replace(notebook: vscode.TextDocument, text: string, by: string): Promise<void> {
  const from = notebook.getText().indexOf(text);
  expect(from >= 0, `"${text}" in the notebook`);
  const range = new vscode.Range(notebook.positionAt(from), notebook.positionAt(from + text.length));
  const edit = new vscode.WorkspaceEdit();
  edit.replace(notebook.uri, range, by);
  expect(await vscode.workspace.applyEdit(edit), 'the edit to be taken');
}

function lineOf(notebook: vscode.TextDocument, text: string): number {
  const from = notebook.getText().indexOf(text);
  expect(from >= 0, `"${text}" in the notebook`);
  return notebook.positionAt(from).line;
}
