/**
 * Dispatches every request: finds the notebook, runs the row, turns cancellation, stale text and errors into protocol errors;
 * never answers "nothing" for "failed".
 */
import { type CancellationToken, ErrorCodes, LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import { TEXT_LOST } from './diagnostics.ts';
import type { Handler } from './request.ts';
import type { Server } from './server.ts';
import { pausing, runWithPauses } from './yielding.ts';

/**
 * Runs a row. The answer is an error for an unknown document, a cancelled request, a notebook that was changed meanwhile, a
 * server that is not running, and a defect of our own (which is logged).
 */
export function answering(server: Server, handler: Handler) {
  // Whatever form the parameters have, the token is the last argument.
  return async (params: unknown, ...rest: readonly unknown[]): Promise<unknown> => {
    const token = rest.at(-1) as CancellationToken;
    const refused = refusal(server, token);
    if (refused) return refused;
    try {
      const answer = await answerOf(server, handler, params, token);
      return token.isCancellationRequested ? cancelled() : answer;
    } catch (error) {
      if (error instanceof ResponseError && ABANDONED.has(error.code)) return error;
      server.log(`${handler.method}: ${stackOf(error)}`);
      return new ResponseError(ErrorCodes.InternalError, `${handler.method} failed: ${String(error)}`);
    }
  };
}

async function answerOf(
  server: Server,
  handler: Handler,
  params: unknown,
  token: CancellationToken,
): Promise<unknown> {
  const { documents } = server;
  const whyCancelled = () => (token.isCancellationRequested ? cancelled() : undefined);
  if (handler.about === 'workspace') return handler.answer({ server, pause: pausing(whyCancelled) }, params);
  const uri = uriIn(params);
  if (handler.withUsed && uri !== undefined) await server.workspace.whenUsedRead(uri);
  const document = uri === undefined ? undefined : documents.get(uri);
  if (uri !== undefined && documents.isLost(uri))
    return new ResponseError(LSPErrorCodes.RequestFailed, TEXT_LOST.message);
  if (!document)
    return new ResponseError(ErrorCodes.InvalidParams, `not open: ${uri ?? 'no document named'}`);
  const { version, snapshot } = document;
  const whyOutdated = () => (documents.get(document.uri)?.snapshot === snapshot ? undefined : outdated());
  const pause = pausing(() => whyCancelled() ?? whyOutdated());
  const settings = await server.settings(document.uri);
  if (handler.prepare) await runWithPauses(handler.prepare(snapshot), pause);
  const context = { server, pause, uri: document.uri, version, snapshot, document, settings };
  const answer = await handler.answer(context, params);
  return whyOutdated() ?? answer;
}

/** As `answering`, for notifications: nobody waits for an answer, so an error is logged. */
export function listening<Params>(log: Server['log'], act: (params: Params) => void | Promise<void>) {
  return async (params: Params): Promise<void> => {
    try {
      await act(params);
    } catch (error) {
      log(stackOf(error));
    }
  };
}

/** Errors that end long work half way; every other error is a defect and is logged. */
const ABANDONED: ReadonlySet<number> = new Set([
  LSPErrorCodes.RequestCancelled,
  LSPErrorCodes.ContentModified,
]);
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

const stackOf = (error: unknown): string =>
  error instanceof Error ? (error.stack ?? error.message) : String(error);
