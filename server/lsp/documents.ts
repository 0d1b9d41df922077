/** The notebooks an editor has open: a snapshot each, kept in step change by change. */
import type { TextDocumentContentChangeEvent } from 'vscode-languageserver';
import { comparePositions } from '../../grammar/index.ts';
import { type Change, edit, type Shared, type Snapshot } from '../model/snapshot.ts';
import { openNotebook } from '../rules/index.ts';
import { type FreshTemplate, freshAfter, isFresh } from './fresh.ts';
import { type TypedLine, typedLines } from './typing.ts';

export interface OpenDocument {
  readonly uri: string;
  readonly version: number;
  readonly snapshot: Snapshot;
  readonly typed: readonly TypedLine[];
  readonly fresh?: FreshTemplate | undefined;
}

export interface Documents {
  readonly get: (uri: string) => OpenDocument | undefined;
  readonly all: () => Iterable<OpenDocument>;
  readonly open: (uri: string, version: number, text: string) => void;
  /** Of a notebook that is not open nothing is known, so nothing changes. */
  readonly change: (uri: string, version: number, changes: readonly TextDocumentContentChangeEvent[]) => void;
  /** The same text, read again since another notebook that it uses has changed. */
  readonly renew: (uri: string, snapshot: Snapshot) => void;
  /** Typing has paused: no line counts as being typed. */
  readonly settle: (uri: string) => void;
  readonly close: (uri: string) => void;
}

/** `sharedFor`: what a notebook gets of those that it uses. */
export function createDocuments(sharedFor: (uri: string) => Shared): Documents {
  const byUri = new Map<string, OpenDocument>();
  const update = (uri: string, next: (document: OpenDocument) => OpenDocument) => {
    const document = byUri.get(uri);
    if (document) byUri.set(uri, next(document));
  };
  return {
    get: (uri) => byUri.get(uri),
    all: () => byUri.values(),
    open: (uri, version, text) =>
      byUri.set(uri, { uri, version, snapshot: openNotebook(text, sharedFor(uri)), typed: [] }),
    change: (uri, version, changes) => update(uri, (document) => changed(document, version, changes)),
    renew: (uri, snapshot) => update(uri, (document) => ({ ...document, snapshot })),
    settle: (uri) => update(uri, (document) => ({ ...document, typed: [] })),
    close: (uri) => byUri.delete(uri),
  };
}

function changed(
  document: OpenDocument,
  version: number,
  events: readonly TextDocumentContentChangeEvent[],
): OpenDocument {
  const whole = events.findLastIndex((event) => !('range' in event));
  const start =
    whole < 0
      ? document.snapshot
      : openNotebook((events[whole] as { text: string }).text, document.snapshot.shared);
  const changes = events.slice(whole + 1).map((event) => forwards(event as Change));
  const before = whole < 0 ? document : { ...document, snapshot: start, typed: [], fresh: undefined };
  const typed = typedLines(start, before.typed, changes, (line) => isFresh(before, line));
  let { snapshot, fresh } = before;
  for (const change of changes) {
    snapshot = edit(snapshot, change);
    fresh = freshAfter(snapshot, fresh, change);
  }
  return { uri: document.uri, version, snapshot, typed, fresh };
}

/** Some editors give the ends of a selection in the order it was made. */
function forwards({ range, text }: Change): Change {
  const { start, end } = range;
  return { range: comparePositions(start, end) <= 0 ? range : { start: end, end: start }, text };
}
