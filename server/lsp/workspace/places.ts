/** The folders that are open, and what a notebook's paths mean in them. */
import { partsWithin } from '../../model/files.ts';
import { addressBelow, folderOf, partsBelow, plainAddress } from './addresses.ts';

export interface Places {
  readonly roots: () => readonly string[];
  readonly setRoots: (roots: readonly string[]) => void;
  /** The open folder a file lies in, and where in it; the file's own folder where none is open around it. */
  readonly placeOf: (uri: string) => { readonly root: string; readonly parts: readonly string[] };
  /** The file that a notebook names; undefined outside the folders that may be read for it. */
  readonly resolve: (notebook: string, path: string) => string | undefined;
}

export function createPlaces(): Places {
  let roots: readonly string[] = [];
  const placeOf: Places['placeOf'] = (uri) => {
    // The innermost of folders that lie in one another: the most specific answer is the narrowest permission.
    const around = roots.filter((root) => partsBelow(root, uri));
    const root = around.reduce(
      (best, each) => (each.length > best.length ? each : best),
      around[0] ?? folderOf(uri),
    );
    return { root, parts: partsBelow(root, uri) ?? [] };
  };
  return {
    roots: () => roots,
    setRoots: (now) => {
      roots = now.map(plainAddress);
    },
    placeOf,
    resolve: (notebook, path) => {
      const { root, parts } = placeOf(notebook);
      const target = partsWithin(path, parts.slice(0, -1));
      return target && addressBelow(root, target);
    },
  };
}
