/** The pages of the rules, from the server; no network is used. */
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

type RunExplain = (values: { readonly code?: string }) => vscode.ProviderResult<Answer>;

/** In the palette: the user picks any rule. */
export const ruleCommand = (): vscode.Disposable =>
  vscode.commands.registerCommand('tappet.explainRule', () => vscode.commands.executeCommand(EXPLAIN, {}));

/** Shows the page of a rule; the user picks one where none is given. */
export async function explainRule(
  pages: Pages,
  values: { readonly code?: string },
  run: RunExplain,
): Promise<void> {
  const code = values?.code ?? (await pickRule(run));
  if (code === undefined) return;
  const answer = await run({ code });
  if (answer?.text) await pages.show(code, answer.text);
}

async function pickRule(run: RunExplain): Promise<string | undefined> {
  const rules = (await run({}))?.rules ?? [];
  const items = rules.map(({ code, title, severity }) => ({
    label: title,
    description: `${code}, ${severity}`,
    code,
  }));
  const item = await vscode.window.showQuickPick(items, {
    placeHolder: 'Rule to explain',
    matchOnDescription: true,
  });
  return item?.code;
}
