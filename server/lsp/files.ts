/** Texts of the files that a notebook names, for answers that need them. */
import type { Connection } from 'vscode-languageserver';
import { type Files, type FileText, LARGEST_FILE, partsWithin } from '../model/snapshot/named-files.ts';
import type { FileProblem } from '../model/state/lookup.ts';

/** A file by its path as written in the notebook of a URI. */
export type ReadFile = (notebook: string, path: string) => Promise<FileText>;

/** Reading on a server with a disk of its own: the file at `parts` below the folder of a notebook with a `file:` URI. */
export type ReadLocal = (notebook: string, parts: readonly string[], largest?: number) => FileText;

/** A file at `parts` below a folder, whatever is behind its URI. */
export type ReadBelow = (folder: string, parts: readonly string[], largest: number) => Promise<FileText>;

/** Request to the editor where the server has no disk, or the notebook is not on one: `{ notebook, parts }` to a text or a problem. */
const READ_FILE = 'tappet/readFile';

/** How many texts are cached: the same string again means that nothing is worked out anew. */
const MOST_CACHED = 4;

export function readingFiles(connection: Connection, local: ReadLocal | undefined): ReadFile {
  const cache = new Map<string, FileText>();
  return async (notebook, path) => {
    const parts = partsWithin(path);
    if (!parts) return { problem: 'outside' };
    const file = await readFrom(connection, local, notebook, parts, LARGEST_FILE);
    return sameTextOr(cache, `${notebook}\n${parts.join('/')}`, file);
  };
}

/** As `readingFiles`, from a folder's address; without a cache. */
export const readingBelow =
  (connection: Connection, local: ReadLocal | undefined): ReadBelow =>
  (folder, parts, largest) =>
    readFrom(connection, local, `${folder}/-`, parts, largest);

/** All files that an answer needs, by path. */
export async function filesFor(
  wanted: readonly string[],
  notebook: string,
  read: ReadFile,
): Promise<Files | undefined> {
  if (wanted.length === 0) return undefined;
  return new Map(await Promise.all(wanted.map(async (path) => [path, await read(notebook, path)] as const)));
}

async function readFrom(
  connection: Connection,
  local: ReadLocal | undefined,
  notebook: string,
  parts: readonly string[],
  largest: number,
): Promise<FileText> {
  try {
    if (local && notebook.startsWith('file:')) return local(notebook, parts, largest);
    return checked(await connection.sendRequest(READ_FILE, { notebook, parts, largest }));
  } catch {
    // A path that this disk cannot have, an editor that does not know the request or is closing.
    return { problem: 'not readable' };
  }
}

const PROBLEMS: ReadonlySet<unknown> = new Set<FileProblem>([
  'missing',
  'too large',
  'outside',
  'not text',
  'not readable',
]);

/** The answer comes from outside and is checked before use. */
function checked(answer: unknown): FileText {
  const { text, problem } = (answer ?? {}) as { readonly text?: unknown; readonly problem?: unknown };
  if (typeof text === 'string') return text.length > LARGEST_FILE ? { problem: 'too large' } : { text };
  return { problem: PROBLEMS.has(problem) ? (problem as FileProblem) : 'not readable' };
}

function sameTextOr(cache: Map<string, FileText>, key: string, file: FileText): FileText {
  const last = cache.get(key);
  const isSame = last && 'text' in last && 'text' in file && last.text === file.text;
  const known = isSame ? last : file;
  cache.delete(key);
  cache.set(key, known);
  for (const oldest of cache.keys()) {
    if (cache.size <= MOST_CACHED) break;
    cache.delete(oldest);
  }
  return known;
}
