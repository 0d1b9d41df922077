/** Files beside a notebook on the disk: nothing outside the notebook's own folder, whatever links lead there. */
/// <reference types="node" />
import { existsSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import { type FileText, LARGEST_FILE } from '../model/snapshot/named-files.ts';
import { readRegular } from './read-file.ts';
import type { Place } from './terminal.ts';

/**
 * The file at `parts` below the folder of the notebook at `notebook`. Links are followed first, then judged. Never throws.
 * @param largest bytes; a larger file is not read.
 */
export function readBeside(
  notebook: string,
  parts: readonly string[],
  largest: number = LARGEST_FILE,
): FileText {
  try {
    const folder = realpathSync(dirname(notebook));
    const target = realpathSync(join(folder, ...parts));
    return isWithin(folder, target) ? readTarget(target, largest) : { problem: 'outside' };
  } catch (error) {
    return { problem: isMissing(error) ? 'missing' : 'not readable' };
  }
}

/** The entries of the folder at `parts` below that of the notebook; none where that is outside it or no folder. Never throws. */
export function listBeside(
  notebook: string,
  parts: readonly string[],
): readonly { readonly name: string; readonly isFolder: boolean }[] {
  try {
    const folder = realpathSync(dirname(notebook));
    const target = realpathSync(join(folder, ...parts));
    if (parts.length > 0 && !isWithin(folder, target)) return [];
    return readdirSync(target, { withFileTypes: true }).map((entry) => ({
      name: entry.name,
      isFolder: entry.isDirectory(),
    }));
  } catch {
    return [];
  }
}

/** Below the repository that holds it; else below the current folder, if it is there; else its own folder alone. */
export function placeOf(notebook: string): Place {
  const folder = dirname(resolve(notebook));
  const root = repositoryOf(folder) ?? (isWithin(process.cwd(), folder) ? process.cwd() : folder);
  return { root, parts: relative(root, folder).split(sep).filter(Boolean) };
}

function repositoryOf(folder: string): string | undefined {
  if (existsSync(join(folder, '.git'))) return folder;
  const above = dirname(folder);
  return above === folder ? undefined : repositoryOf(above);
}

function isWithin(folder: string, target: string): boolean {
  const way = relative(folder, target);
  return way !== '' && way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}

function readTarget(target: string, largest: number): FileText {
  // Before reading: a large file is not read to find that out.
  if (statSync(target).size > largest) return { problem: 'too large' };
  const bytes = readRegular(target, largest);
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return { problem: 'not text' };
  }
}

const isMissing = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && (error.code === 'ENOENT' || error.code === 'ENOTDIR');
