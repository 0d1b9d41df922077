/** Completion, hints and lenses in the protocol's terms. */
import {
  type CodeLens,
  type CompletionItem,
  CompletionItemKind,
  type InlayHint,
  InlayHintKind,
  InsertTextFormat,
} from 'vscode-languageserver';
import type { Lens } from '../features/code-lens.ts';
import type { Suggestion, SuggestionKind } from '../features/completion.ts';
import type { Hint } from '../features/inlay-hints.ts';
import type { Client } from './client.ts';
import { COMPARE, START } from './commands.ts';

const KINDS: Readonly<Record<SuggestionKind, CompletionItemKind>> = {
  section: CompletionItemKind.Module,
  setting: CompletionItemKind.Property,
  reading: CompletionItemKind.Variable,
  fact: CompletionItemKind.Constant,
  work: CompletionItemKind.Keyword,
  value: CompletionItemKind.Value,
  unit: CompletionItemKind.Unit,
  place: CompletionItemKind.EnumMember,
  condition: CompletionItemKind.Event,
  part: CompletionItemKind.Class,
  item: CompletionItemKind.Reference,
  date: CompletionItemKind.Value,
  file: CompletionItemKind.File,
  folder: CompletionItemKind.Folder,
  rule: CompletionItemKind.Text,
};

/** `rank`: its number in the list; without one an editor sorts by name. */
export function toCompletionItem(suggestion: Suggestion, rank: number, client: Client): CompletionItem {
  const { label, kind, detail, meaning, text, range, foundBy, byAlias, snippet } = suggestion;
  const withStops = client.snippets && snippet !== undefined;
  return {
    label,
    kind: KINDS[kind],
    sortText: String(rank).padStart(5, '0'),
    ...(detail && { detail }),
    ...(meaning && { documentation: meaning }),
    ...(foundBy !== undefined && { filterText: foundBy }),
    ...(byAlias && client.labelDetails && { labelDetails: { detail: `, ${foundBy}` } }),
    textEdit: { range, newText: withStops ? snippet : text },
    ...(withStops && { insertTextFormat: InsertTextFormat.Snippet }),
  };
}

export const toInlayHint = ({ position, kind, text, about }: Hint): InlayHint => ({
  position,
  label: text,
  ...(kind === 'unit' && { kind: InlayHintKind.Type }),
  ...(about && { tooltip: about }),
  paddingLeft: true,
});

export function toCodeLens({ line, text, act }: Lens, uri: string): CodeLens {
  const start = { line, character: 0 };
  const command =
    act.act === 'start'
      ? { command: START, arguments: [{ uri, line }] }
      : { command: COMPARE, arguments: [{ uri, line, against: act.against ?? 'before' }] };
  return { range: { start, end: start }, command: { title: text, ...command } };
}
