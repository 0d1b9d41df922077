/** What the notebooks of the open folders have in them, open or not: no more of each than is asked of those that are not. */

import { linksIn } from '../../features/document-links.ts';
import { prepareOutline } from '../../features/symbols.ts';
import { type ListedSymbol, listedIn } from '../../features/workspace-symbols.ts';
import type { FileText } from '../../model/snapshot/named-files.ts';
import { preparePages } from '../../model/snapshot/per-page.ts';
import { opening } from '../../model/snapshot/snapshot.ts';
import { usesOf } from '../../model/snapshot/used-notebooks.ts';
import { pauseOnly, runWithPauses, yieldToEventLoop } from '../yielding.ts';
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
  /** Some notebooks of the open folders are not known here: there are more than are kept. */
  readonly isShort: () => boolean;
  /** Those that are there and cannot be read: too large, or no text. */
  readonly unread: () => Iterable<string>;
  readonly fileChanged: (uri: string) => Promise<void>;
  /** Waits until every file that was told of so far has been read. */
  readonly whenUpToDate: () => Promise<void>;
  readonly stop: () => void;
}

export interface Progress {
  /** From 0 to 100. */
  readonly report: (percent: number) => void;
}

interface NotebookIndexDeps {
  readonly places: Places;
  readonly read: (uri: string) => Promise<FileText>;
  readonly list: (root: string, most: number) => Promise<readonly string[]>;
  readonly log: (message: string) => void;
}

export const MOST_NOTEBOOKS = 2000;
/** Of one notebook, and of all together. */
const MOST_SYMBOLS = 5000;
const MOST_SYMBOLS_OF_ALL = 100_000;

export function createIndex({ places, read, list, log }: NotebookIndexDeps): NotebookIndex {
  const indexed = new Map<string, IndexedNotebook>();
  let symbols = 0;
  let run = 0;
  let isRead = false;
  let isShort = false;
  const unread = new Set<string>();
  const waiting: (() => void)[] = [];
  const letGo = () => {
    isRead = true;
    for (const go of waiting.splice(0)) go();
  };
  const drop = (uri: string) => {
    symbols -= indexed.get(uri)?.symbols.length ?? 0;
    indexed.delete(uri);
  };
  /** The last reading of each file that is not yet at its end: an earlier one may end after it. */
  const readings = new Map<string, symbol>();
  const readOne = async (uri: string) => {
    const mine = Symbol(uri);
    readings.set(uri, mine);
    const file = await read(uri);
    if ('text' in file || file.problem === 'missing') unread.delete(uri);
    else unread.add(uri);
    const notebook = 'text' in file ? await indexedText(uri, file.text, places) : undefined;
    if (readings.get(uri) !== mine) return;
    readings.delete(uri);
    drop(uri);
    if (!notebook) return;
    if (indexed.size >= MOST_NOTEBOOKS) {
      isShort = true;
      return;
    }
    const room = Math.max(0, MOST_SYMBOLS_OF_ALL - symbols);
    indexed.set(uri, { ...notebook, symbols: notebook.symbols.slice(0, room) });
    symbols += Math.min(room, notebook.symbols.length);
  };
  const listed = async () => {
    const lists = await Promise.all(places.roots().map((root) => list(root, MOST_NOTEBOOKS)));
    const found = [...new Set(lists.flat().map(plainAddress))];
    isShort = found.length > MOST_NOTEBOOKS;
    if (isShort) log(`more than ${MOST_NOTEBOOKS} notebooks: the others are found only while they are open`);
    return found.slice(0, MOST_NOTEBOOKS);
  };
  const changes = new Set<Promise<void>>();
  const isInside = (uri: string) => places.roots().includes(places.placeOf(uri).root);
  return {
    all: () => indexed.values(),
    isShort: () => isShort,
    unread: () => unread.values(),
    stop: () => {
      run++;
      letGo();
    },
    whenRead: async () => {
      if (!isRead) await new Promise<void>((resolve) => void waiting.push(resolve));
      await Promise.allSettled(changes);
    },
    fileChanged: async (uri) => {
      const plain = plainAddress(uri);
      if (!isInside(plain)) return;
      const reading = readOne(plain);
      changes.add(reading);
      await reading.finally(() => changes.delete(reading));
    },
    whenUpToDate: async () => void (await Promise.allSettled(changes)),
    async readAll({ report }) {
      const mine = ++run;
      isRead = false;
      try {
        const uris = await listed();
        const listedNow = new Set(uris);
        for (const uri of indexed.keys()) if (!listedNow.has(uri)) drop(uri);
        for (const uri of unread) if (!listedNow.has(uri)) unread.delete(uri);
        for (const [i, uri] of uris.entries()) {
          if (mine !== run) return;
          await readOne(uri);
          report(Math.floor(((i + 1) / uris.length) * 100));
          await yieldToEventLoop();
        }
      } finally {
        if (mine === run) letGo();
      }
    },
  };
}

async function indexedText(uri: string, text: string, { resolve }: Places): Promise<IndexedNotebook> {
  const pause = pauseOnly();
  const snapshot = await runWithPauses(
    opening(
      text,
      () => [],
      () => undefined,
    ),
    pause,
  );
  await runWithPauses(preparePages(snapshot), pause);
  await runWithPauses(prepareOutline(snapshot), pause);
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
