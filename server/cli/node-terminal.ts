/** The terminal as Node provides it: files, standard streams, the window's width. */
/// <reference types="node" />
import { readdirSync, statSync } from 'node:fs';
import { LARGEST_NOTEBOOK, whyOutputFailed } from './faults.ts';
import { placeOf, readBeside } from './node-files.ts';
import { useColours } from './paint.ts';
import { readRegular, readUpTo } from './read-file.ts';
import { replaceFile } from './replace-file.ts';
import { EXIT, type Terminal } from './terminal.ts';
import { STANDARD_INPUT } from './texts.ts';

export function nodeTerminal(version: string): Terminal {
  const { stdin, stdout, stderr, env, argv } = process;
  stdout.on('error', endWithoutOutput);
  // A complaint comes with its exit code; where it cannot be written there is no more to do.
  stderr.on('error', () => undefined);
  return {
    read: (path) =>
      path === STANDARD_INPUT ? readUpTo(stdin.fd, LARGEST_NOTEBOOK) : readRegular(path, LARGEST_NOTEBOOK),
    save: replaceFile,
    list: (folder) =>
      readdirSync(folder, { withFileTypes: true }).map((entry) =>
        entry.isDirectory() ? `${entry.name}/` : entry.name,
      ),
    isFolder,
    readBeside,
    placeOf,
    write: (text) => stdout.write(text),
    complain: (text) => stderr.write(text),
    columns: stdout.isTTY ? stdout.columns : undefined,
    colours: useColours(env, argv, stdout.isTTY),
    version,
  };
}

/** False where it cannot be looked at: reading it gives the reason. */
function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch {
    return false;
  }
}

/** `tappet check | head` closes the pipe early, which is no failure; output that is cut short is one. */
function endWithoutOutput(error: NodeJS.ErrnoException): void {
  if (error.code === 'EPIPE') process.exit();
  process.stderr.write(`tappet: the output ${whyOutputFailed(error)}\n`);
  process.exit(EXIT.unusable);
}
