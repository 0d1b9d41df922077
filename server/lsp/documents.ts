/** The open notebooks: a snapshot each, updated change by change. */
import type { TextDocumentContentChangeEvent } from 'vscode-languageserver';
import { comparePositions } from '../../grammar/index.ts';
import type { Shared } from '../model/snapshot/look-up.ts';
import { type Change, edit, type Snapshot } from '../model/snapshot/snapshot.ts';
import { openNotebook } from '../rules/check.ts';
import { type FreshTemplate, freshAfter, isFresh } from './fresh-template.ts';
import { type TypedLine, typedLines } from './lines-being-typed.ts';

export interface OpenDocument {
  readonly uri: string;
  readonly version: number;
  readonly snapshot: Snapshot;
  readonly typed: readonly TypedLine[];
  readonly fresh?: FreshTemplate | undefined;
  /** The line that the last change left the cursor on, from zero; undefined before the first. */
  readonly edited: number | undefined;
}

export interface Documents {
  /** Undefined where it is not open, or its text is lost. */
  readonly get: (uri: string) => OpenDocument | undefined;
  readonly all: () => Iterable<OpenDocument>;
  /** It is open, and a change to it failed: its text is not known until the editor sends all of it, so requests are refused. */
  readonly isLost: (uri: string) => boolean;
  /** The URIs of the notebooks whose text is lost. */
  readonly lost: () => Iterable<string>;
  /** Throws where the text cannot be read, and it is lost then. */
  readonly open: (uri: string, version: number, text: string) => void;
  /** Does nothing where the notebook is not open. Throws as `open` does. */
  readonly change: (uri: string, version: number, changes: readonly TextDocumentContentChangeEvent[]) => void;
  /** The same text, read again since another notebook that it uses has changed. */
  readonly renew: (uri: string, snapshot: Snapshot) => void;
  /** Typing has paused: no line counts as being typed. */
  readonly settle: (uri: string) => void;
  readonly close: (uri: string) => void;
}

/** `sharedFor`: what a notebook gets from those that it uses. */
export function createDocuments(sharedFor: (uri: string) => Shared): Documents {
  const byUri = new Map<string, OpenDocument>();
  const lost = new Set<string>();
  /** Any text can be read, so a failure is a defect of our own: the text here must not differ from the editor's. */
  const read = (uri: string, document: () => OpenDocument) => {
    try {
      byUri.set(uri, document());
      lost.delete(uri);
    } catch (error) {
      byUri.delete(uri);
      lost.add(uri);
      throw error;
    }
  };
  const opened = (uri: string, version: number, text: string): OpenDocument => ({
    uri,
    version,
    snapshot: openNotebook(text, sharedFor(uri)),
    typed: [],
    edited: undefined,
  });
  const update = (uri: string, next: (document: OpenDocument) => OpenDocument) => {
    const document = byUri.get(uri);
    if (document) byUri.set(uri, next(document));
  };
  return {
    get: (uri) => byUri.get(uri),
    all: () => byUri.values(),
    isLost: (uri) => lost.has(uri),
    lost: () => lost.values(),
    open: (uri, version, text) => read(uri, () => opened(uri, version, text)),
    change: (uri, version, changes) => {
      const whole = changes.findLastIndex((change) => !('range' in change));
      const document = byUri.get(uri);
      if (document || (lost.has(uri) && whole >= 0))
        read(uri, () => changed(document ?? opened(uri, version, ''), version, changes, whole));
    },
    renew: (uri, snapshot) => update(uri, (document) => ({ ...document, snapshot })),
    settle: (uri) => update(uri, (document) => ({ ...document, typed: [] })),
    close: (uri) => {
      byUri.delete(uri);
      lost.delete(uri);
    },
  };
}

function changed(
  document: OpenDocument,
  version: number,
  events: readonly TextDocumentContentChangeEvent[],
  whole: number,
): OpenDocument {
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
  return { uri: document.uri, version, snapshot, typed, fresh, edited: typed.at(-1)?.at };
}

/** Some editors send the ends of a range in the order of the selection. */
function forwards({ range, text }: Change): Change {
  const { start, end } = range;
  return { range: comparePositions(start, end) <= 0 ? range : { start: end, end: start }, text };
}
