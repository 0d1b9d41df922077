/** Changes to notebooks in the protocol's terms, each with the version it was made for where the editor supports that. */
import type { Range, WorkspaceEdit } from 'vscode-languageserver';
import type { Client } from './client.ts';

export interface NotebookChanges {
  readonly uri: string;
  /** Null where it is not open. */
  readonly version: number | null;
  readonly edits: readonly { readonly range: Range; readonly text: string }[];
}

export function toWorkspaceEdit(all: readonly NotebookChanges[], client: Client): WorkspaceEdit {
  const rows = all.map(({ uri, version, edits }) => ({
    textDocument: { uri, version },
    edits: edits.map(({ range, text }) => ({ range, newText: text })),
  }));
  if (client.versionedEdits) return { documentChanges: rows };
  return { changes: Object.fromEntries(rows.map(({ textDocument, edits }) => [textDocument.uri, edits])) };
}
