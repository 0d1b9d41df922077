/** The terminal that Node gives: files, standard streams, the window's width. */
/// <reference types="node" />
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { getHeapStatistics } from 'node:v8';
import { placeOf, readBeside } from './node-files.ts';
import { wantsColours } from './paint.ts';
import type { Terminal } from './terminal.ts';
import { HEAP_A_BYTE } from './texts.ts';

const STANDARD_INPUT = 0;

export function nodeTerminal(version: string): Terminal {
  const { stdout, stderr, env, argv } = process;
  stdout.on('error', endWhenNobodyReads);
  return {
    read: (path) => readFileSync(path === '-' ? STANDARD_INPUT : path),
    mostBytes: getHeapStatistics().heap_size_limit / HEAP_A_BYTE,
    save: (path, text) => writeFileSync(path, text),
    list: (folder) =>
      readdirSync(folder, { withFileTypes: true }).map((entry) =>
        entry.isDirectory() ? `${entry.name}/` : entry.name,
      ),
    isFolder: (path) => statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false,
    readBeside,
    placeOf,
    write: (text) => stdout.write(text),
    complain: (text) => stderr.write(text),
    columns: stdout.isTTY ? stdout.columns : undefined,
    colours: wantsColours(env, argv, stdout.isTTY),
    version,
  };
}

/** `tappet check | head` closes the pipe early, which is no failure. */
function endWhenNobodyReads(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
}
