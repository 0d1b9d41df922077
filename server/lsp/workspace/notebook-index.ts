/** What the notebooks of the open folders have in them, open or not: no more of each than is asked of those that are not. */

import { linksIn } from '../../features/document-links.ts';
import { type ListedSymbol, listedIn } from '../../features/workspace-symbols.ts';
import type { FileText } from '../../model/files.ts';
import { usesOf } from '../../model/shared.ts';
import { open } from '../../model/snapshot.ts';
import { plainAddress } from './addresses.ts';
import type { Places } from './places.ts';

export interface IndexedNotebook {
  readonly uri: string;
  readonly symbols: readonly ListedSymbol[];
  /** Every file that it names, and those that it uses. */
  readonly names: readonly string[];
  readonly uses: readonly string[];
}

export interface NotebookIndex {
  readonly all: () => Iterable<IndexedNotebook>;
  /** Reads every notebook of the open folders. A later call ends an earlier one. */
  readonly readAll: (progress: Progress) => Promise<void>;
  /** Waits until all have been read, from the start on: what is asked of all must not miss those still unread. */
  readonly whenRead: () => Promise<void>;
  readonly fileChanged: (uri: string) => Promise<void>;
  readonly stop: () => void;
}

export interface Progress {
  /** From 0 to 100. */
  readonly report: (percent: number) => void;
}

interface Around {
  readonly places: Places;
  readonly read: (uri: string) => Promise<FileText>;
  readonly list: (root: string, most: number) => Promise<readonly string[]>;
  readonly log: (message: string) => void;
}

const MOST_NOTEBOOKS = 2000;
/** Of one notebook, and of all together. */
const MOST_SYMBOLS = 5000;
const MOST_SYMBOLS_OF_ALL = 100_000;

export function createIndex({ places, read, list, log }: Around): NotebookIndex {
  const indexed = new Map<string, IndexedNotebook>();
  let symbols = 0;
  let run = 0;
  let isRead = false;
  const waiting: (() => void)[] = [];
  const letGo = () => {
    isRead = true;
    for (const go of waiting.splice(0)) go();
  };
  const drop = (uri: string) => {
    symbols -= indexed.get(uri)?.symbols.length ?? 0;
    indexed.delete(uri);
  };
  const readOne = async (uri: string) => {
    const file = await read(uri);
    drop(uri);
    if (!('text' in file) || indexed.size >= MOST_NOTEBOOKS) return;
    const notebook = indexedText(uri, file.text, places);
    const room = Math.max(0, MOST_SYMBOLS_OF_ALL - symbols);
    indexed.set(uri, { ...notebook, symbols: notebook.symbols.slice(0, room) });
    symbols += Math.min(room, notebook.symbols.length);
  };
  const listed = async () => {
    const lists = await Promise.all(places.roots().map((root) => list(root, MOST_NOTEBOOKS)));
    const found = [...new Set(lists.flat().map(plainAddress))];
    if (found.length > MOST_NOTEBOOKS)
      log(`more than ${MOST_NOTEBOOKS} notebooks: the others are found only while they are open`);
    return found.slice(0, MOST_NOTEBOOKS);
  };
  const isInside = (uri: string) => places.roots().includes(places.placeOf(uri).root);
  return {
    all: () => indexed.values(),
    stop: () => {
      run++;
      letGo();
    },
    whenRead: () => (isRead ? Promise.resolve() : new Promise((resolve) => void waiting.push(resolve))),
    fileChanged: async (uri) => {
      const plain = plainAddress(uri);
      if (isInside(plain)) await readOne(plain);
    },
    async readAll({ report }) {
      const mine = ++run;
      isRead = false;
      try {
        const uris = await listed();
        for (const uri of indexed.keys()) if (!uris.includes(uri)) drop(uri);
        for (const [i, uri] of uris.entries()) {
          if (mine !== run) return;
          await readOne(uri);
          report(Math.floor(((i + 1) / uris.length) * 100));
          await pause();
        }
      } finally {
        if (mine === run) letGo();
      }
    },
  };
}

function indexedText(uri: string, text: string, { resolve }: Places): IndexedNotebook {
  const snapshot = open(text, () => []);
  const targets = (paths: readonly string[]) => [
    ...new Set(paths.flatMap((path) => resolve(uri, path) ?? [])),
  ];
  return {
    uri,
    symbols: [...listedIn(snapshot)].slice(0, MOST_SYMBOLS),
    names: targets(linksIn(snapshot).map(({ path }) => path)),
    uses: targets(usesOf(snapshot)),
  };
}

/** Lets what the editor asks go first. */
const pause = () => new Promise((resolve) => setTimeout(resolve, 0));
