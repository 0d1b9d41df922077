/** Files that a server may be reading at any moment. */
import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** Puts a text into a file at once: a server that reads it meanwhile finds the old text or the new one, never half of it. */
export function putFile(path: string, text: string): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(`${path}.new`, text);
  renameSync(`${path}.new`, path);
}
