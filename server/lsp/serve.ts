/** The language server over any connection: a process's, a worker's, a test's. */
import {
  type Connection,
  DiagnosticRefreshRequest,
  type ServerCapabilities,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { type Client, clientOf } from './client.ts';
import { type Configuration, createConfiguration } from './configuration.ts';
import { answering, listening } from './dispatch.ts';
import { createDocuments } from './documents.ts';
import { editorAt } from './editor.ts';
import { type ReadLocal, readingBelow, readingFiles } from './files.ts';
import { type ListLocal, listingFolders } from './folders.ts';
import { HANDLERS } from './handlers.ts';
import { createPublisher, type Publisher } from './publish.ts';
import { createTokenResults } from './semantic-token-results.ts';
import type { Server } from './server.ts';
import { foldersIn, followWorkspace } from './workspace/follow.ts';
import { createWorkspace, type WorkspaceKeeper } from './workspace/workspace.ts';
import { createReportAll } from './workspace/workspace-findings.ts';

/** What the server calls itself. */
const NAME = 'tappet';

/** The state of a connection. All else is in the snapshots. */
interface ConnectionState {
  phase: ReturnType<Server['phase']>;
  client: Client;
}

/** Serves until the client says `exit` or goes away. `readLocal`, `listLocal`: where the server has a disk of its own. */
export function serve(connection: Connection, readLocal?: ReadLocal, listLocal?: ListLocal): void {
  const state: ConnectionState = { phase: 'starting', client: clientOf({}) };
  const log = (message: string) => connection.console.error(message);
  const documents = createDocuments((uri) => workspace.inUse.sharedFor(uri));
  const listFolder = listingFolders(connection, listLocal);
  const workspace: WorkspaceKeeper = createWorkspace({
    documents,
    readBelow: readingBelow(connection, readLocal),
    listFolder,
    log,
    renewed: (uri) => publisher.renewed(uri),
  });
  const client = () => state.client;
  const configuration = createConfiguration({ connection, client, log, changed: () => renewAll() });
  const base = { documents, workspace, settings: configuration.of, client };
  const server: Server = {
    ...base,
    reportAll: createReportAll(base),
    log,
    readFile: readingFiles(connection, readLocal),
    listFolder,
    editor: editorAt(connection, client),
    tokenResults: createTokenResults(),
    phase: () => state.phase,
  };
  const publisher = createPublisher({
    ...server,
    send: (findings) => void connection.sendDiagnostics(findings).catch((error) => log(String(error))),
    refresh: () =>
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
      await configuration.follow().catch((error) => log(String(error)));
      await startWorkspace();
    }),
  );
  followNotebooks(connection, server, workspace, { publisher, configuration });
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

function greet(connection: Connection, state: ConnectionState, { places }: WorkspaceKeeper): void {
  connection.onInitialize((params) => {
    state.client = clientOf(params.capabilities, params.initializationOptions);
    places.setRoots(foldersIn(params));
    state.phase = 'running';
    return { capabilities: CAPABILITIES, serverInfo: { name: NAME } };
  });
}

/** Publishing is scheduled first: whatever fails then, the editor still gets the findings there are. */
function followNotebooks(
  connection: Connection,
  { documents, tokenResults, log }: Server,
  { inUse, filePresence, index }: WorkspaceKeeper,
  { publisher, configuration }: { readonly publisher: Publisher; readonly configuration: Configuration },
): void {
  connection.onDidOpenTextDocument(
    listening(log, ({ textDocument: { uri, version, text } }) => {
      publisher.soon(uri);
      documents.open(uri, version, text);
      inUse.changed(uri);
      filePresence.changed(uri, true);
    }),
  );
  connection.onDidChangeTextDocument(
    listening(log, ({ textDocument: { uri, version }, contentChanges }) => {
      publisher.soon(uri);
      documents.change(uri, version, contentChanges);
      inUse.changed(uri);
      filePresence.changed(uri, false);
    }),
  );
  connection.onDidCloseTextDocument(
    listening(log, ({ textDocument: { uri } }) => {
      documents.close(uri);
      tokenResults.forget(uri);
      configuration.forget(uri);
      publisher.takeBack(uri);
      inUse.closed(uri);
      return index.fileChanged(uri);
    }),
  );
}
