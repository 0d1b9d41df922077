/** Listings of the folders beside a notebook, for completion of paths and the search for notebooks. */
import type { Connection } from 'vscode-languageserver';
import type { FolderEntry } from '../features/completion.ts';

/** The entries of the folder at `parts` below that of the notebook of a URI; none where it cannot be looked into. */
export type ListFolder = (notebook: string, parts: readonly string[]) => Promise<readonly FolderEntry[]>;

/** Listing on a server with a disk of its own, for a notebook with a `file:` URI. */
export type ListLocal = (notebook: string, parts: readonly string[]) => readonly FolderEntry[];

/** Request to the editor where the server has no disk, or the notebook is not on one: `{ notebook, parts }` to entries. */
const LIST_FOLDER = 'tappet/listFolder';

export const listingFolders =
  (connection: Connection, local: ListLocal | undefined): ListFolder =>
  async (notebook, parts) => {
    try {
      if (local && notebook.startsWith('file:')) return local(notebook, parts);
      return checked(await connection.sendRequest(LIST_FOLDER, { notebook, parts }));
    } catch {
      // An editor that does not know the request or is closing.
      return [];
    }
  };

/** The answer comes from outside and is checked before use. */
const checked = (answer: unknown): readonly FolderEntry[] =>
  Array.isArray(answer) ? answer.filter(isEntry).map(({ name, isFolder }) => ({ name, isFolder })) : [];

function isEntry(entry: unknown): entry is FolderEntry {
  const { name, isFolder } = (entry ?? {}) as { readonly name?: unknown; readonly isFolder?: unknown };
  return typeof name === 'string' && name !== '' && !/[/\\]/.test(name) && typeof isFolder === 'boolean';
}
