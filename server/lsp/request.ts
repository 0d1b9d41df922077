/** A row of the table of requests: `run` calls a feature in its own terms, `convert` puts the answer in the protocol's. */
import type { ProtocolRequestType, ServerCapabilities, TextDocumentIdentifier } from 'vscode-languageserver';
import type { Interruptible } from '../model/snapshot/interruptible.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import type { OpenDocument } from './documents.ts';
import type { Server } from './server.ts';
import type { Settings } from './settings.ts';
import type { Pause } from './yielding.ts';

/** What an answer about the whole workspace is worked out from. */
interface WorkspaceRequestContext {
  readonly server: Server;
  /** Called between two steps of a long answer. */
  readonly pause: Pause;
}

/** What an answer about one notebook is worked out from. */
export interface NotebookRequestContext extends WorkspaceRequestContext {
  readonly uri: string;
  readonly version: number;
  readonly snapshot: Snapshot;
  readonly document: OpenDocument;
  /** The user's, for this notebook. */
  readonly settings: Settings;
}

/** A row as the server uses it. `answer` may throw or return a promise; the dispatcher turns a failure into a protocol error. */
export type Handler = { readonly method: string; readonly capability: ServerCapabilities } & (
  | {
      readonly about: 'notebook';
      readonly prepare: Prepare | undefined;
      readonly withUsed: boolean;
      readonly answer: (context: NotebookRequestContext, params: unknown) => unknown;
    }
  | {
      readonly about: 'workspace';
      readonly answer: (context: WorkspaceRequestContext, params: unknown) => unknown;
    }
);

/** Work done before the answer, with pauses, and cached with the pages, so that the answer itself takes no time. */
type Prepare = (snapshot: Snapshot) => Interruptible<void>;

interface NotebookRow {
  readonly prepare?: Prepare;
  /** It waits until the notebooks this one uses have been read; it must not name places, since the text may change meanwhile. */
  readonly withUsed?: boolean;
}

interface RequestRow<Context, Params, Answer, Result> {
  // biome-ignore lint/suspicious/noExplicitAny: partial results and errors of the request do not matter here
  readonly request: ProtocolRequestType<Params, Result, any, any, any>;
  readonly capability: ServerCapabilities;
  readonly run: (context: Context, params: Params) => Answer;
  readonly convert: (answer: Awaited<Answer>, context: Context) => Result;
}

/** A row about the notebook that the request names. */
export function aboutNotebook<
  Params extends { readonly textDocument: TextDocumentIdentifier },
  Answer,
  Result,
>(row: RequestRow<NotebookRequestContext, Params, Answer, Result> & NotebookRow): Handler {
  return { ...handlerOf(row), about: 'notebook', prepare: row.prepare, withUsed: row.withUsed ?? false };
}

/** A row that names no notebook. */
export function aboutWorkspace<Params, Answer, Result>(
  row: RequestRow<WorkspaceRequestContext, Params, Answer, Result>,
): Handler {
  return { ...handlerOf(row), about: 'workspace' };
}

function handlerOf<Context, Params, Answer, Result>(row: RequestRow<Context, Params, Answer, Result>) {
  const { request, capability, run, convert } = row;
  const answer = async (context: Context, params: unknown) =>
    convert(await run(context, params as Params), context);
  return { method: request.method, capability, answer };
}
