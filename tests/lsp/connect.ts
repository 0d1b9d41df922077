/** The server as an editor meets it: a process at the other end of a pipe, spoken to in the protocol. */
import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import { vi } from 'vitest';
import {
  type CancellationToken,
  type ClientCapabilities,
  type ConfigurationParams,
  createProtocolConnection,
  type Diagnostic,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';

const SERVER = join(import.meta.dirname, '../../server/main.node.ts');
/** A process is started for each file, on machines that may be busy with other things. */
export const LONGEST_WAIT = 300_000;

// One test may wait for several things.
vi.setConfig({ testTimeout: 2 * LONGEST_WAIT, hookTimeout: 2 * LONGEST_WAIT });

/** Line and column from zero. */
export type At = readonly [line: number, character: number];
export type TextChange = readonly [from: At, to: At, text: string];

export interface Editor {
  readonly connection: ProtocolConnection;
  readonly process: ChildProcess;
  /** What the server answered to `initialize`. */
  readonly capabilities: Readonly<Record<string, unknown>>;
  /** All that was published, in order. */
  readonly published: () => readonly PublishDiagnosticsParams[];
  /** What the server logged. */
  readonly logged: readonly string[];
  /** Opens a notebook as version 1. */
  readonly open: (text: string) => Promise<OpenNotebook>;
  /** Says goodbye as an editor should. Resolves to the exit code. */
  readonly stop: () => Promise<number | null>;
}

export interface OpenNotebook {
  readonly uri: string;
  /** All that was published of it, in order. */
  readonly published: () => readonly PublishDiagnosticsParams[];
  readonly change: (version: number, ...changes: readonly TextChange[]) => Promise<void>;
  readonly close: () => Promise<void>;
  /** The findings of a version, as soon as some come for which `holds` is true. */
  readonly findings: (
    version: number,
    holds?: (found: readonly Diagnostic[]) => boolean,
  ) => Promise<readonly Diagnostic[]>;
  /** What was published of a version first. */
  readonly firstFindings: (version: number) => Promise<readonly Diagnostic[]>;
  readonly ask: <Answer>(method: string, params?: object, token?: CancellationToken) => Promise<Answer>;
}

interface Manner {
  readonly capabilities?: ClientCapabilities;
  /** What the editor answers when it is asked for its settings, of a notebook or a folder; may change while it runs. */
  readonly settings?: (uri: string) => unknown;
  readonly folders?: readonly string[];
}

/** Starts a server and shakes hands with it. */
export async function connect({ capabilities = {}, settings, folders }: Manner = {}): Promise<Editor> {
  const editor = unready();
  const { connection } = editor;
  if (settings)
    connection.onRequest('workspace/configuration', ({ items }: ConfigurationParams) =>
      Promise.all(items.map(({ scopeUri }) => settings(scopeUri as string))),
    );
  const answer: { capabilities: Record<string, unknown> } = await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: null,
    ...(folders && { workspaceFolders: folders.map((uri) => ({ uri, name: uri })) }),
    capabilities: {
      ...capabilities,
      ...(settings && { workspace: { ...capabilities.workspace, configuration: true } }),
    },
  });
  await connection.sendNotification('initialized', {});
  return { ...editor, capabilities: answer.capabilities };
}

/** A server that was not yet told anything. */
export function unready(): Editor {
  const child = spawn(process.execPath, [SERVER, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
  const connection = createProtocolConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  const published: PublishDiagnosticsParams[] = [];
  const logged: string[] = [];
  connection.onNotification('textDocument/publishDiagnostics', (told) => void published.push(told));
  connection.onNotification('window/logMessage', ({ message }) => void logged.push(message));
  connection.listen();
  let opened = 0;
  const open = async (text: string) => {
    const uri = `file:///notebooks/${++opened}.tappet`;
    await connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'tappet', version: 1, text },
    });
    return notebook(connection, uri, () => published.filter((told) => told.uri === uri));
  };
  return {
    connection,
    process: child,
    capabilities: {},
    published: () => published,
    logged,
    open,
    stop: () => stop(connection, child),
  };
}

function notebook(
  connection: ProtocolConnection,
  uri: string,
  published: OpenNotebook['published'],
): OpenNotebook {
  return {
    uri,
    published,
    change: (version, ...changes) =>
      connection.sendNotification('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges: changes.map(protocolChange),
      }),
    close: () => connection.sendNotification('textDocument/didClose', { textDocument: { uri } }),
    findings: (version, holds = () => true) =>
      until(`findings of version ${version}`, () => {
        const told = published().findLast((each) => each.version === version && holds(each.diagnostics));
        return told?.diagnostics;
      }),
    firstFindings: (version) =>
      until(
        `findings of version ${version}`,
        () => published().find((each) => each.version === version)?.diagnostics,
      ),
    ask: (method, params = {}, token) => {
      const all = { textDocument: { uri }, ...params };
      const name = `textDocument/${method}`;
      return token ? connection.sendRequest(name, all, token) : connection.sendRequest(name, all);
    },
  };
}

export const protocolChange = ([from, to, text]: TextChange) => ({
  range: { start: position(from), end: position(to) },
  text,
});

export const position = ([line, character]: At) => ({ line, character });

async function stop(connection: ProtocolConnection, child: ChildProcess): Promise<number | null> {
  const ended = exitOf(child);
  await connection.sendRequest('shutdown');
  await connection.sendNotification('exit');
  return ended;
}

export function exitOf(child: ChildProcess): Promise<number | null> {
  return new Promise((resolve) => child.once('exit', resolve));
}

/** Looks again until it is there: what a server tells comes when it comes. */
export async function until<T>(what: string, look: () => T | undefined): Promise<T> {
  for (const end = Date.now() + LONGEST_WAIT; Date.now() < end; ) {
    const found = look();
    if (found !== undefined) return found;
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  throw new Error(`waited in vain for ${what}`);
}
