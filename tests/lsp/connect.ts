/** The server as an editor meets it: a process at the other end of a pipe, spoken to in the protocol. */
import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import {
  type ClientCapabilities,
  createProtocolConnection,
  type Diagnostic,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';

export const URI = 'file:///notebooks/bench.tappet';
const SERVER = join(import.meta.dirname, '../../server/main.node.ts');
const LONGEST_WAIT = 15_000;

export interface Editor {
  readonly connection: ProtocolConnection;
  readonly process: ChildProcess;
  /** What the server answered to `initialize`. */
  readonly capabilities: Readonly<Record<string, unknown>>;
  /** All that was published, in order. */
  readonly published: readonly PublishDiagnosticsParams[];
  /** What the server logged. */
  readonly logged: readonly string[];
  readonly open: (text: string, uri?: string) => Promise<void>;
  readonly change: (version: number, ...changes: readonly (readonly [from: At, to: At, text: string])[]) => Promise<void>;
  /** The findings of a version, as soon as they are there. Rejects when they do not come. */
  readonly findings: (version: number, holds?: (found: readonly Diagnostic[]) => boolean) => Promise<readonly Diagnostic[]>;
  readonly ask: <Answer>(method: string, params?: object) => Promise<Answer>;
  readonly stop: () => Promise<number | null>;
}

/** Line and column from zero. */
export type At = readonly [line: number, character: number];

export const position = ([line, character]: At) => ({ line, character });

export interface Manner {
  readonly capabilities?: ClientCapabilities;
  /** What the editor answers when it is asked for its settings; may change while it runs. */
  readonly settings?: () => unknown;
}

/** Starts a server and shakes hands with it. */
export async function connect({ capabilities = {}, settings }: Manner = {}): Promise<Editor> {
  const editor = unready();
  const { connection } = editor;
  if (settings) connection.onRequest('workspace/configuration', () => [settings()]);
  connection.onRequest('client/registerCapability', () => null);
  const answer: { capabilities: Record<string, unknown> } = await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: null,
    capabilities: { ...capabilities, ...(settings && { workspace: { configuration: true } }) },
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
  return {
    connection,
    process: child,
    capabilities: {},
    published,
    logged,
    open: (text, uri = URI) =>
      connection.sendNotification('textDocument/didOpen', {
        textDocument: { uri, languageId: 'tappet', version: 1, text },
      }),
    change: (version, ...changes) =>
      connection.sendNotification('textDocument/didChange', {
        textDocument: { uri: URI, version },
        contentChanges: changes.map(([from, to, text]) => ({
          range: { start: position(from), end: position(to) },
          text,
        })),
      }),
    findings: (version, holds = () => true) =>
      until(`findings of version ${version}`, () => {
        const told = published.findLast((each) => each.version === version && holds(each.diagnostics));
        return told?.diagnostics;
      }),
    ask: (method, params = {}) => connection.sendRequest(method, { textDocument: { uri: URI }, ...params }),
    stop: () => stop(connection, child),
  };
}

/** Says goodbye as an editor should. @returns the exit code. */
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
