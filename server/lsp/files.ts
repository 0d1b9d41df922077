/** Files that a notebook names, for the answers that tell of them. */
import type { Connection } from 'vscode-languageserver';
import { type Files, type FileText, LARGEST_FILE, partsWithin } from '../model/snapshot/named-files.ts';
import type { FileProblem } from '../model/state/lookup.ts';

/** A file by the path that the notebook of a URI writes. */
export type ReadFile = (notebook: string, path: string) => Promise<FileText>;

/** What a door with a disk reads by itself: the file at `parts` below the folder of a notebook with a `file:` URI. */
export type ReadLocal = (notebook: string, parts: readonly string[], largest?: number) => FileText;

/** A file at `parts` below a folder, whatever is behind its URI. */
export type ReadBelow = (folder: string, parts: readonly string[], largest: number) => Promise<FileText>;

/** Asked of the editor where the server has no disk, or the notebook lies on none: `{ notebook, parts }` to a text or a problem. */
const READ_FILE = 'tappet/readFile';

/** How many texts are kept, so that one that has not changed is not worked through again. */
const MOST_KEPT = 4;

export function readingFiles(connection: Connection, local: ReadLocal | undefined): ReadFile {
  const kept = new Map<string, FileText>();
  return async (notebook, path) => {
    const parts = partsWithin(path);
    if (!parts) return { problem: 'outside' };
    const file = await readFrom(connection, local, notebook, parts, LARGEST_FILE);
    return keptOr(kept, `${notebook}\n${parts.join('/')}`, file);
  };
}

/** As `readingFiles`, from a folder's address; nothing is kept. */
export const readingBelow =
  (connection: Connection, local: ReadLocal | undefined): ReadBelow =>
  (folder, parts, largest) =>
    readFrom(connection, local, `${folder}/-`, parts, largest);

/** All that an answer asks for, by path. */
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
    return answered(await connection.sendRequest(READ_FILE, { notebook, parts, largest }));
  } catch {
    // A path that is none here, an editor that does not know the request or is going away.
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

/** Whatever came is looked at before it is believed. */
function answered(answer: unknown): FileText {
  const { text, problem } = (answer ?? {}) as { readonly text?: unknown; readonly problem?: unknown };
  if (typeof text === 'string') return text.length > LARGEST_FILE ? { problem: 'too large' } : { text };
  return { problem: PROBLEMS.has(problem) ? (problem as FileProblem) : 'not readable' };
}

function keptOr(kept: Map<string, FileText>, key: string, file: FileText): FileText {
  const last = kept.get(key);
  const isSame = last && 'text' in last && 'text' in file && last.text === file.text;
  const known = isSame ? last : file;
  kept.delete(key);
  kept.set(key, known);
  for (const oldest of kept.keys()) {
    if (kept.size <= MOST_KEPT) break;
    kept.delete(oldest);
  }
  return known;
}
