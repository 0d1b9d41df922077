/** The pages of the rules, from the server: there is no network in them. */
import * as vscode from 'vscode';
import type { Pages } from './pages.ts';

/** Of the server; the language client registers it as a command of the editor. */
export const EXPLAIN = 'tappet.explain';

interface Rule {
  readonly code: string;
  readonly title: string;
  readonly severity: string;
}

interface Answer {
  readonly text?: string;
  readonly rules?: readonly Rule[];
}

type Ask = (asked: { readonly code?: string }) => vscode.ProviderResult<Answer>;

/** In the palette: any rule may be chosen. */
export const ruleCommand = (): vscode.Disposable =>
  vscode.commands.registerCommand('tappet.explainRule', () => vscode.commands.executeCommand(EXPLAIN, {}));

/** Shows the page of a rule; asks which, where none was named. */
export async function explainRule(pages: Pages, given: { readonly code?: string }, ask: Ask): Promise<void> {
  const code = given?.code ?? (await chosen(ask));
  if (code === undefined) return;
  const answer = await ask({ code });
  if (answer?.text) await pages.show(code, answer.text);
}

async function chosen(ask: Ask): Promise<string | undefined> {
  const rules = (await ask({}))?.rules ?? [];
  const items = rules.map(({ code, title, severity }) => ({
    label: title,
    description: `${code}, ${severity}`,
    code,
  }));
  const item = await vscode.window.showQuickPick(items, {
    placeHolder: 'Which rule?',
    matchOnDescription: true,
  });
  return item?.code;
}
