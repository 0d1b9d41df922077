/** A server and an editor in one process, at the two ends of a pipe in memory, with files that are nowhere else. */
import { PassThrough } from 'node:stream';
import {
  type ClientCapabilities,
  createConnection,
  createProtocolConnection,
  ProposedFeatures,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { serve } from '../../server/lsp/serve.ts';

export const FOLDER = 'file:///notes';

/** Texts by path below the folder; what is put in later is there from then on. */
export type Disk = Map<string, string>;

export interface Talk {
  readonly connection: ProtocolConnection;
  /** What the server logged as wrong. */
  readonly logged: readonly string[];
  readonly onPublished: (listen: (published: PublishDiagnosticsParams) => void) => void;
  readonly stop: () => Promise<void>;
}

const CAPABILITIES: ClientCapabilities = {
  workspace: {
    applyEdit: true,
    configuration: true,
    workspaceFolders: true,
    workspaceEdit: { documentChanges: true },
    didChangeWatchedFiles: { dynamicRegistration: true },
  },
  textDocument: {
    hover: { contentFormat: ['markdown'] },
    definition: { linkSupport: true },
    publishDiagnostics: { relatedInformation: true },
    codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [] } } },
  },
};

/** Nothing is held back, so that what is told is what a notebook opened anew is told. */
const SETTINGS = { holdBack: 0 };

/** Starts a server on a disk and shakes hands with it. */
export async function talkAbout(disk: Disk): Promise<Talk> {
  const [up, down] = [new PassThrough(), new PassThrough()];
  const server = createConnection(
    ProposedFeatures.all,
    new StreamMessageReader(up),
    new StreamMessageWriter(down),
  );
  serve(
    server,
    (_, parts) => {
      const text = disk.get(parts.join('/'));
      return text === undefined ? { problem: 'missing' } : { text };
    },
    (_, parts) => (parts.length > 0 ? [] : [...disk.keys()].map((name) => ({ name, isFolder: false }))),
  );
  const connection = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
  const logged: string[] = [];
  connection.onNotification('window/logMessage', ({ message }) => void logged.push(message));
  connection.onRequest('workspace/configuration', ({ items }) => items.map(() => SETTINGS));
  connection.onRequest('client/registerCapability', () => null);
  connection.listen();
  await connection.sendRequest('initialize', {
    processId: null,
    rootUri: null,
    workspaceFolders: [{ uri: FOLDER, name: 'notes' }],
    capabilities: CAPABILITIES,
  });
  await connection.sendNotification('initialized', {});
  return {
    connection,
    logged,
    onPublished: (listen) => connection.onNotification('textDocument/publishDiagnostics', listen),
    // Nothing is closed: what the server still had in hand it may say to nobody.
    stop: () => connection.sendRequest('shutdown'),
  };
}
