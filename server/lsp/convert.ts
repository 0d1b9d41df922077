/** Answers in the protocol's terms. Ranges are the protocol's already: lines and UTF-16 columns from zero. */
import {
  DiagnosticSeverity,
  DiagnosticTag,
  type DocumentSymbol,
  type FoldingRange,
  FoldingRangeKind,
  MarkupKind,
  type Diagnostic as ProtocolDiagnostic,
  type Hover as ProtocolHover,
  type SelectionRange,
  SymbolKind,
  type TextEdit,
  type WorkspaceSymbol,
} from 'vscode-languageserver';
import type { Range } from '../../grammar/index.ts';
import type { Diagnostic } from '../features/diagnostics.ts';
import type { Fold } from '../features/folding.ts';
import type { Hover } from '../features/hover.ts';
import { withoutMarkdown } from '../features/markdown.ts';
import type { OutlineSymbol } from '../features/symbols.ts';
import type { FoundSymbol } from '../features/workspace-symbols.ts';
import type { EntryKind } from '../model/entry/entry.ts';
import type { Severity } from '../model/snapshot/finding.ts';
import type { Change } from '../model/snapshot/snapshot.ts';
import type { Client } from './client.ts';

/** The source of the findings, as an editor lists it. */
export const SOURCE = 'tappet';

const SEVERITIES: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
};

/** Related lines are added to the message where the editor does not show them separately. */
export function toDiagnostic(diagnostic: Diagnostic, uri: string, client: Client): ProtocolDiagnostic {
  const { code, severity, range, message, related, isUnnecessary } = diagnostic;
  const relatedLines = related.map((each) => `line ${each.range.start.line + 1}: ${each.message}`);
  return {
    range,
    severity: SEVERITIES[severity],
    source: SOURCE,
    ...(code !== undefined && { code }),
    message: client.relatedLines ? message : [message, ...relatedLines].join('\n'),
    ...(isUnnecessary && client.fades && { tags: [DiagnosticTag.Unnecessary] }),
    ...(client.relatedLines &&
      related.length > 0 && {
        relatedInformation: related.map(({ range, message }) => ({ location: { uri, range }, message })),
      }),
  };
}

export function toHover({ range, text }: Hover, client: Client): ProtocolHover {
  const contents = client.markdown
    ? { kind: MarkupKind.Markdown, value: text }
    : { kind: MarkupKind.PlainText, value: withoutMarkdown(text) };
  return { range, contents };
}

export const toTextEdit = ({ range, text }: Change): TextEdit => ({ range, newText: text });

/** Ranges from the innermost to the outermost. */
export const toSelectionRange = (ranges: readonly Range[]): SelectionRange =>
  ranges.reduceRight<SelectionRange | undefined>(
    (parent, range) => (parent ? { range, parent } : { range }),
    undefined,
  ) as SelectionRange;

export function toFoldingRange({ from, to, kind }: Fold): FoldingRange {
  const isComment = kind === 'comment' || kind === 'note';
  return { startLine: from, endLine: to, ...(isComment && { kind: FoldingRangeKind.Comment }) };
}

const SYMBOL_KINDS: Partial<Readonly<Record<EntryKind, SymbolKind>>> = {
  section: SymbolKind.Namespace,
  session: SymbolKind.Event,
  setting: SymbolKind.Property,
  reading: SymbolKind.Number,
  fact: SymbolKind.Constant,
  limit: SymbolKind.Constant,
  target: SymbolKind.Constant,
  spec: SymbolKind.Constant,
  part: SymbolKind.Object,
  port: SymbolKind.Interface,
  word: SymbolKind.Field,
  item: SymbolKind.Key,
  fit: SymbolKind.Object,
  check: SymbolKind.Boolean,
  file: SymbolKind.File,
  trial: SymbolKind.Function,
};

export function toDocumentSymbol(symbol: OutlineSymbol): DocumentSymbol {
  const { name, detail, kind, range, selection, children } = symbol;
  return {
    name,
    detail,
    kind: symbolKind(kind),
    range,
    selectionRange: selection,
    children: children.map(toDocumentSymbol),
  };
}

export const toWorkspaceSymbol = ({ uri, name, container, kind, range }: FoundSymbol): WorkspaceSymbol => ({
  name,
  kind: symbolKind(kind),
  containerName: container,
  location: { uri, range },
});

const symbolKind = (kind: EntryKind): SymbolKind => SYMBOL_KINDS[kind] ?? SymbolKind.String;
