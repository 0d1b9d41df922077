/** What the editor at the other end can do. Everything is asked for, nothing is taken for granted. */
import { type ClientCapabilities, DiagnosticTag, MarkupKind } from 'vscode-languageserver';

export interface Client {
  readonly markdown: boolean;
  /** It shows the lines that belong to a finding by themselves. */
  readonly relatedLines: boolean;
  readonly configuration: boolean;
  /** It tells of changed settings only if it was asked to. */
  readonly asksForRegistration: boolean;
  /** It goes to the target of a definition from the whole of what was asked about. */
  readonly definitionLinks: boolean;
  readonly workspaceFolders: boolean;
  /** It tells of changed files if it was asked to. */
  readonly watchesFiles: boolean;
  /** It moves the cursor through the stops of an inserted text. */
  readonly snippets: boolean;
  /** It shows a few words right behind the label of a suggestion. */
  readonly labelDetails: boolean;
  readonly takesEdits: boolean;
  /** It shows the text that a command answers; else the server tells it. */
  readonly showsText: boolean;
  /** Asks again for hints when it is told to. */
  readonly refreshesHints: boolean;
  /** It asks for what was found, so that nothing is to be sent unasked. */
  readonly asksForFindings: boolean;
  /** It asks again for what was found when it is told to. */
  readonly asksAgain: boolean;
  /** It fades what is unnecessary. */
  readonly fades: boolean;
  readonly codeActions: boolean;
  /** It holds a change to the version it was made for. */
  readonly versionedEdits: boolean;
}

/** `options`: what the editor says of itself beside the protocol. */
export function clientOf({ textDocument, workspace }: ClientCapabilities, options?: unknown): Client {
  const { showsText } = (options ?? {}) as { readonly showsText?: unknown };
  return {
    markdown: textDocument?.hover?.contentFormat?.includes(MarkupKind.Markdown) ?? false,
    relatedLines: textDocument?.publishDiagnostics?.relatedInformation ?? false,
    configuration: workspace?.configuration ?? false,
    asksForRegistration: workspace?.didChangeConfiguration?.dynamicRegistration ?? false,
    definitionLinks: textDocument?.definition?.linkSupport ?? false,
    workspaceFolders: workspace?.workspaceFolders ?? false,
    watchesFiles: workspace?.didChangeWatchedFiles?.dynamicRegistration ?? false,
    snippets: textDocument?.completion?.completionItem?.snippetSupport ?? false,
    labelDetails: textDocument?.completion?.completionItem?.labelDetailsSupport ?? false,
    takesEdits: workspace?.applyEdit ?? false,
    showsText: showsText === true,
    refreshesHints: workspace?.inlayHint?.refreshSupport ?? false,
    asksForFindings: textDocument?.diagnostic !== undefined,
    asksAgain: workspace?.diagnostics?.refreshSupport ?? false,
    fades:
      textDocument?.publishDiagnostics?.tagSupport?.valueSet.includes(DiagnosticTag.Unnecessary) ?? false,
    codeActions: textDocument?.codeAction?.codeActionLiteralSupport !== undefined,
    versionedEdits: workspace?.workspaceEdit?.documentChanges ?? false,
  };
}
