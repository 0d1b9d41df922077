import type { FileProblem } from '../state/lookup.ts';

/** Named files: contents supplied by the entry points of the program. The model itself opens nothing. */

/** A file's text, or why there is none. */
export type FileText = { readonly text: string } | { readonly problem: FileProblem };
/** By the path as the notebook writes it. */
export type Files = ReadonlyMap<string, FileText>;

/** No file larger than this is read, bytes: an afternoon at ten lines a second is a tenth of it. */
export const LARGEST_FILE = 20 * 1024 * 1024;

/**
 * A path of the notebook as parts below a folder: `logs/run.csv` to [`logs`, `run.csv`]. Undefined where it is empty,
 * absolute, climbs out with `..`, or is an address of another kind. `from`: where in that folder the notebook lies.
 */
export function partsWithin(path: string, from: readonly string[] = []): readonly string[] | undefined {
  if (path.trim() === '' || path.includes('\0')) return undefined;
  const forward = path.replaceAll('\\', '/');
  if (forward.startsWith('/') || forward.startsWith('~') || /^[a-z][a-z0-9+.-]*:/i.test(forward))
    return undefined;
  const parts: string[] = [...from];
  for (const part of forward.split('/')) {
    if (part === '' || part === '.') continue;
    if (part === '..' && parts.pop() === undefined) return undefined;
    if (part !== '..') parts.push(part);
  }
  return parts.length > 0 ? parts : undefined;
}
