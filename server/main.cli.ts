/** The terminal's door: `node dist/cli.cjs check notebook.tappet`. */
/// <reference types="node" />
import manifest from '../package.json' with { type: 'json' };
import { run } from './cli/command.ts';
import { nodeTerminal } from './cli/node-terminal.ts';

process.exitCode = run(process.argv.slice(2), nodeTerminal(manifest.version));
