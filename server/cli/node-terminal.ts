/** The terminal that Node gives: files, standard streams, the window's width. */
/// <reference types="node" />
import { readdirSync, statSync } from 'node:fs';
import { getHeapStatistics } from 'node:v8';
import { LARGEST_NOTEBOOK, whyUnsaid } from './faults.ts';
import { placeOf, readBeside } from './node-files.ts';
import { wantsColours } from './paint.ts';
import { readRegular, readUpTo } from './read-file.ts';
import { replaceFile } from './replace-file.ts';
import { EXIT, type Terminal } from './terminal.ts';
import { HEAP_A_BYTE, STANDARD_INPUT } from './texts.ts';

export function nodeTerminal(version: string): Terminal {
  const { stdin, stdout, stderr, env, argv } = process;
  stdout.on('error', endWithoutOutput);
  // Whoever complains ends with the exit code for it; where nobody hears it there is no more to do.
  stderr.on('error', () => undefined);
  return {
    read: (path) =>
      path === STANDARD_INPUT ? readUpTo(stdin.fd, LARGEST_NOTEBOOK) : readRegular(path, LARGEST_NOTEBOOK),
    mostBytes: getHeapStatistics().heap_size_limit / HEAP_A_BYTE,
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
    colours: wantsColours(env, argv, stdout.isTTY),
    version,
  };
}

/** Of what cannot be looked at, reading says why. */
function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch {
    return false;
  }
}

/** `tappet check | head` closes the pipe early, which is no failure; an answer of which a piece is lost is one. */
function endWithoutOutput(error: NodeJS.ErrnoException): void {
  if (error.code === 'EPIPE') process.exit();
  process.stderr.write(`tappet: the answer ${whyUnsaid(error)}\n`);
  process.exit(EXIT.unusable);
}
