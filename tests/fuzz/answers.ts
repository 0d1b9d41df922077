/** What an answer is held to: the places in it, and what a notebook opened anew would be answered. */
import assert from 'node:assert/strict';
import { diagnosticsOf } from '../../server/features/diagnostics.ts';
import { foldsOf } from '../../server/features/folding.ts';
import { DEFAULT_STYLE, formatEdits } from '../../server/features/formatting.ts';
import { highlighting } from '../../server/features/references.ts';
import { symbolsOf } from '../../server/features/symbols.ts';
import { toDocumentSymbol, toFoldingRange, toTextEdit } from '../../server/lsp/convert.ts';
import { encodedAll } from '../../server/lsp/semantic.ts';
import { runToEnd } from '../../server/model/snapshot/interruptible.ts';
import type { Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook } from '../../server/rules/check.ts';

interface Place {
  readonly line: number;
  readonly character: number;
}

/** Answers whose places may be in other notebooks, and what is only carried along. */
const ELSEWHERE = new Set(['textDocument/references', 'textDocument/definition', 'textDocument/rename']);

/** Every place of an answer about one notebook. */
export function protocolRanges(method: string, answer: unknown): readonly Place[] {
  if (ELSEWHERE.has(method)) return [];
  if (method.startsWith('textDocument/semanticTokens')) return tokenEnds(answer);
  return [...places(answer)];
}

function* places(answer: unknown): Generator<Place> {
  if (typeof answer !== 'object' || answer === null) return;
  if ('line' in answer && 'character' in answer) yield answer as Place;
  else for (const each of Object.values(answer)) yield* places(each);
}

/** Of all tokens, not of what has changed since others were sent. */
function tokenEnds(answer: unknown): readonly Place[] {
  const { data = [] } = (answer ?? {}) as { readonly data?: readonly number[] };
  const ends: Place[] = [];
  let [line, start] = [0, 0];
  for (let i = 0; i < data.length; i += 5) {
    const [down = 0, right = 0, length = 0] = data.slice(i, i + 3);
    line += down;
    start = down > 0 ? right : start + right;
    ends.push({ line, character: start + length });
  }
  return ends;
}

type Fresh = (snapshot: Snapshot, params: never) => unknown;

/** What hangs on the text alone. */
const FRESH: Readonly<Record<string, Fresh>> = {
  'textDocument/foldingRange': (snapshot) => foldsOf(snapshot).map(toFoldingRange),
  'textDocument/documentSymbol': (snapshot) => [...symbolsOf(snapshot)].map(toDocumentSymbol),
  'textDocument/formatting': (snapshot) => formatEdits(snapshot, DEFAULT_STYLE).map(toTextEdit),
  'textDocument/semanticTokens/full': (snapshot) => encodedAll(snapshot),
  'textDocument/documentHighlight': (snapshot, { position }: { position: Place }) =>
    runToEnd(highlighting(snapshot, position)).map(({ range }) => range),
  'textDocument/diagnostic': (snapshot) =>
    diagnosticsOf(snapshot, { levels: new Map(), leaveOut: () => false }).map(({ range, code, message }) => ({
      range,
      code,
      message,
    })),
};

/** The part of an answer that is compared. */
const COMPARED: Readonly<Record<string, (answer: never) => unknown>> = {
  'textDocument/semanticTokens/full': ({ data }: { data: unknown }) => data,
  'textDocument/documentHighlight': (all: readonly { range: unknown }[]) => all.map(({ range }) => range),
  'textDocument/diagnostic': ({
    items = [],
  }: {
    items?: readonly { range: unknown; code: unknown; message: unknown }[];
  }) => items.map(({ range, code, message }) => ({ range, code, message })),
};

/** The answer is that of a notebook that is opened with this text now, whatever was typed before. */
export function sameAsFresh(method: string, params: object, answer: unknown, text: string): void {
  const fresh = Object.hasOwn(FRESH, method) ? FRESH[method] : undefined;
  if (!fresh) return;
  const compared = COMPARED[method] ?? ((all: unknown) => all);
  // As it comes through the protocol.
  const expected = JSON.parse(JSON.stringify(fresh(openNotebook(text), params as never)));
  assert.deepEqual(compared(answer as never), expected, method);
}
