/** A search for notebooks below a folder, whatever is behind its address. */
import type { ListFolder } from '../folders.ts';
import { addressBelow } from './addresses.ts';

/** Folders that are looked into: a whole disk opened as a workspace must not keep the server busy. */
const MOST_FOLDERS = 20_000;
const ENDING = '.tappet';

/** The addresses of the notebooks, the nearest first; one more than `most` where there are more. Hidden folders and installed packages are skipped. */
export async function notebooksBelow(
  root: string,
  listFolder: ListFolder,
  most: number,
): Promise<readonly string[]> {
  const notebooks: string[] = [];
  const folders: (readonly string[])[] = [[]];
  for (const parts of folders) {
    for (const { name, isFolder } of await listFolder(`${root}/-`, parts)) {
      if (isFolder && !isSkipped(name) && folders.length < MOST_FOLDERS) folders.push([...parts, name]);
      if (!isFolder && name.toLowerCase().endsWith(ENDING))
        notebooks.push(addressBelow(root, [...parts, name]));
    }
    if (notebooks.length > most) break;
  }
  return notebooks.slice(0, most + 1);
}

const isSkipped = (name: string): boolean => name.startsWith('.') || name === 'node_modules';
