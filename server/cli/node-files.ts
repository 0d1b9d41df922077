/** Files beside a notebook, read from the disk: nothing outside the notebook's own folder, through whatever links. */
/// <reference types="node" />
import { readFileSync, realpathSync, statSync } from 'node:fs';
import { dirname, isAbsolute, join, relative, sep } from 'node:path';
import { type FileText, LARGEST_FILE } from '../model/files.ts';

/** The file at `parts` below the folder of the notebook at `notebook`. Links are followed first, then judged. Never throws. */
export function readBeside(notebook: string, parts: readonly string[]): FileText {
  try {
    const folder = realpathSync(dirname(notebook));
    const target = realpathSync(join(folder, ...parts));
    return isWithin(folder, target) ? readTarget(target) : { problem: 'outside' };
  } catch (error) {
    return { problem: isMissing(error) ? 'missing' : 'not readable' };
  }
}

function isWithin(folder: string, target: string): boolean {
  const way = relative(folder, target);
  return way !== '' && way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}

function readTarget(target: string): FileText {
  const { size, isFile } = described(target);
  if (!isFile) return { problem: 'not readable' };
  if (size > LARGEST_FILE) return { problem: 'too large' };
  const bytes = readFileSync(target);
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return { problem: 'not text' };
  }
}

function described(target: string): { readonly size: number; readonly isFile: boolean } {
  const stats = statSync(target);
  return { size: stats.size, isFile: stats.isFile() };
}

const isMissing = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && (error.code === 'ENOENT' || error.code === 'ENOTDIR');
