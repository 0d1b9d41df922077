/** Requests from the server to the editor in the course of an answer. */
import { type Connection, MessageType, ShowMessageNotification } from 'vscode-languageserver';
import { type NotebookChanges, toWorkspaceEdit } from './changes.ts';
import type { Client } from './client.ts';

export interface Editor {
  /** Changes a notebook. @returns whether the editor has done so. */
  readonly apply: (label: string, changes: NotebookChanges) => Promise<boolean>;
  readonly showMessage: (message: string) => void;
}

export const editorAt = (connection: Connection, client: () => Client): Editor => ({
  async apply(label, changes) {
    const edit = toWorkspaceEdit([changes], client());
    return (await connection.workspace.applyEdit({ label, edit })).applied;
  },
  // A notification: the connection's own `showMessage` is a request, and fails where the editor does not answer.
  showMessage: (message) =>
    void connection.sendNotification(ShowMessageNotification.type, { type: MessageType.Info, message }),
});
