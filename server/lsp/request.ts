/** The form of a row of the table of handlers: `run` asks a feature in its own terms, `convert` says the answer in the protocol's. */
import type { ProtocolRequestType, ServerCapabilities, TextDocumentIdentifier } from 'vscode-languageserver';
import type { Interruptible } from '../model/snapshot/interruptible.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import type { Client } from './client.ts';
import type { OpenDocument } from './documents.ts';
import type { Editor } from './editor.ts';
import type { ReadFile } from './files.ts';
import type { ListFolder } from './folders.ts';
import type { Coloured } from './semantic-token-results.ts';
import type { Settings } from './settings.ts';
import type { EveryReport } from './workspace/findings.ts';
import type { Workspace } from './workspace/workspace.ts';
import type { Pause } from './yielding.ts';

/** What any answer may be made from. */
export interface Surroundings {
  readonly client: Client;
  /** Every open notebook. */
  readonly notebooks: () => Iterable<OpenDocument>;
  readonly readFile: ReadFile;
  readonly listFolder: ListFolder;
  /** What may be asked of the editor in turn. */
  readonly editor: Editor;
  readonly coloured: Coloured;
  /** All notebooks of the open folders, and the files around them. */
  readonly workspace: Workspace;
  readonly everyReport: EveryReport;
  /** Between two steps of a long answer. */
  readonly pause: Pause;
}

/** What an answer about one notebook is made from. */
export interface NotebookAsked extends Surroundings {
  readonly uri: string;
  readonly version: number;
  readonly snapshot: Snapshot;
  readonly document: OpenDocument;
  /** The reader's, for this notebook. */
  readonly settings: Settings;
}

/** A row as the server uses it. `answer` may throw or promise; whoever calls it turns that into an honest answer. */
export type Handler = { readonly method: string; readonly capability: ServerCapabilities } & (
  | {
      readonly about: 'notebook';
      readonly ahead: Prepare | undefined;
      readonly withUsed: boolean;
      readonly answer: (asked: NotebookAsked, params: unknown) => unknown;
    }
  | { readonly about: 'workspace'; readonly answer: (asked: Surroundings, params: unknown) => unknown }
);

/** What is worked out of a notebook before it is asked, and kept with its pages, so that the answer itself takes no time. */
type Prepare = (snapshot: Snapshot) => Interruptible<void>;

interface OfNotebook {
  readonly ahead?: Prepare;
  /** It waits for what the notebook uses to be read; it must not name places, since the text may change meanwhile. */
  readonly withUsed?: boolean;
}

interface RequestRow<Asked, Params, Answer, Result> {
  // biome-ignore lint/suspicious/noExplicitAny: what a request reports on the way does not matter here
  readonly request: ProtocolRequestType<Params, Result, any, any, any>;
  readonly capability: ServerCapabilities;
  readonly run: (asked: Asked, params: Params) => Answer;
  readonly convert: (answer: Awaited<Answer>, asked: Asked) => Result;
}

/** A row about the notebook that the request names. */
export function aboutNotebook<
  Params extends { readonly textDocument: TextDocumentIdentifier },
  Answer,
  Result,
>(row: RequestRow<NotebookAsked, Params, Answer, Result> & OfNotebook): Handler {
  return { ...wired(row), about: 'notebook', ahead: row.ahead, withUsed: row.withUsed ?? false };
}

/** A row about no notebook by name. */
export function aboutWorkspace<Params, Answer, Result>(
  row: RequestRow<Surroundings, Params, Answer, Result>,
): Handler {
  return { ...wired(row), about: 'workspace' };
}

function wired<Asked, Params, Answer, Result>(row: RequestRow<Asked, Params, Answer, Result>) {
  const { request, capability, run, convert } = row;
  const answer = async (asked: Asked, params: unknown) => convert(await run(asked, params as Params), asked);
  return { method: request.method, capability, answer };
}
