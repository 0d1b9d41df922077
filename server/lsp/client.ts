/** What the editor at the other end can do. Everything is asked for, nothing is taken for granted. */
import { type ClientCapabilities, MarkupKind } from 'vscode-languageserver';

export interface Client {
  readonly markdown: boolean;
  /** It shows the lines that belong to a finding by themselves. */
  readonly relatedLines: boolean;
  readonly configuration: boolean;
  /** It tells of changed settings only if it was asked to. */
  readonly asksForRegistration: boolean;
}

export function clientOf({ textDocument, workspace }: ClientCapabilities): Client {
  return {
    markdown: textDocument?.hover?.contentFormat?.includes(MarkupKind.Markdown) ?? false,
    relatedLines: textDocument?.publishDiagnostics?.relatedInformation ?? false,
    configuration: workspace?.configuration ?? false,
    asksForRegistration: workspace?.didChangeConfiguration?.dynamicRegistration ?? false,
  };
}
