/** Code actions in the protocol's terms. The only thing an editor sends back is a rule's code. */
import { CodeActionKind, type Command, type CodeAction as ProtocolAction } from 'vscode-languageserver';
import type { ActionKind, CodeAction } from '../features/code-actions.ts';
import { toWorkspaceEdit } from './changes.ts';
import type { Client } from './client.ts';
import { EXPLAIN } from './commands.ts';
import { toDiagnostic } from './convert.ts';
import type { OpenDocument } from './documents.ts';

const KINDS: Readonly<Record<ActionKind, CodeActionKind>> = {
  quickfix: CodeActionKind.QuickFix,
  'refactor.rewrite': CodeActionKind.RefactorRewrite,
  'source.fixAll': `${CodeActionKind.SourceFixAll}.tappet`,
};

export const ACTION_KINDS: readonly CodeActionKind[] = Object.values(KINDS);

/** Editors without code actions get those that are commands. */
export function toCodeActions(
  actions: readonly CodeAction[],
  document: OpenDocument,
  client: Client,
): (ProtocolAction | Command)[] {
  if (!client.codeActions) return actions.flatMap((action) => commandOf(action) ?? []);
  return actions.map((action) => toCodeAction(action, document, client));
}

function toCodeAction(action: CodeAction, document: OpenDocument, client: Client): ProtocolAction {
  const { title, kind, edits, found, isSure } = action;
  const command = commandOf(action);
  return {
    title,
    kind: KINDS[kind],
    ...(found.length > 0 && { diagnostics: found.map((each) => toDiagnostic(each, document.uri, client)) }),
    ...(isSure && { isPreferred: true }),
    ...(edits.length > 0 && { edit: toWorkspaceEdit([{ ...document, edits }], client) }),
    ...(command && { command }),
  };
}

const commandOf = ({ title, explains }: CodeAction): Command | undefined =>
  explains === undefined ? undefined : { title, command: EXPLAIN, arguments: [{ code: explains }] };
