/** What every table of this folder reads from: the open notebooks, the folders, and the files behind their addresses. */
import type { FileText } from '../../model/snapshot/named-files.ts';
import { LARGEST_USED } from '../../model/snapshot/used-notebooks.ts';
import type { FileProblem } from '../../model/state/lookup.ts';
import type { Documents, OpenDocument } from '../documents.ts';
import type { ReadBelow } from '../files.ts';
import type { ListFolder } from '../folders.ts';
import { plainAddress } from './addresses.ts';
import { createPlaces, type Places } from './places.ts';

export interface WorkspaceDeps {
  readonly documents: Documents;
  readonly readBelow: ReadBelow;
  readonly listFolder: ListFolder;
  readonly log: (message: string) => void;
  /** An open notebook has other findings now, though its text is the same. */
  readonly renewed: (uri: string) => void;
}

export interface WorkspaceContext extends WorkspaceDeps {
  readonly places: Places;
  /** The notebook at an address, where it is open. */
  readonly openAt: (address: string) => OpenDocument | undefined;
  /** The text of the notebook at an address. */
  readonly read: (address: string) => Promise<FileText>;
  /** Why a file is not there, without reading it; undefined where it is there. */
  readonly absence: (address: string) => Promise<FileProblem | undefined>;
}

export function createContext(deps: WorkspaceDeps): WorkspaceContext {
  const { documents, readBelow } = deps;
  const places = createPlaces();
  const readAt = (address: string, largest: number) => {
    const { root, parts } = places.placeOf(address);
    return readBelow(root, parts, largest);
  };
  return {
    ...deps,
    places,
    openAt: (address) => {
      for (const document of documents.all()) if (plainAddress(document.uri) === address) return document;
      return undefined;
    },
    read: (address) => readAt(address, LARGEST_USED),
    absence: async (address) => {
      // Of a file that is there even an empty text may be read, or it is larger than nothing.
      const file = await readAt(address, 0);
      return 'text' in file || file.problem === 'too large' ? undefined : file.problem;
    },
  };
}
