/** What an editor keeps while it talks to the server: the texts as they are, what it waits for, and what it holds answers to. */
import assert from 'node:assert/strict';
import { setImmediate } from 'node:timers/promises';
import {
  CancellationTokenSource,
  ErrorCodes,
  LSPErrorCodes,
  type PublishDiagnosticsParams,
  type WorkspaceEdit,
} from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Range } from '../../grammar/index.ts';
import { changed } from '../laws/peer.ts';
import { protocolRanges, sameAsFresh } from './answers.ts';
import { type Disk, FOLDER, type Talk } from './connection.ts';

export const uriOf = (name: string): string => `${FOLDER}/${name}`;

interface Change {
  readonly range?: Range;
  readonly text: string;
}

export interface Editor {
  readonly open: (name: string, text: string) => void;
  readonly change: (name: string, changes: readonly Change[]) => void;
  readonly close: (name: string) => void;
  readonly ask: (name: string, method: string, params: object) => void;
  readonly cancel: (nth: number) => void;
  /** A file that somebody else writes. */
  readonly write: (name: string, text: string) => void;
  /** Lets the server take a few messages. */
  readonly breathe: () => Promise<void>;
  /** Waits for all answers. */
  readonly rest: () => Promise<void>;
  readonly openNames: () => readonly string[];
}

/** A file that is named may be looked for behind an answer, and the notebook is read again then. */
const NAMES_FILES = /\b(?:use|photo|log)\b/i;
const LONGEST_WAIT = 60_000;

export function editorOf({ connection, onPublished }: Talk, disk: Disk): Editor {
  const documents = new Map<string, TextDocument>();
  const texts = new Map<string, string>();
  const versions = new Map<string, number>();
  const waiting: { readonly answer: Promise<void>; readonly source: CancellationTokenSource }[] = [];
  let epoch = 0;
  const put = (document: TextDocument) => {
    documents.set(document.uri, document);
    texts.set(`${document.uri} ${document.version}`, document.getText());
    epoch++;
  };
  const next = (uri: string) => {
    const version = (versions.get(uri) ?? 0) + 1;
    versions.set(uri, version);
    return version;
  };
  const tell = (method: string, params: object) => void connection.sendNotification(method, params);

  function change(uri: string, changes: readonly Change[]): void {
    const document = documents.get(uri);
    const version = next(uri);
    tell('textDocument/didChange', { textDocument: { uri, version }, contentChanges: changes });
    if (!document) return;
    // Each of a document made anew: one that is changed on and on counts its lines wrongly after some lone carriage returns.
    const text = changes.reduce(
      (text, { range, text: put }) => (range ? changed(text, { range, text: put }) : put),
      document.getText(),
    );
    put(TextDocument.create(uri, 'tappet', version, text));
  }

  function publish({ uri, version, diagnostics }: PublishDiagnosticsParams): void {
    // Taken back as it is closed.
    if (version === undefined && diagnostics.length === 0) return;
    const text = texts.get(`${uri} ${version}`);
    assert.ok(text !== undefined, `findings of a version that never was: ${uri} ${version}`);
    isWithin(diagnostics, text, 'textDocument/publishDiagnostics');
  }
  let broken: unknown;
  onPublished((published) => {
    try {
      publish(published);
    } catch (error) {
      broken ??= error;
    }
  });

  connection.onRequest('workspace/applyEdit', ({ edit }: { readonly edit: WorkspaceEdit }) => {
    const [row] = edit.documentChanges ?? [];
    if (!row || !('edits' in row)) return { applied: false };
    const { uri, version } = row.textDocument;
    const document = documents.get(uri);
    if (!document || document.version !== version) return { applied: false };
    isWithin(row.edits, document.getText(), 'workspace/applyEdit');
    change(uri, [{ text: TextDocument.applyEdits(document, row.edits as never) }]);
    return { applied: true };
  });

  function ask(uri: string, method: string, params: object): void {
    const source = new CancellationTokenSource();
    const text = documents.get(uri)?.getText();
    const asked = epoch;
    const mayBeReadAgain = () =>
      epoch !== asked || [...documents.values()].some((each) => NAMES_FILES.test(each.getText()));
    const answered = (result: unknown) => {
      if (text === undefined || !method.startsWith('textDocument/')) return;
      // It waits for what is used and answers of the text as it is then.
      if (method === 'textDocument/diagnostic' && epoch !== asked) return;
      isWithin(result, text, method);
      if (!NAMES_FILES.test(text)) sameAsFresh(method, params, result, text);
    };
    const refused = (error: { readonly code: number; readonly message: string }) => {
      const { code } = error;
      const isAllowed =
        (code === LSPErrorCodes.RequestCancelled && source.token.isCancellationRequested) ||
        (code === LSPErrorCodes.ContentModified && mayBeReadAgain()) ||
        (code === LSPErrorCodes.RequestFailed && /[rR]ename$/.test(method)) ||
        (code === ErrorCodes.InvalidParams &&
          (text === undefined || epoch !== asked || method === 'workspace/executeCommand'));
      if (!isAllowed) throw new Error(`${method} ${JSON.stringify(params)}: ${code} ${error.message}`);
    };
    const all = { textDocument: { uri }, ...params };
    const answer = connection.sendRequest(method, all, source.token).then(answered, refused);
    // Looked at when it is waited for.
    answer.catch(() => undefined);
    waiting.push({ answer, source });
  }

  async function rest(): Promise<void> {
    const answers = waiting.splice(0).map(({ answer }) => answer);
    let timer: ReturnType<typeof setTimeout> | undefined;
    const late = new Promise((_, reject) => {
      timer = setTimeout(() => reject(new Error('a request is never answered')), LONGEST_WAIT);
    });
    try {
      await Promise.race([Promise.all(answers), late]);
    } finally {
      clearTimeout(timer);
    }
    if (broken) throw broken;
  }

  return {
    open: (name, text) => {
      const uri = uriOf(name);
      if (documents.has(uri)) return;
      const document = TextDocument.create(uri, 'tappet', next(uri), text);
      tell('textDocument/didOpen', {
        textDocument: { uri, languageId: 'tappet', version: document.version, text },
      });
      put(document);
    },
    change: (name, changes) => change(uriOf(name), changes),
    close: (name) => {
      tell('textDocument/didClose', { textDocument: { uri: uriOf(name) } });
      documents.delete(uriOf(name));
      epoch++;
    },
    ask: (name, method, params) => ask(uriOf(name), method, params),
    cancel: (nth) => waiting[nth % Math.max(1, waiting.length)]?.source.cancel(),
    write: (name, text) => {
      disk.set(name, text);
      epoch++;
      tell('workspace/didChangeWatchedFiles', { changes: [{ uri: uriOf(name), type: 2 }] });
    },
    breathe: async () => {
      for (let i = 0; i < 5; i++) await setImmediate();
    },
    rest,
    openNames: () => [...documents.keys()].map((uri) => uri.slice(FOLDER.length + 1)),
  };
}

/** Every place in an answer about one text lies inside it. */
function isWithin(answer: unknown, text: string, method: string): void {
  const lines = text.split(/\r\n|\r|\n/);
  for (const { line, character } of protocolRanges(method, answer)) {
    const length = lines[line]?.length ?? -1;
    assert.ok(
      line >= 0 && character >= 0 && character <= length,
      `${method}: ${line}:${character} is outside the text`,
    );
  }
}
