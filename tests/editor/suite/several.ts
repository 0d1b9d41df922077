/** Notebooks that are not open, and files beside them: read by the server itself, or by the editor where the server has no disk. */
import * as vscode from 'vscode';
import { expect, until } from './waiting.ts';

export const SEVERAL_NOTEBOOKS = [
  { name: 'a word is found by name in a notebook that is not open', test: findsClosed },
  { name: 'the limits of a page that is used hold, and follow it', test: usesShared },
  { name: 'a file beside a notebook is suggested for a path', test: suggestsPaths },
  { name: 'references and a new name reach notebooks that are not open', test: renamesEverywhere },
];

async function findsClosed(): Promise<void> {
  const command = 'vscode.executeWorkspaceSymbolProvider';
  const found = await until('the word', async () => {
    const symbols = await vscode.commands.executeCommand<vscode.SymbolInformation[]>(command, 'shutter');
    return symbols.length > 0 && symbols;
  });
  const told = found.map(({ name, location }) => `${name} in ${pathIn(location.uri)}`).join();
  expect(told === 'shutter gap in shop/limits.tappet', `the word where it is defined, not ${told}`);
  const isOpen = vscode.workspace.textDocuments.some(({ uri }) => pathIn(uri) === 'shop/limits.tappet');
  expect(!isOpen, 'that notebook not to be open');
}

async function usesShared(): Promise<void> {
  const marsh = await opened('boats/marsh.tappet');
  const codes = () => vscode.languages.getDiagnostics(marsh.uri).map(({ code }) => String(code));
  await until('a total over the limit', async () => codes().join() === 'over-limit');
  const shop = await opened('shop/limits.tappet');
  await replaced(shop, '30 deg', '40 deg');
  await until('the finding to go', async () => codes().length === 0);
  await vscode.commands.executeCommand('workbench.action.files.revert');
  await until('the finding to come back', async () => codes().join() === 'over-limit');
  await vscode.commands.executeCommand('workbench.action.closeAllEditors');
}

async function suggestsPaths(): Promise<void> {
  const marsh = await opened('boats/marsh.tappet');
  const at = (text: string) => marsh.positionAt(marsh.getText().indexOf(text) + text.length);
  const labels = async (position: vscode.Position) => {
    const { items } = await vscode.commands.executeCommand<vscode.CompletionList>(
      'vscode.executeCompletionItemProvider',
      marsh.uri,
      position,
    );
    return items.map(({ label }) => (typeof label === 'string' ? label : label.label));
  };
  await until('the log beside it', async () => (await labels(at('log '))).includes('run.csv'));
}

async function renamesEverywhere(): Promise<void> {
  const shop = await opened('shop/limits.tappet');
  const position = shop.positionAt(shop.getText().indexOf('shutter gap') + 2);
  const all = ['boats/ebb.tappet', 'boats/marsh.tappet', 'shop/limits.tappet'].join();
  await until('references in all three', async () => {
    const places = await vscode.commands.executeCommand<vscode.Location[]>(
      'vscode.executeReferenceProvider',
      shop.uri,
      position,
    );
    return (
      places
        .map(({ uri }) => pathIn(uri))
        .toSorted()
        .join() === all
    );
  });
  const edit = await vscode.commands.executeCommand<vscode.WorkspaceEdit>(
    'vscode.executeDocumentRenameProvider',
    shop.uri,
    position,
    'blade gap',
  );
  const changed = edit
    .entries()
    .map(([uri]) => pathIn(uri))
    .toSorted()
    .join();
  expect(changed === all, `changes in ${all}, not ${changed}`);
  expect(await vscode.workspace.applyEdit(edit), 'the new name to be taken');
  const ebb = await vscode.workspace.openTextDocument(uriOf('boats/ebb.tappet'));
  expect(ebb.getText().includes('blade gap      4 mm'), `the new name, not ${ebb.getText()}`);
  expect(!ebb.getText().includes('shutter'), 'the old name to be gone');
}

function uriOf(path: string): vscode.Uri {
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  if (!folder) throw new Error('no folder is open');
  return vscode.Uri.joinPath(folder.uri, path);
}

const pathIn = (uri: vscode.Uri): string => uri.path.slice(uriOf('').path.replace(/\/$/, '').length + 1);

async function opened(path: string): Promise<vscode.TextDocument> {
  const notebook = await vscode.workspace.openTextDocument(uriOf(path));
  await vscode.window.showTextDocument(notebook);
  return notebook;
}

async function replaced(notebook: vscode.TextDocument, text: string, by: string): Promise<void> {
  const from = notebook.getText().indexOf(text);
  const edit = new vscode.WorkspaceEdit();
  const range = new vscode.Range(notebook.positionAt(from), notebook.positionAt(from + text.length));
  edit.replace(notebook.uri, range, by);
  expect(await vscode.workspace.applyEdit(edit), 'the edit to be taken');
}
