/** The language server over any connection: a process's, a worker's, a test's. */
import {
  type Connection,
  DidChangeConfigurationNotification,
  type InitializeParams,
  type InitializeResult,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { answering, listening, type Server } from './answering.ts';
import { type Client, clientOf } from './client.ts';
import { createDocuments } from './documents.ts';
import { HANDLERS } from './handlers.ts';
import { createPublisher } from './publish.ts';
import { DEFAULT_SETTINGS, settingsFrom } from './settings.ts';

const SECTION = 'tappet';

/** Serves until the client says `exit` or goes away. */
export function serve(connection: Connection): void {
  let phase: ReturnType<Server['phase']> = 'starting';
  let client: Client = clientOf({});
  let settings = DEFAULT_SETTINGS;
  const log = (message: string) => connection.console.error(message);
  const server: Server = {
    documents: createDocuments(),
    settings: () => settings,
    client: () => client,
    log,
    phase: () => phase,
  };
  const { documents } = server;
  const publisher = createPublisher({
    ...server,
    send: (told) => void connection.sendDiagnostics(told).catch((error) => log(String(error))),
  });

  const useSettings = (section: unknown) => {
    settings = settingsFrom(section);
    for (const { uri } of documents.all()) publisher.soon(uri);
  };
  const askForSettings = async () => useSettings(await connection.workspace.getConfiguration(SECTION));

  connection.onInitialize(({ capabilities }: InitializeParams): InitializeResult => {
    client = clientOf(capabilities);
    phase = 'running';
    return { capabilities: CAPABILITIES, serverInfo: { name: SECTION } };
  });
  connection.onInitialized(
    listening(log, async () => {
      if (client.asksForRegistration)
        await connection.client.register(DidChangeConfigurationNotification.type, { section: SECTION });
      if (client.configuration) await askForSettings();
    }),
  );
  connection.onDidChangeConfiguration(
    listening(log, async ({ settings: pushed }) => {
      if (client.configuration) await askForSettings();
      else useSettings(pushed?.[SECTION]);
    }),
  );
  connection.onShutdown(() => {
    phase = 'ended';
    publisher.stop();
  });

  connection.onDidOpenTextDocument(
    listening(log, ({ textDocument: { uri, version, text } }) => {
      documents.open(uri, version, text);
      publisher.soon(uri);
    }),
  );
  connection.onDidChangeTextDocument(
    listening(log, ({ textDocument: { uri, version }, contentChanges }) => {
      documents.change(uri, version, contentChanges);
      publisher.soon(uri);
    }),
  );
  connection.onDidCloseTextDocument(
    listening(log, ({ textDocument: { uri } }) => {
      documents.close(uri);
      publisher.takeBack(uri);
    }),
  );
  for (const handler of HANDLERS) connection.onRequest(handler.method, answering(server, handler));
  connection.listen();
}

const CAPABILITIES = Object.assign(
  { textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental } },
  ...HANDLERS.map(({ capability }) => capability),
);
