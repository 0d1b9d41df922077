/** The extension on desktop and in a browser alike: one client, its commands, and restarts of the server. */
import * as vscode from 'vscode';
import type { BaseLanguageClient, LanguageClientOptions, Middleware } from 'vscode-languageclient';
import { answerFileRequests } from './files.ts';
import { createPages } from './pages.ts';
import { restartingHandler } from './restarts.ts';
import { ruleCommand } from './rules.ts';
import { executingCommands, sessionCommands } from './sessions.ts';

/** A fresh client with a fresh server behind it. In the browser a stopped worker cannot be started again, so each start takes a new one. */
type CreateClient = (options: LanguageClientOptions) => BaseLanguageClient;

const NAME = 'Tappet';

/**
 * Starts the language server and registers the extension's commands.
 * @returns resolves once the server has answered its first request; rejects when it cannot be started.
 */
export async function start(context: vscode.ExtensionContext, create: CreateClient): Promise<void> {
  const output = vscode.window.createOutputChannel(NAME, { log: true });
  const pages = createPages();
  const executeCommand = executingCommands(pages);
  const connection = connectionTo(create, output, { executeCommand });
  context.subscriptions.push(
    output,
    pages,
    ...sessionCommands(),
    ruleCommand(),
    { dispose: connection.stop },
    vscode.commands.registerCommand('tappet.restartServer', connection.restart),
    vscode.commands.registerCommand('tappet.showOutput', () => output.show()),
  );
  await connection.restart();
}

function connectionTo(create: CreateClient, output: vscode.LogOutputChannel, middleware: Middleware) {
  let client: BaseLanguageClient | undefined;
  const stop = async () => {
    const ending = client;
    client = undefined;
    // A server that hangs must not stand in the way of its successor.
    await ending?.dispose().catch((error) => output.warn(String(error)));
  };
  const replace = async () => {
    await stop();
    client = create(optionsWith(output, middleware, restart));
    answerFileRequests(client);
    await client.start();
  };
  // One after another: two restarts at once would leave a server running that nobody stops.
  let turn: Promise<void> = Promise.resolve();
  const restart = () => {
    turn = turn.then(replace, replace);
    return turn;
  };
  return { stop, restart };
}

function optionsWith(
  output: vscode.LogOutputChannel,
  middleware: Middleware,
  restart: () => Promise<void>,
): LanguageClientOptions {
  return {
    // By language alone: notebooks in every scheme (unsaved, on a remote, inside an archive) are served alike.
    documentSelector: [{ language: 'tappet' }],
    outputChannel: output,
    middleware,
    initializationOptions: { showsText: true },
    errorHandler: restartingHandler(() => offerRestart(restart)),
  };
}

async function offerRestart(restart: () => Promise<void>): Promise<void> {
  const again = 'Restart';
  const show = 'Show Output';
  const message = `${NAME}: the language server keeps stopping. Your text is unchanged, but notebooks are not being checked.`;
  const choice = await vscode.window.showErrorMessage(message, again, show);
  if (choice === again) await restart();
  if (choice === show) await vscode.commands.executeCommand('tappet.showOutput');
}
