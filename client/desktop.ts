/** Entry of the extension in desktop and remote editors: the server is a process of its own, over IPC. */
import type * as vscode from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { start } from './start.ts';

/** Called by the editor when the first notebook is opened. */
export function activate(context: vscode.ExtensionContext): Promise<void> {
  const module = context.asAbsolutePath('dist/server.cjs');
  const server = { module, transport: TransportKind.ipc };
  return start(context, (options) => new LanguageClient('tappet', 'Tappet', server, options));
}
