/** Read-only pages for the texts that the server's commands return. */
import * as vscode from 'vscode';

export interface Pages extends vscode.Disposable {
  /** Opens a Markdown text under a name; an open page of that name shows the new text. */
  readonly show: (name: string, text: string) => Promise<void>;
}

const SCHEME = 'tappet-page';

export function createPages(): Pages {
  const texts = new Map<string, string>();
  const changed = new vscode.EventEmitter<vscode.Uri>();
  const provider = vscode.workspace.registerTextDocumentContentProvider(SCHEME, {
    onDidChange: changed.event,
    provideTextDocumentContent: (uri) => texts.get(uri.path) ?? '',
  });
  const closed = vscode.workspace.onDidCloseTextDocument(({ uri }) => {
    if (uri.scheme === SCHEME) texts.delete(uri.path);
  });
  return {
    async show(name, text) {
      const uri = vscode.Uri.from({ scheme: SCHEME, path: `/${name}.md` });
      texts.set(uri.path, text);
      changed.fire(uri);
      await open(uri);
    },
    dispose: () => vscode.Disposable.from(provider, closed, changed).dispose(),
  };
}

/** As a Markdown preview where the editor has one; else as text. */
async function open(uri: vscode.Uri): Promise<void> {
  if (vscode.extensions.getExtension('vscode.markdown-language-features')) {
    const shown = vscode.commands.executeCommand('markdown.showPreview', uri).then(
      () => true,
      () => false, // it is there and does not run in this kind of host
    );
    if (await shown) return;
  }
  const document = await vscode.workspace.openTextDocument(uri);
  await vscode.window.showTextDocument(document, { preview: true });
}
