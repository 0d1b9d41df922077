/** Entry of the server as a process: `--stdio`, `--node-ipc`, `--pipe=NAME` or `--socket=PORT`. */
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { listBeside, readBeside } from './cli/node-files.ts';
import { serve } from './lsp/serve.ts';

const TRANSPORTS = /^--(?:stdio|node-ipc|(?:pipe|socket)(?:=|$))/;

if (process.argv.slice(2).some((argument) => TRANSPORTS.test(argument))) {
  // An editor that is killed sends no shutdown; over IPC the lost channel is the only sign of it.
  process.on('disconnect', () => process.exit(1));
  serve(
    createConnection(ProposedFeatures.all),
    (notebook, parts, largest) => readBeside(fileURLToPath(notebook), parts, largest),
    (notebook, parts) => listBeside(fileURLToPath(notebook), parts),
  );
} else {
  console.error('usage: server.cjs --stdio | --node-ipc | --pipe=NAME | --socket=PORT');
  process.exitCode = 2;
}
