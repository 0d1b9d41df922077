/** The one way from a request to its answer: nothing is thrown up to the connection, and no answer pretends to be one. */
import { type CancellationToken, ErrorCodes, LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import type { Client } from './client.ts';
import type { Documents } from './documents.ts';
import type { Handler } from './handlers.ts';
import type { Settings } from './settings.ts';

export interface Server {
  readonly documents: Documents;
  readonly settings: () => Settings;
  readonly client: () => Client;
  readonly log: (message: string) => void;
  readonly phase: () => 'starting' | 'running' | 'ended';
}

/**
 * Asks a handler. An error answers what cannot be answered: an unknown document, a cancelled request, a notebook that
 * was changed meanwhile, a server that is not running, a defect of our own (which is logged).
 */
export function answering(server: Server, handler: Handler) {
  // Whatever form the parameters have, the token is the last of what is handed over.
  return async (params: unknown, ...rest: readonly unknown[]): Promise<unknown> => {
    const token = rest.at(-1) as CancellationToken;
    const refused = refusal(server, token);
    if (refused) return refused;
    const uri = uriIn(params);
    const document = uri === undefined ? undefined : server.documents.get(uri);
    if (!document)
      return new ResponseError(ErrorCodes.InvalidParams, `not open: ${uri ?? 'no document named'}`);
    const { documents, settings, client, log } = server;
    try {
      const { snapshot } = document;
      const asked = { uri: document.uri, snapshot, settings: settings(), client: client() };
      const answer = await handler.answer(asked, params);
      if (token.isCancellationRequested) return cancelled();
      return documents.get(document.uri)?.snapshot === snapshot ? answer : outdated();
    } catch (error) {
      log(`${handler.method}: ${described(error)}`);
      return new ResponseError(ErrorCodes.InternalError, `${handler.method} failed: ${String(error)}`);
    }
  };
}

/** As `answering`, for what the editor only tells: there is nobody to answer, so an error is logged. */
export function listening<Params>(log: Server['log'], act: (params: Params) => void | Promise<void>) {
  return async (params: Params): Promise<void> => {
    try {
      await act(params);
    } catch (error) {
      log(described(error));
    }
  };
}

const cancelled = () => new ResponseError(LSPErrorCodes.RequestCancelled, 'cancelled');
const outdated = () => new ResponseError(LSPErrorCodes.ContentModified, 'the notebook was changed meanwhile');

function refusal({ phase }: Server, token: CancellationToken): ResponseError<void> | undefined {
  if (token.isCancellationRequested) return cancelled();
  if (phase() === 'starting')
    return new ResponseError(ErrorCodes.ServerNotInitialized, 'not initialized yet');
  return phase() === 'ended' ? new ResponseError(ErrorCodes.InvalidRequest, 'already shut down') : undefined;
}

function uriIn(params: unknown): string | undefined {
  const { textDocument } = (params ?? {}) as { textDocument?: { uri?: unknown } };
  return typeof textDocument?.uri === 'string' ? textDocument.uri : undefined;
}

const described = (error: unknown): string =>
  error instanceof Error ? (error.stack ?? error.message) : String(error);
