/** Entry of the terminal program: `node dist/cli.cjs check notebook.tappet`. */
/// <reference types="node" />
import manifest from '../package.json' with { type: 'json' };
import { run } from './cli/command.ts';
import { nodeTerminal } from './cli/node-terminal.ts';
import { EXIT } from './cli/terminal.ts';

const terminal = nodeTerminal(manifest.version);
try {
  process.exitCode = run(process.argv.slice(2), terminal);
} catch (error) {
  // Node would end with 1, which says that something was found.
  terminal.complain(`tappet: a bug in the program, please report it: ${error}\n`);
  process.exitCode = EXIT.unusable;
}
