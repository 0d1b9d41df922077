/** Commands about sessions: the server does the work, the editor prompts for a title and shows the result. */
import * as vscode from 'vscode';
import type { Middleware } from 'vscode-languageclient';
import type { Pages } from './pages.ts';
import { EXPLAIN, explainRule } from './rules.ts';

/** Of the server; the language client registers them as commands of the editor. */
const COMPARE = 'tappet.compare';
const START = 'tappet.start';

/** In the palette, for the notebook and line the cursor is in. */
export function sessionCommands(): readonly vscode.Disposable[] {
  return [
    vscode.commands.registerCommand('tappet.compareWithKept', () => onNotebook(COMPARE, { against: 'kept' })),
    // From the state at the end, wherever the cursor is.
    vscode.commands.registerCommand('tappet.startSession', () => onNotebook(START, { line: undefined })),
  ];
}

async function onNotebook(command: string, values: object): Promise<void> {
  const editor = vscode.window.activeTextEditor;
  if (editor?.document.languageId !== 'tappet') {
    await vscode.window.showInformationMessage('Open a notebook (*.tappet) first.');
    return;
  }
  const uri = editor.document.uri.toString();
  await vscode.commands.executeCommand(command, { uri, line: editor.selection.active.line, ...values });
}

/** Prompts and pages before and after a command of the server, however it was called. */
export function executingCommands(pages: Pages): NonNullable<Middleware['executeCommand']> {
  return async (command, values, next) => {
    if (command === EXPLAIN) return explainRule(pages, values[0], (argument) => next(command, [argument]));
    if (command === COMPARE) return showComparison(pages, await next(command, values));
    return command === START
      ? startSession(values[0] ?? {}, (argument) => next(command, [argument]))
      : next(command, values);
  };
}

async function showComparison(
  pages: Pages,
  answer: { readonly text?: string; readonly problem?: string } | null,
) {
  if (answer?.problem) await vscode.window.showInformationMessage(answer.problem);
  if (answer?.text) await pages.show('Comparison', answer.text);
}

async function startSession(
  values: { readonly uri?: string },
  run: (values: object) => vscode.ProviderResult<vscode.Position | null>,
): Promise<void> {
  const title = await vscode.window.showInputBox({
    prompt: 'Title of the session',
    placeHolder: 'Optional',
  });
  if (title === undefined) return;
  const cursor = await run({ ...values, title, date: localDate(new Date()) });
  const editor = vscode.window.visibleTextEditors.find(
    ({ document }) => document.uri.toString() === values.uri,
  );
  if (!cursor || !editor) return;
  const at = new vscode.Position(cursor.line, cursor.character);
  editor.selection = new vscode.Selection(at, at);
  editor.revealRange(new vscode.Range(at, at));
  await vscode.window.showTextDocument(editor.document, editor.viewColumn);
}

/** The user's date; the server's machine may have another one. */
const localDate = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-');
