/** Paths in notebooks, updated when files, folders or the notebooks themselves move. */
import { pathEdits } from '../../features/document-links.ts';
import { preparePages } from '../../model/snapshot/per-page.ts';
import type { NotebookChanges } from '../changes.ts';
import { type Pause, runWithPauses } from '../yielding.ts';
import { addressBelow, partsBelow, pathBetween, plainAddress } from './addresses.ts';
import type { Notebook, Workspace } from './workspace.ts';

interface Move {
  readonly oldUri: string;
  readonly newUri: string;
}

/** The changes of each notebook, under its address before the moves. Files and whole folders may move. */
export async function editsForMoves(
  moves: readonly Move[],
  opened: Iterable<Notebook>,
  workspace: Workspace,
  pause: Pause,
): Promise<readonly NotebookChanges[]> {
  const after = (uri: string) => moved(uri, moves);
  const changes: NotebookChanges[] = [];
  const look = ({ uri, version, snapshot }: Notebook) => {
    const edits = pathEdits(snapshot, (path) => pathAfter(plainAddress(uri), path, after, workspace));
    if (edits.length > 0) changes.push({ uri, version, edits });
  };
  await workspace.whenRead();
  for (const notebook of opened) {
    await runWithPauses(preparePages(notebook.snapshot), pause);
    look(notebook);
  }
  for (const { uri, names } of workspace.closed()) {
    if (names.length === 0 || [uri, ...names].every((each) => after(each) === each)) continue;
    const notebook = await workspace.notebookAt(uri, pause);
    if (notebook) look(notebook);
  }
  return changes;
}

function moved(uri: string, moves: readonly Move[]): string {
  for (const { oldUri, newUri } of moves) {
    if (plainAddress(oldUri) === uri) return plainAddress(newUri);
    const parts = partsBelow(oldUri, uri);
    if (parts) return addressBelow(newUri, parts);
  }
  return uri;
}

/** Undefined where the path stays the same: both moved together, or neither did. */
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
