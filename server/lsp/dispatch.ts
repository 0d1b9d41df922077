/** The one way from a request to its answer: nothing is thrown up to the connection, and no answer pretends to be one. */
import { type CancellationToken, ErrorCodes, LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import type { Client } from './client.ts';
import { TEXT_LOST } from './diagnostics.ts';
import type { Documents } from './documents.ts';
import type { Editor } from './editor.ts';
import type { ReadFile } from './files.ts';
import type { ListFolder } from './folders.ts';
import type { Handler } from './request.ts';
import type { Coloured } from './semantic-token-results.ts';
import type { Settings } from './settings.ts';
import type { EveryReport } from './workspace/findings.ts';
import type { Workspace } from './workspace/workspace.ts';
import { pausing, runWithPauses } from './yielding.ts';

export interface Server {
  readonly documents: Documents;
  /** Of a notebook or a folder. */
  readonly settings: (uri: string) => Promise<Settings>;
  readonly client: () => Client;
  readonly log: (message: string) => void;
  readonly readFile: ReadFile;
  readonly listFolder: ListFolder;
  readonly editor: Editor;
  readonly coloured: Coloured;
  readonly workspace: Workspace;
  readonly everyReport: EveryReport;
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
    try {
      const answer = await answerOf(server, handler, params, token);
      return token.isCancellationRequested ? cancelled() : answer;
    } catch (error) {
      if (error instanceof ResponseError && UNWANTED.has(error.code)) return error;
      server.log(`${handler.method}: ${described(error)}`);
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
  const { documents, readFile, listFolder, editor, coloured, workspace, everyReport } = server;
  const around = {
    client: server.client(),
    notebooks: documents.all,
    readFile,
    listFolder,
    editor,
    coloured,
    workspace,
    everyReport,
  };
  const whyCancelled = () => (token.isCancellationRequested ? cancelled() : undefined);
  if (handler.about === 'workspace')
    return handler.answer({ ...around, pause: pausing(whyCancelled) }, params);
  const uri = uriIn(params);
  if (handler.withUsed && uri !== undefined) await workspace.whenUsedRead(uri);
  const document = uri === undefined ? undefined : documents.get(uri);
  if (uri !== undefined && documents.isLost(uri))
    return new ResponseError(LSPErrorCodes.RequestFailed, TEXT_LOST.message);
  if (!document)
    return new ResponseError(ErrorCodes.InvalidParams, `not open: ${uri ?? 'no document named'}`);
  const { snapshot } = document;
  const whyOutdated = () => (documents.get(document.uri)?.snapshot === snapshot ? undefined : outdated());
  const pause = pausing(() => whyCancelled() ?? whyOutdated());
  const settings = await server.settings(document.uri);
  if (handler.ahead) await runWithPauses(handler.ahead(snapshot), pause);
  const asked = { ...around, ...document, pause, document, settings };
  const answer = await handler.answer(asked, params);
  return whyOutdated() ?? answer;
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

/** Why long work is given up in the middle; every other error is told as a defect. */
const UNWANTED: ReadonlySet<number> = new Set([
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

const described = (error: unknown): string =>
  error instanceof Error ? (error.stack ?? error.message) : String(error);
