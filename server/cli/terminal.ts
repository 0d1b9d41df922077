/** The outside world as the commands see it; tests pass another one. */
import type { FileText } from '../model/snapshot/named-files.ts';

export interface Place {
  readonly root: string;
  readonly parts: readonly string[];
}

export interface Terminal {
  /** The bytes of a file; `-` is the standard input. Throws as `readRegular` does. */
  readonly read: (path: string) => Uint8Array;
  /** Puts `after` in the place of a file that holds `before`, whole or not at all. Throws as `replaceFile` does. */
  readonly save: (path: string, before: string, after: string) => void;
  /** The names in a folder, those of folders ending in `/`. Throws as Node does. */
  readonly list: (folder: string) => readonly string[];
  readonly isFolder: (path: string) => boolean;
  /** A file at `parts` below the folder of the notebook at a path; nothing outside that folder, or of more bytes than `largest`. */
  readonly readBeside: (notebook: string, parts: readonly string[], largest?: number) => FileText;
  /** Where a notebook lies: the folder inside which others may be read for it, and its own folder as parts below that. */
  readonly placeOf: (notebook: string) => Place;
  readonly write: (text: string) => void;
  /** Writes to the standard error. */
  readonly complain: (text: string) => void;
  /** Width in characters; undefined where the output is no terminal. */
  readonly columns: number | undefined;
  readonly colours: boolean;
  readonly version: string;
}

export const EXIT = { clean: 0, found: 1, unusable: 2 } as const;
