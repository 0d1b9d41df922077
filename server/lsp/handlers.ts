/** What an editor may ask about an open notebook: one row a request. The server's capabilities are the sum of the rows. */
import {
  DocumentSymbolRequest,
  FoldingRangeRequest,
  HoverRequest,
  type ProtocolRequestType,
  type ServerCapabilities,
  type TextDocumentIdentifier,
} from 'vscode-languageserver';
import { foldsOf } from '../features/folding.ts';
import { hoverAt } from '../features/hover.ts';
import { symbolsOf } from '../features/symbols.ts';
import type { Snapshot } from '../model/snapshot.ts';
import type { Client } from './client.ts';
import { toDocumentSymbol, toFoldingRange, toHover } from './convert.ts';
import type { Settings } from './settings.ts';

/** Every row, in the order of the protocol's own text. */
export const HANDLERS: readonly Handler[] = [
  row({
    request: HoverRequest.type,
    capability: { hoverProvider: true },
    run: ({ snapshot, settings }, { position }) => hoverAt(snapshot, position, settings.units),
    convert: (hover, { client }) => (hover ? toHover(hover, client) : null),
  }),
  row({
    request: FoldingRangeRequest.type,
    capability: { foldingRangeProvider: true },
    run: ({ snapshot }) => foldsOf(snapshot),
    convert: (folds) => folds.map(toFoldingRange),
  }),
  row({
    request: DocumentSymbolRequest.type,
    capability: { documentSymbolProvider: true },
    run: ({ snapshot }) => symbolsOf(snapshot),
    convert: (symbols) => symbols.map(toDocumentSymbol),
  }),
];

/** What an answer is made from. */
export interface Asked {
  readonly uri: string;
  readonly snapshot: Snapshot;
  readonly settings: Settings;
  readonly client: Client;
}

export interface Handler {
  readonly method: string;
  readonly capability: ServerCapabilities;
  /** May throw; whoever calls it turns that into an honest answer. */
  readonly answer: (asked: Asked, params: unknown) => unknown;
}

/** One row: `run` asks a feature in its own terms, `convert` says the answer in the protocol's. */
interface Row<Params, Answer, Result> {
  // biome-ignore lint/suspicious/noExplicitAny: what a request reports on the way does not matter here
  readonly request: ProtocolRequestType<Params, Result, any, void, any>;
  readonly capability: ServerCapabilities;
  readonly run: (asked: Asked, params: Params) => Answer;
  readonly convert: (answer: Answer, asked: Asked) => Result;
}

function row<Params extends { readonly textDocument: TextDocumentIdentifier }, Answer, Result>({
  request,
  capability,
  run,
  convert,
}: Row<Params, Answer, Result>): Handler {
  return {
    method: request.method,
    capability,
    answer: (asked, params) => convert(run(asked, params as Params), asked),
  };
}
