/** The open folders, and which file a path in a notebook means. */
import { partsWithin } from '../../model/snapshot/named-files.ts';
import { addressBelow, folderOf, partsBelow, plainAddress } from './addresses.ts';

export interface Places {
  readonly roots: () => readonly string[];
  readonly setRoots: (roots: readonly string[]) => void;
  /** The open folder a file lies in, and where in it; the file's own folder where none is open around it. */
  readonly placeOf: (uri: string) => { readonly root: string; readonly parts: readonly string[] };
  /** The file that a notebook names; undefined outside the folders that may be read for it. */
  readonly resolve: (notebook: string, path: string) => string | undefined;
}

const MOST_RESOLVED = 20_000;

export function createPlaces(): Places {
  let roots: readonly string[] = [];
  const placeOf: Places['placeOf'] = (uri) => {
    // The innermost of nested folders: it allows the least.
    const around = roots.filter((root) => partsBelow(root, uri));
    const root = around.reduce(
      (best, each) => (each.length > best.length ? each : best),
      around[0] ?? folderOf(uri),
    );
    return { root, parts: partsBelow(root, uri) ?? [] };
  };
  /** Called for every `use` line, at every keystroke and for every notebook that is read. */
  const resolved = new Map<string, string | undefined>();
  const resolve: Places['resolve'] = (notebook, path) => {
    const { root, parts } = placeOf(notebook);
    const target = partsWithin(path, parts.slice(0, -1));
    return target && addressBelow(root, target);
  };
  return {
    roots: () => roots,
    setRoots: (now) => {
      roots = now.map(plainAddress);
      resolved.clear();
    },
    placeOf,
    resolve: (notebook, path) => {
      const key = `${notebook}\n${path}`;
      if (!resolved.has(key)) {
        if (resolved.size >= MOST_RESOLVED) resolved.clear();
        resolved.set(key, resolve(notebook, path));
      }
      return resolved.get(key);
    },
  };
}
