/** What the server asks of the editor in the course of an answer. */
import { type Connection, MessageType, ShowMessageNotification } from 'vscode-languageserver';
import { type NotebookChanges, toWorkspaceEdit } from './changes.ts';
import type { Client } from './client.ts';

export interface Editor {
  /** Puts changes into a notebook. @returns whether the editor has done so. */
  readonly apply: (label: string, changes: NotebookChanges) => Promise<boolean>;
  /** Shows a message to the reader. */
  readonly tell: (message: string) => void;
}

export const editorAt = (connection: Connection, client: () => Client): Editor => ({
  async apply(label, changes) {
    const edit = toWorkspaceEdit([changes], client());
    return (await connection.workspace.applyEdit({ label, edit })).applied;
  },
  // Not the connection's own way, which asks and fails where the editor does not answer.
  tell: (message) =>
    void connection.sendNotification(ShowMessageNotification.type, { type: MessageType.Info, message }),
});
