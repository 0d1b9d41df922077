/** The language server over any connection: a process's, a worker's, a test's. */
import {
  type Connection,
  DiagnosticRefreshRequest,
  type ServerCapabilities,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { type Client, clientOf } from './client.ts';
import { type Configured, createConfigured } from './configuration.ts';
import { answering, listening, type Server } from './dispatch.ts';
import { createDocuments } from './documents.ts';
import { editorAt } from './editor.ts';
import { type ReadLocal, readingBelow, readingFiles } from './files.ts';
import { type ListLocal, listingFolders } from './folders.ts';
import { HANDLERS } from './handlers.ts';
import { createPublisher, type Publisher } from './publish.ts';
import { createColoured } from './semantic-token-results.ts';
import { createEveryReport } from './workspace/findings.ts';
import { foldersIn, followWorkspace } from './workspace/follow.ts';
import { createWorkspace, type WorkspaceKeeper } from './workspace/workspace.ts';

/** What the server calls itself. */
const NAME = 'tappet';

/** What a connection knows of the one at the other end. All else is in the snapshots. */
interface State {
  phase: ReturnType<Server['phase']>;
  client: Client;
}

/** Serves until the client says `exit` or goes away. `readLocal`, `listLocal`: where the server has a disk of its own. */
export function serve(connection: Connection, readLocal?: ReadLocal, listLocal?: ListLocal): void {
  const state: State = { phase: 'starting', client: clientOf({}) };
  const log = (message: string) => connection.console.error(message);
  const documents = createDocuments((uri) => workspace.used.sharedFor(uri));
  const listFolder = listingFolders(connection, listLocal);
  const workspace: WorkspaceKeeper = createWorkspace({
    documents,
    readBelow: readingBelow(connection, readLocal),
    listFolder,
    log,
    renewed: (uri) => publisher.renewed(uri),
  });
  const client = () => state.client;
  const configured = createConfigured({ connection, client, log, changed: () => renewAll() });
  const around = { documents, workspace, settings: configured.of, client };
  const server: Server = {
    ...around,
    everyReport: createEveryReport(around),
    log,
    readFile: readingFiles(connection, readLocal),
    listFolder,
    editor: editorAt(connection, client),
    coloured: createColoured(),
    phase: () => state.phase,
  };
  const publisher = createPublisher({
    ...server,
    send: (told) => void connection.sendDiagnostics(told).catch((error) => log(String(error))),
    askAgain: () =>
      void connection.sendRequest(DiagnosticRefreshRequest.type).catch((error) => log(String(error))),
  });
  greet(connection, state, workspace);
  const startWorkspace = followWorkspace(connection, server.client, workspace, log);
  const renewAll = () => {
    for (const { uri } of documents.all()) publisher.renewed(uri);
    if (state.client.refreshesHints) void connection.languages.inlayHint.refresh().catch(() => undefined);
  };
  connection.onInitialized(
    listening(log, async () => {
      await configured.follow().catch((error) => log(String(error)));
      await startWorkspace();
    }),
  );
  followNotebooks(connection, server, workspace, { publisher, configured });
  for (const handler of HANDLERS) connection.onRequest(handler.method, answering(server, handler));
  connection.onShutdown(() => {
    state.phase = 'ended';
    publisher.stop();
    workspace.index.stop();
  });
  connection.listen();
}

const CAPABILITIES: ServerCapabilities = Object.assign(
  { textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental } },
  ...HANDLERS.map(({ capability }) => capability),
);

function greet(connection: Connection, state: State, { places }: WorkspaceKeeper): void {
  connection.onInitialize((params) => {
    state.client = clientOf(params.capabilities, params.initializationOptions);
    places.setRoots(foldersIn(params));
    state.phase = 'running';
    return { capabilities: CAPABILITIES, serverInfo: { name: NAME } };
  });
}

/** Findings are put off first: whatever fails then, the editor is told how it is. */
function followNotebooks(
  connection: Connection,
  { documents, coloured, log }: Server,
  { used, namedFiles, index }: WorkspaceKeeper,
  { publisher, configured }: { readonly publisher: Publisher; readonly configured: Configured },
): void {
  connection.onDidOpenTextDocument(
    listening(log, ({ textDocument: { uri, version, text } }) => {
      publisher.soon(uri);
      documents.open(uri, version, text);
      used.changed(uri);
      namedFiles.changed(uri, true);
    }),
  );
  connection.onDidChangeTextDocument(
    listening(log, ({ textDocument: { uri, version }, contentChanges }) => {
      publisher.soon(uri);
      documents.change(uri, version, contentChanges);
      used.changed(uri);
      namedFiles.changed(uri, false);
    }),
  );
  connection.onDidCloseTextDocument(
    listening(log, ({ textDocument: { uri } }) => {
      documents.close(uri);
      coloured.forget(uri);
      configured.forget(uri);
      publisher.takeBack(uri);
      used.closed(uri);
      return index.fileChanged(uri);
    }),
  );
}
