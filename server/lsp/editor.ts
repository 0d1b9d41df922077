/** What the server asks of the editor in the course of an answer. */
import { type Connection, MessageType, ShowMessageNotification, type TextEdit } from 'vscode-languageserver';

export interface Editor {
  /** Puts changes into a notebook. @returns whether the editor has done so. */
  readonly apply: (label: string, uri: string, edit: TextEdit) => Promise<boolean>;
  /** Shows a message to the reader. */
  readonly tell: (message: string) => void;
}

export const editorAt = (connection: Connection): Editor => ({
  async apply(label, uri, edit) {
    const answer = await connection.workspace.applyEdit({ label, edit: { changes: { [uri]: [edit] } } });
    return answer.applied;
  },
  // Not the connection's own way, which asks and fails where the editor does not answer.
  tell: (message) =>
    void connection.sendNotification(ShowMessageNotification.type, { type: MessageType.Info, message }),
});
