/** Entry of the extension in a browser: the server is a worker. */
import * as vscode from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { start } from './start.ts';

// Declared here, since the compiler's browser library would put every browser name in reach of the server's pure code.
declare class Worker {
  constructor(script: string);
  terminate(): void;
}

/** Called by the editor when the first notebook is opened. */
export function activate(context: vscode.ExtensionContext): Promise<void> {
  const script = vscode.Uri.joinPath(context.extensionUri, 'dist/server.worker.js').toString(true);
  let worker: Worker | undefined;
  context.subscriptions.push({ dispose: () => worker?.terminate() });
  return start(context, (options) => {
    worker?.terminate();
    worker = new Worker(script);
    return new LanguageClient('tappet', 'Tappet', worker, options);
  });
}
