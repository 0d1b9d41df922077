/** The notebooks that open ones use: read once, kept up to date with their files; a change is passed on to those that use them. */

import type { Shared } from '../../model/snapshot/look-up.ts';
import { open, refresh, type Snapshot } from '../../model/snapshot/snapshot.ts';
import { findingCircles, usedFirst } from '../../model/snapshot/use-circles.ts';
import { type NotebookTexts, sharedFor, stateGiven, usesOf } from '../../model/snapshot/used-notebooks.ts';
import type { Absent } from '../../model/state/lookup.ts';
import { inTime } from '../timeout.ts';
import { plainAddress } from './addresses.ts';
import type { WorkspaceContext } from './context.ts';
import { createFileTable, isContent } from './file-table.ts';
import { reachableFrom, usersAmong } from './use-graph.ts';

export interface NotebooksInUse {
  readonly texts: NotebookTexts;
  readonly sharedFor: (uri: string) => Shared;
  /** A notebook was opened or changed: what it uses is read, and those that use it are reread. */
  readonly changed: (uri: string) => void;
  /** Files that a notebook names came or went: its findings about them are made again. */
  readonly renew: (uri: string) => void;
  readonly closed: (uri: string) => void;
  /** A file or a folder was changed on the disk, came or went. */
  readonly fileChanged: (uri: string) => void;
  /** Resolves when everything that a text uses, and what that uses, has been read. */
  readonly readFor: (uri: string, uses: readonly string[]) => Promise<void>;
  /** Resolves when what an open notebook uses has been read, or the time for that is over. */
  readonly whenRead: (uri: string) => Promise<void>;
}

/** No more are read; any other counts as one that cannot be read. */
const MOST_USED = 200;
/** Milliseconds; what takes less is done at once, so that the next answer has it. */
const LEAST_PAUSE = 50;
const LONGEST_PAUSE = 300;
const NOT_READ: Absent = { problem: 'not readable' };

/** `missing`: of the photos and logs that notebooks name. */
export function createNotebooksInUse(
  { documents, places, openAt, read, renewed }: WorkspaceContext,
  missing: NotebookTexts['missing'],
): NotebooksInUse {
  const files = createFileTable<Snapshot>(async (address) => {
    const file = await read(address);
    return 'text' in file ? withoutUsed(address, file.text) : file;
  });
  const snapshotOf = (address: string): Snapshot | undefined => {
    const known = openAt(address)?.snapshot ?? files.get(address);
    return isContent(known) ? known : undefined;
  };
  const texts: NotebookTexts = {
    resolve: places.resolve,
    isCircle: (notebook, used) => (circles ?? leadsBack)(notebook, used),
    stateOf: (address) => {
      const known = openAt(address)?.snapshot ?? files.get(address);
      if (known) return isContent(known) ? stateGiven(known) : known;
      return files.size() >= MOST_USED && !files.has(address) ? NOT_READ : undefined;
    },
    missing,
  };
  const sharedAt = (address: string) => sharedFor(address, texts);
  const usesAt = (address: string): readonly string[] => {
    const snapshot = snapshotOf(address);
    return snapshot ? usesOf(snapshot) : [];
  };
  const targetsOf = (address: string, uses = usesAt(address)) =>
    uses.flatMap((path) => places.resolve(address, path) ?? []);
  /** Valid while no text changes. */
  let circles: NotebookTexts['isCircle'] | undefined;
  /** At a keystroke: what the notebook itself uses is not known yet, so that is not looked at. */
  const leadsBack: NotebookTexts['isCircle'] = (notebook, used) =>
    reachableFrom([used], targetsOf).has(notebook);
  const openAddresses = () => [...documents.all()].map(({ uri }) => plainAddress(uri));
  const usersOf = () => usersAmong([...openAddresses(), ...files.addresses()], targetsOf);

  async function load(address: string): Promise<void> {
    if (await files.read(address)) await Promise.all([loadUsed(address), spreadSoon(address)]);
  }

  /** As if nothing were known of what it uses: `spread` adds that, in one go for all files that come together. */
  const withoutUsed = (address: string, text: string): Snapshot => ({
    ...open(
      text,
      () => [],
      () => undefined,
    ),
    shared: sharedAt(address),
  });

  /** Reads what a notebook uses and is not known yet. */
  async function loadUsed(address: string, uses?: readonly string[]): Promise<void> {
    const unknown = targetsOf(address, uses).filter((target) => !openAt(target) && !files.has(target));
    const most = Math.max(0, MOST_USED - files.size());
    await Promise.all([...new Set(unknown)].slice(0, most).map(load));
  }

  const arrived = new Set<string>();
  let spreading: Promise<void> | undefined;
  /** Milliseconds that spreading took last: as long is waited for further files, so that half the time is left for whoever types. */
  let lastTime = 0;
  function spreadSoon(address: string): Promise<void> {
    arrived.add(address);
    spreading ??= pauseFor(lastTime).then(() => {
      spreading = undefined;
      const start = performance.now();
      const all = [...arrived];
      arrived.clear();
      spread(all);
      lastTime = performance.now() - start;
    });
    return spreading;
  }

  /** Rereads notebooks and all that use them, through others too: each once, after those that it uses. */
  function spread(from: readonly string[]): void {
    const outdated = reachableFrom(from, usersOf());
    circles = findingCircles(targetsOf);
    const order = usedFirst(outdated, (address) =>
      targetsOf(address).filter((target) => outdated.has(target)),
    );
    try {
      for (const address of order) renew(address);
    } finally {
      circles = undefined;
    }
  }

  function renew(address: string): void {
    const before = snapshotOf(address);
    if (!before) return;
    const after = refresh(before, before.shared);
    if (after.pages.every((page, i) => page === before.pages[i])) return;
    const document = openAt(address);
    if (document) {
      documents.renew(document.uri, after);
      renewed(document.uri);
    } else files.set(address, after);
  }

  function forgetUnused(): void {
    const needed = reachableFrom(
      openAddresses().flatMap((address) => targetsOf(address)),
      targetsOf,
    );
    for (const address of files.addresses())
      if (!needed.has(address) || openAt(address)) files.forget(address);
  }

  /** Readings for open notebooks; empty while there is nothing to read. */
  const readings = new Map<string, Promise<void>>();
  const changed = (uri: string) => {
    const address = plainAddress(uri);
    forgetUnused();
    spread([address]);
    const reading = Promise.all([readings.get(address), loadUsed(address)]).then(() => {
      if (readings.get(address) === reading) readings.delete(address);
    });
    readings.set(address, reading);
  };
  return {
    texts,
    sharedFor: (uri) => sharedAt(plainAddress(uri)),
    changed,
    renew: (uri) => renew(plainAddress(uri)),
    closed: (uri) => {
      const address = plainAddress(uri);
      forgetUnused();
      if ([...usersOf()(address)].length > 0) void load(address);
    },
    fileChanged: (uri) => {
      for (const address of files.at(uri)) if (!openAt(address)) void load(address);
    },
    readFor: (uri, uses) => loadUsed(plainAddress(uri), uses),
    whenRead: async (uri) => {
      const address = plainAddress(uri);
      const reading = readings.get(address);
      // What did not come in time is not waited for at the next keystroke again.
      if (reading) await inTime(reading, () => void readings.delete(address));
    },
  };
}

const pauseFor = (time: number): Promise<void> =>
  time < LEAST_PAUSE
    ? Promise.resolve()
    : new Promise((resolve) => setTimeout(resolve, Math.min(time, LONGEST_PAUSE)));
