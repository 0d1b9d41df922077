/** What the editor at the other end can do, from its capabilities; nothing is taken for granted. */
import { type ClientCapabilities, DiagnosticTag, MarkupKind } from 'vscode-languageserver';

export interface Client {
  readonly markdown: boolean;
  /** It shows the lines that belong to a finding by themselves. */
  readonly relatedLines: boolean;
  readonly configuration: boolean;
  /** It reports changed settings only to a server that has registered for them. */
  readonly registersForSettings: boolean;
  /** It underlines the whole name that a definition is requested for. */
  readonly definitionLinks: boolean;
  readonly workspaceFolders: boolean;
  /** It reports changed files to a server that has registered for them. */
  readonly watchesFiles: boolean;
  /** It moves the cursor through the stops of an inserted text. */
  readonly snippets: boolean;
  /** It shows a few words right behind the label of a suggestion. */
  readonly labelDetails: boolean;
  readonly takesEdits: boolean;
  /** It shows the text that a command returns; else the server shows it. */
  readonly showsText: boolean;
  /** It requests hints again when the server says so. */
  readonly refreshesHints: boolean;
  /** It pulls findings, so that none are published. */
  readonly pullsFindings: boolean;
  /** It pulls findings again when the server says so. */
  readonly refreshesFindings: boolean;
  /** It fades what is unnecessary. */
  readonly fades: boolean;
  readonly codeActions: boolean;
  /** It makes a change only in the version it was made for. */
  readonly versionedEdits: boolean;
}

/** `options`: what the editor adds to the protocol's capabilities. */
export function clientOf({ textDocument, workspace }: ClientCapabilities, options?: unknown): Client {
  const { showsText } = (options ?? {}) as { readonly showsText?: unknown };
  return {
    markdown: textDocument?.hover?.contentFormat?.includes(MarkupKind.Markdown) ?? false,
    relatedLines: textDocument?.publishDiagnostics?.relatedInformation ?? false,
    configuration: workspace?.configuration ?? false,
    registersForSettings: workspace?.didChangeConfiguration?.dynamicRegistration ?? false,
    definitionLinks: textDocument?.definition?.linkSupport ?? false,
    workspaceFolders: workspace?.workspaceFolders ?? false,
    watchesFiles: workspace?.didChangeWatchedFiles?.dynamicRegistration ?? false,
    snippets: textDocument?.completion?.completionItem?.snippetSupport ?? false,
    labelDetails: textDocument?.completion?.completionItem?.labelDetailsSupport ?? false,
    takesEdits: workspace?.applyEdit ?? false,
    showsText: showsText === true,
    refreshesHints: workspace?.inlayHint?.refreshSupport ?? false,
    pullsFindings: textDocument?.diagnostic !== undefined,
    refreshesFindings: workspace?.diagnostics?.refreshSupport ?? false,
    fades:
      textDocument?.publishDiagnostics?.tagSupport?.valueSet.includes(DiagnosticTag.Unnecessary) ?? false,
    codeActions: textDocument?.codeAction?.codeActionLiteralSupport !== undefined,
    versionedEdits: workspace?.workspaceEdit?.documentChanges ?? false,
  };
}
