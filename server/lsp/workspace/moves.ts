/** Paths follow the files they name, and notebooks that move keep what they name. */
import { linksIn, pathEdits, type TextEdit } from '../../features/document-links.ts';
import type { Snapshot } from '../../model/snapshot.ts';
import { addressBelow, partsBelow, pathBetween, plainAddress } from './addresses.ts';
import type { Edits } from './rename-everywhere.ts';
import type { Notebook, Workspace } from './workspace.ts';

interface Move {
  readonly oldUri: string;
  readonly newUri: string;
}

/** The edits, by notebook as it is called before the moves. Files and whole folders may move. */
export async function editsForMoves(
  moves: readonly Move[],
  opened: Iterable<Notebook>,
  workspace: Workspace,
): Promise<Edits> {
  const after = (uri: string) => moved(uri, moves);
  const edits = new Map<string, readonly TextEdit[]>();
  const look = (uri: string, snapshot: Snapshot) => {
    const found = pathEdits(snapshot, (path) => pathAfter(plainAddress(uri), path, after, workspace));
    if (found.length > 0) edits.set(uri, found);
  };
  await workspace.whenRead();
  for (const { uri, snapshot } of opened) if (linksIn(snapshot).length > 0) look(uri, snapshot);
  for (const { uri, names } of workspace.closed()) {
    if (names.length === 0 || [uri, ...names].every((each) => after(each) === each)) continue;
    const notebook = await workspace.notebookAt(uri);
    if (notebook) look(notebook.uri, notebook.snapshot);
  }
  return edits;
}

function moved(uri: string, moves: readonly Move[]): string {
  for (const { oldUri, newUri } of moves) {
    if (plainAddress(oldUri) === uri) return plainAddress(newUri);
    const parts = partsBelow(oldUri, uri);
    if (parts) return addressBelow(newUri, parts);
  }
  return uri;
}

/** Undefined where it stays: both moved together, or neither did. */
function pathAfter(
  notebook: string,
  path: string,
  after: (uri: string) => string,
  { resolve }: Workspace,
): string | undefined {
  const target = resolve(notebook, path);
  if (target === undefined) return undefined;
  const now = pathBetween(after(notebook), after(target));
  return now === pathBetween(notebook, target) ? undefined : now;
}
