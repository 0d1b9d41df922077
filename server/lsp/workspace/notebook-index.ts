/** What answers need of the notebooks in the open folders that are not open: their symbols, and the files they name. */

import { linksIn } from '../../features/document-links.ts';
import { prepareOutline } from '../../features/symbols.ts';
import { type ListedSymbol, listedIn } from '../../features/workspace-symbols.ts';
import { preparePages } from '../../model/snapshot/per-page.ts';
import { opening } from '../../model/snapshot/snapshot.ts';
import { usesOf } from '../../model/snapshot/used-notebooks.ts';
import { pauseOnly, runWithPauses, yieldToEventLoop } from '../yielding.ts';
import { plainAddress } from './addresses.ts';
import type { WorkspaceContext } from './context.ts';
import { createFileTable, isContent } from './file-table.ts';
import { notebooksBelow } from './notebooks-below.ts';
import type { Places } from './places.ts';

export interface IndexedNotebook {
  readonly uri: string;
  readonly symbols: readonly ListedSymbol[];
  /** The addresses of every file that it names, and of the notebooks it uses. */
  readonly names: readonly string[];
  readonly uses: readonly string[];
}

export interface NotebookIndex {
  readonly all: () => readonly IndexedNotebook[];
  /** Reads every notebook of the open folders. A later call ends an earlier one. */
  readonly readAll: (progress: Progress) => Promise<void>;
  /** Resolves when all have been read since the start: an answer about all must not miss those still unread. */
  readonly whenRead: () => Promise<void>;
  /** There are more notebooks in the open folders than the index holds. */
  readonly isShort: () => boolean;
  /** The addresses of those that are there and cannot be read: too large, or not text. */
  readonly unread: () => readonly string[];
  readonly fileChanged: (uri: string) => Promise<void>;
  /** Resolves when every file that was reported as changed has been read. */
  readonly whenUpToDate: () => Promise<void>;
  readonly stop: () => void;
}

export interface Progress {
  /** From 0 to 100. */
  readonly report: (percent: number) => void;
}

export const MOST_NOTEBOOKS = 2000;
/** Of one notebook, and of all together. */
const MOST_SYMBOLS = 5000;
const MOST_SYMBOLS_OF_ALL = 100_000;

export function createIndex({ places, read, listFolder, log }: WorkspaceContext): NotebookIndex {
  const files = createFileTable<IndexedNotebook>(async (address) => {
    const file = await read(address);
    return 'text' in file ? withinRoom(await indexedText(address, file.text, places)) : file;
  });
  const all = () => files.addresses().map(files.get).filter(isContent);
  const withinRoom = (notebook: IndexedNotebook): IndexedNotebook => {
    const others = all().filter(({ uri }) => uri !== notebook.uri);
    const room = MOST_SYMBOLS_OF_ALL - others.reduce((sum, { symbols }) => sum + symbols.length, 0);
    return { ...notebook, symbols: notebook.symbols.slice(0, Math.max(0, room)) };
  };
  let isShort = false;
  const readOne = async (address: string) => {
    await files.read(address);
    const known = files.get(address);
    const isMissing = known !== undefined && !isContent(known) && known.problem === 'missing';
    const isOver = files.size() > MOST_NOTEBOOKS;
    if (isMissing || isOver) files.forget(address);
    if (isOver && !isMissing) isShort = true;
  };
  const list = async () => {
    const lists = await Promise.all(
      places.roots().map((root) => notebooksBelow(root, listFolder, MOST_NOTEBOOKS)),
    );
    const addresses = [...new Set(lists.flat().map(plainAddress))];
    isShort = addresses.length > MOST_NOTEBOOKS;
    if (isShort) log(`more than ${MOST_NOTEBOOKS} notebooks: the others are found only while they are open`);
    return addresses.slice(0, MOST_NOTEBOOKS);
  };

  /** The number of the last `readAll`, which ends those before it. */
  let run = 0;
  let isRead = false;
  const waiting: (() => void)[] = [];
  const endWaiting = () => {
    isRead = true;
    for (const resolve of waiting.splice(0)) resolve();
  };
  const changes = new Set<Promise<void>>();
  const isInside = (address: string) => places.roots().includes(places.placeOf(address).root);
  return {
    all,
    isShort: () => isShort,
    unread: () =>
      files.addresses().filter((address) => {
        const known = files.get(address);
        return known !== undefined && !isContent(known);
      }),
    stop: () => {
      run++;
      endWaiting();
    },
    whenRead: async () => {
      if (!isRead) await new Promise<void>((resolve) => void waiting.push(resolve));
      await Promise.allSettled(changes);
    },
    fileChanged: async (uri) => {
      const address = plainAddress(uri);
      if (!isInside(address)) return;
      const reading = readOne(address);
      changes.add(reading);
      await reading.finally(() => changes.delete(reading));
    },
    whenUpToDate: async () => void (await Promise.allSettled(changes)),
    async readAll({ report }) {
      const mine = ++run;
      isRead = false;
      try {
        const listed = await list();
        const keep = new Set(listed);
        for (const address of files.addresses()) if (!keep.has(address)) files.forget(address);
        for (const [i, address] of listed.entries()) {
          if (mine !== run) return;
          await readOne(address);
          report(Math.floor(((i + 1) / listed.length) * 100));
          await yieldToEventLoop();
        }
      } finally {
        if (mine === run) endWaiting();
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
