/** All notebooks of the open folders, whether they are open or not, and the files around them. */

import { opening, type Snapshot } from '../../model/snapshot/snapshot.ts';
import { LARGEST_USED, usesIn, usesOf } from '../../model/snapshot/used-notebooks.ts';
import type { Documents, OpenDocument } from '../documents.ts';
import type { ReadBelow } from '../files.ts';
import type { ListFolder } from '../folders.ts';
import { type Pause, runWithPauses } from '../yielding.ts';
import { pathBetween, plainAddress } from './addresses.ts';
import { createNamedFiles, type NamedFiles } from './named-files.ts';
import { createIndex, type IndexedNotebook, type NotebookIndex } from './notebook-index.ts';
import { notebooksBelow } from './notebooks-below.ts';
import { createPlaces, type Places } from './places.ts';
import { createUsed, type UsedNotebooks } from './used.ts';

/** What answers are made from. */
export interface Workspace {
  readonly namedFiles: NamedFiles;
  readonly resolve: Places['resolve'];
  /** The open folder that a notebook lies in; its own folder where none is open around it. */
  readonly rootOf: (uri: string) => string;
  readonly known: UsedNotebooks['known'];
  /** Whether there is a file at an address; it is not read. */
  readonly isThere: (uri: string) => Promise<boolean>;
  /** A notebook at an address, as its editor has it or as the file is; undefined where it cannot be read. */
  readonly notebookAt: (uri: string, pause: Pause) => Promise<Notebook | undefined>;
  /** Those of the open folders that are not open themselves, as far as they have been read. */
  readonly closed: () => Iterable<IndexedNotebook>;
  /** Waits until those that are not open have been read. */
  readonly whenRead: () => Promise<void>;
  /** There are more notebooks in the open folders than are known here. */
  readonly isShort: NotebookIndex['isShort'];
  /** Those of the open folders that are neither open nor can be read. */
  readonly unread: () => readonly string[];
  /** Waits until all that was told of their files so far is known. */
  readonly whenUpToDate: () => Promise<void>;
  /** Waits until what an open notebook uses has been read, though not for ever. */
  readonly whenUsedRead: UsedNotebooks['whenRead'];
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

export interface WorkspaceKeeper extends Workspace {
  readonly places: Places;
  readonly used: UsedNotebooks;
  readonly index: NotebookIndex;
}

interface WorkspaceDeps {
  readonly documents: Documents;
  readonly readBelow: ReadBelow;
  readonly listFolder: ListFolder;
  readonly log: (message: string) => void;
  readonly renewed: (uri: string) => void;
}

/** More are of no use to choose from. */
const MOST_ELSEWHERE = 5;

export function createWorkspace({
  documents,
  readBelow,
  listFolder,
  log,
  renewed,
}: WorkspaceDeps): WorkspaceKeeper {
  const places = createPlaces();
  const readAt = (uri: string, largest: number) => {
    const { root, parts } = places.placeOf(uri);
    return readBelow(root, parts, largest);
  };
  const read = (uri: string) => readAt(uri, LARGEST_USED);
  // A file of any size is larger than nothing, and so it is not read.
  const lookAt = async (uri: string) => {
    const file = await readAt(uri, 0);
    return 'text' in file ? 'too large' : file.problem;
  };
  const namedFiles = createNamedFiles({
    documents,
    places,
    isMissing: async (uri) => (await lookAt(uri)) === 'missing',
    renewed: (uri) => used.readAgain(uri),
    log,
  });
  const used = createUsed({ documents, places, read, missing: namedFiles.missing, renewed });
  const index = createIndex({
    places,
    read,
    list: (root, most) => notebooksBelow(root, listFolder, most),
    log,
  });
  const openAt = (uri: string): OpenDocument | undefined =>
    [...documents.all()].find((document) => plainAddress(document.uri) === uri);

  const isLost = (uri: string) => [...documents.lost()].some((each) => plainAddress(each) === uri);

  async function notebookAt(address: string, pause: Pause): Promise<Notebook | undefined> {
    const uri = plainAddress(address);
    const document = openAt(uri);
    if (document || isLost(uri)) return document;
    const file = await read(uri);
    if (!('text' in file)) return undefined;
    await used.readFor(uri, usesIn(file.text));
    const snapshot = await runWithPauses(
      opening(file.text, () => [], used.sharedFor(uri)),
      pause,
    );
    // Meanwhile it may have been opened.
    return isLost(uri) ? undefined : (openAt(uri) ?? { uri, version: null, snapshot });
  }

  function* closed(): Generator<IndexedNotebook> {
    for (const notebook of notOpen()) if (!isLost(notebook.uri)) yield notebook;
  }

  /** Those too that are open and whose text is lost, as they are on the disk. */
  function* notOpen(): Generator<IndexedNotebook> {
    const opened = new Set([...documents.all()].map(({ uri }) => plainAddress(uri)));
    for (const notebook of index.all()) if (!opened.has(notebook.uri)) yield notebook;
  }

  function usersOf(uri: string): readonly string[] {
    const uses = [...documents.all()].map((document): Pick<IndexedNotebook, 'uri' | 'uses'> => {
      const name = plainAddress(document.uri);
      const paths = usesOf(document.snapshot);
      return { uri: name, uses: paths.flatMap((path) => places.resolve(name, path) ?? []) };
    });
    const all = [...uses, ...notOpen()];
    const usersByUsed = new Map<string, string[]>();
    for (const each of all)
      for (const used of each.uses) {
        const users = usersByUsed.get(used);
        if (users) users.push(each.uri);
        else usersByUsed.set(used, [each.uri]);
      }
    const users = new Set([plainAddress(uri)]);
    for (const name of users) for (const user of usersByUsed.get(name) ?? []) users.add(user);
    return [...users].slice(1);
  }

  function elsewhere(notebook: string, path: string): readonly string[] {
    const own = plainAddress(notebook);
    const nameIn = (each: string) => each.split(/[/\\]/).at(-1)?.toLowerCase();
    const all = [...documents.all(), ...closed()].map(({ uri }) => plainAddress(uri));
    const paths = all.flatMap((uri) => {
      const found = uri === own ? undefined : pathBetween(own, uri);
      return found !== undefined && nameIn(found) === nameIn(path) ? [found] : [];
    });
    const readable = paths.filter((each) => places.resolve(own, each) !== undefined);
    return readable.sort((a, b) => a.length - b.length || (a < b ? -1 : 1)).slice(0, MOST_ELSEWHERE);
  }

  return {
    resolve: places.resolve,
    rootOf: (uri) => places.placeOf(uri).root,
    known: used.known,
    isThere: async (uri) => (await lookAt(uri)) === 'too large',
    namedFiles,
    notebookAt,
    closed,
    whenRead: index.whenRead,
    isShort: index.isShort,
    unread: () => [...index.unread()].filter((uri) => !openAt(uri)),
    whenUpToDate: index.whenUpToDate,
    whenUsedRead: used.whenRead,
    usersOf,
    elsewhere,
    places,
    used,
    index,
  };
}
