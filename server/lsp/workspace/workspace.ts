/** All notebooks of the open folders, whether they are open or not, and the files around them. */

import { opening, type Snapshot } from '../../model/snapshot/snapshot.ts';
import { type NotebookTexts, usesIn, usesOf } from '../../model/snapshot/used-notebooks.ts';
import type { OpenDocument } from '../documents.ts';
import { type Pause, runWithPauses } from '../yielding.ts';
import { pathBetween, plainAddress } from './addresses.ts';
import { createContext, type WorkspaceContext, type WorkspaceDeps } from './context.ts';
import { createFilePresence, type FilePresence } from './file-presence.ts';
import { createIndex, type IndexedNotebook, type NotebookIndex } from './notebook-index.ts';
import { createNotebooksInUse, type NotebooksInUse } from './notebooks-in-use.ts';
import type { Places } from './places.ts';
import { reachableFrom, usersAmong } from './use-graph.ts';

/** What answers are made from. */
export interface Workspace {
  readonly filePresence: FilePresence;
  readonly resolve: Places['resolve'];
  /** The open folder that a notebook lies in; its own folder where none is open around it. */
  readonly rootOf: (uri: string) => string;
  readonly texts: NotebookTexts;
  /** Whether there is a file at an address; it is not read. */
  readonly isThere: (uri: string) => Promise<boolean>;
  /** A notebook at an address, as the editor has it or as the file is; undefined where it cannot be read. */
  readonly notebookAt: (uri: string, pause: Pause) => Promise<Notebook | undefined>;
  /** Those of the open folders that are not open themselves, as far as they have been read. */
  readonly closed: () => Iterable<IndexedNotebook>;
  /** Resolves when those that are not open have been read. */
  readonly whenRead: () => Promise<void>;
  /** There are more notebooks in the open folders than are known here. */
  readonly isShort: NotebookIndex['isShort'];
  /** Those of the open folders that are neither open nor can be read. */
  readonly unread: () => readonly string[];
  /** Resolves when all files that were reported as changed have been read. */
  readonly whenUpToDate: () => Promise<void>;
  /** Resolves when what an open notebook uses has been read, or the time for that is over. */
  readonly whenUsedRead: NotebooksInUse['whenRead'];
  /** The addresses of all that use a notebook, through others too; the nearest first. */
  readonly usersOf: (uri: string) => readonly string[];
  /** The paths by which a notebook names others that have the file name of a path; the shortest first. */
  readonly elsewhere: (notebook: string, path: string) => readonly string[];
}

export interface Notebook {
  /** As the editor spells it, where it is open. */
  readonly uri: string;
  /** Null where it is not open. */
  readonly version: number | null;
  readonly snapshot: Snapshot;
}

/** A workspace with what keeps it up to date. */
export interface WorkspaceKeeper extends Workspace {
  readonly places: Places;
  readonly inUse: NotebooksInUse;
  readonly index: NotebookIndex;
}

/** More are of no use to choose from. */
const MOST_ELSEWHERE = 5;

export function createWorkspace(deps: WorkspaceDeps): WorkspaceKeeper {
  const context = createContext(deps);
  const { places, absence, openAt } = context;
  const filePresence = createFilePresence(context, (uri) => inUse.renew(uri));
  const inUse = createNotebooksInUse(context, filePresence.missing);
  const index = createIndex(context);
  return {
    resolve: places.resolve,
    rootOf: (uri) => places.placeOf(uri).root,
    texts: inUse.texts,
    isThere: async (uri) => (await absence(uri)) === undefined,
    filePresence,
    ...lookUps(context, inUse, index),
    whenRead: index.whenRead,
    isShort: index.isShort,
    unread: () => index.unread().filter((uri) => !openAt(uri)),
    whenUpToDate: index.whenUpToDate,
    whenUsedRead: inUse.whenRead,
    places,
    inUse,
    index,
  };
}

/** Answers about notebooks, whether they are open or not. */
function lookUps(
  { documents, places, openAt, read }: WorkspaceContext,
  inUse: NotebooksInUse,
  index: NotebookIndex,
): Pick<Workspace, 'notebookAt' | 'closed' | 'usersOf' | 'elsewhere'> {
  const isLost = (uri: string) => [...documents.lost()].some((each) => plainAddress(each) === uri);

  async function notebookAt(address: string, pause: Pause): Promise<Notebook | undefined> {
    const uri = plainAddress(address);
    const document = openAt(uri);
    if (document || isLost(uri)) return document;
    const file = await read(uri);
    if (!('text' in file)) return undefined;
    await inUse.readFor(uri, usesIn(file.text));
    const snapshot = await runWithPauses(
      opening(file.text, () => [], inUse.sharedFor(uri)),
      pause,
    );
    // Meanwhile it may have been opened.
    return isLost(uri) ? undefined : (openAt(uri) ?? { uri, version: null, snapshot });
  }

  const closed = () => notOpen().filter(({ uri }) => !isLost(uri));

  /** Includes open notebooks whose text is lost, as they are on the disk. */
  function notOpen(): readonly IndexedNotebook[] {
    const opened = new Set([...documents.all()].map(({ uri }) => plainAddress(uri)));
    return index.all().filter(({ uri }) => !opened.has(uri));
  }

  function usersOf(uri: string): readonly string[] {
    const uses = new Map<string, readonly string[]>([
      ...[...documents.all()].map((document) => [plainAddress(document.uri), usedBy(document)] as const),
      ...notOpen().map((notebook) => [notebook.uri, notebook.uses] as const),
    ]);
    const users = usersAmong(uses.keys(), (address) => uses.get(address) ?? []);
    return [...reachableFrom([plainAddress(uri)], users)].slice(1);
  }

  function usedBy({ uri, snapshot }: OpenDocument): readonly string[] {
    const address = plainAddress(uri);
    return usesOf(snapshot).flatMap((path) => places.resolve(address, path) ?? []);
  }

  function elsewhere(notebook: string, path: string): readonly string[] {
    const own = plainAddress(notebook);
    const nameIn = (each: string) => each.split(/[/\\]/).at(-1)?.toLowerCase();
    const all = [...documents.all(), ...closed()].map(({ uri }) => plainAddress(uri));
    const paths = all.flatMap((uri) => {
      const to = uri === own ? undefined : pathBetween(own, uri);
      return to !== undefined && nameIn(to) === nameIn(path) ? [to] : [];
    });
    const readable = paths.filter((each) => places.resolve(own, each) !== undefined);
    return readable.sort((a, b) => a.length - b.length || (a < b ? -1 : 1)).slice(0, MOST_ELSEWHERE);
  }

  return { notebookAt, closed, usersOf, elsewhere };
}
