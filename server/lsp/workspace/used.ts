/** The notebooks that open ones use: read once, kept in step with their files, and told on to those that use them. */

import type { FileText } from '../../model/snapshot/named-files.ts';
import type { Shared } from '../../model/snapshot/read-pages.ts';
import { open, refresh, type Snapshot } from '../../model/snapshot/snapshot.ts';
import { findingCircles, usedFirst } from '../../model/snapshot/use-circles.ts';
import { type NotebookTexts, sharedFor, stateGiven, usesOf } from '../../model/snapshot/used-notebooks.ts';
import type { Absent } from '../../model/state/lookup.ts';
import type { Documents, OpenDocument } from '../documents.ts';
import { inTime } from '../timeout.ts';
import { partsBelow, plainAddress } from './addresses.ts';
import type { Places } from './places.ts';

export interface UsedNotebooks {
  readonly known: NotebookTexts;
  readonly sharedFor: (uri: string) => Shared;
  /** A notebook was opened or changed: what it uses is read, and those that use it are told. */
  readonly changed: (uri: string) => void;
  /** What is known of the files that a notebook names has changed. */
  readonly readAgain: (uri: string) => void;
  readonly closed: (uri: string) => void;
  /** A file or a folder was changed on the disk, came or went. */
  readonly fileChanged: (uri: string) => void;
  /** Everything that a text uses, and what that uses, has been read. */
  readonly readFor: (uri: string, uses: readonly string[]) => Promise<void>;
  /** Waits until what an open notebook uses has been read, though not for ever. */
  readonly whenRead: (uri: string) => Promise<void>;
}

interface UsedNotebooksDeps {
  readonly documents: Documents;
  readonly places: Places;
  readonly read: (uri: string) => Promise<FileText>;
  readonly missing: NotebookTexts['missing'];
  /** A notebook reads differently now, though its text is the same. */
  readonly renewed: (uri: string) => void;
}

/** More than this are not read; one that is not counts as one that cannot be read. */
const MOST_USED = 200;
/** Milliseconds; what takes less is done at once, so that the next answer has it. */
const LEAST_PAUSE = 50;
const LONGEST_PAUSE = 300;
const NOT_READ: Absent = { problem: 'not readable' };

export function createUsed({ documents, places, read, missing, renewed }: UsedNotebooksDeps): UsedNotebooks {
  /** Undefined while it is being read. */
  const files = new Map<string, Snapshot | Absent | undefined>();
  const openAt = (name: string): OpenDocument | undefined => {
    for (const document of documents.all()) if (plainAddress(document.uri) === name) return document;
    return undefined;
  };
  const snapshotOf = (name: string): Snapshot | undefined => {
    const file = openAt(name)?.snapshot ?? files.get(name);
    return file && 'pages' in file ? file : undefined;
  };
  const known: NotebookTexts = {
    resolve: places.resolve,
    isCircle: (notebook, used) => (circles ?? lookingForCircle)(notebook, used),
    stateOf: (name) => {
      const snapshot = snapshotOf(name);
      if (snapshot) return stateGiven(snapshot);
      const file = files.get(name);
      if (file) return 'problem' in file ? file : undefined;
      return files.size >= MOST_USED && !files.has(name) ? NOT_READ : undefined;
    },
    missing,
  };
  const sharedAt = (name: string) => sharedFor(name, known);
  const usesAt = (name: string): readonly string[] => {
    const snapshot = snapshotOf(name);
    return snapshot ? usesOf(snapshot) : [];
  };
  const targetsOf = (name: string, uses = usesAt(name)) =>
    uses.flatMap((path) => places.resolve(name, path) ?? []);
  /** Holds while no text changes. */
  let circles: NotebookTexts['isCircle'] | undefined;
  /** At a keystroke: what the notebook itself uses is not known yet, and not asked. */
  const lookingForCircle: NotebookTexts['isCircle'] = (notebook, used) =>
    reachedFrom([used], targetsOf).has(notebook);
  const names = () => [...[...documents.all()].map(({ uri }) => plainAddress(uri)), ...files.keys()];

  async function load(name: string): Promise<void> {
    files.set(name, files.get(name));
    const file = await read(name);
    // Meanwhile it may have been opened, or be used no more.
    if (!files.has(name)) return;
    files.set(name, 'text' in file ? unspread(name, file.text) : file);
    await Promise.all([follow(name), spreadSoon(name)]);
  }

  /** As if nothing were known of what it uses: that is looked for in one go with the others that come. */
  const unspread = (name: string, text: string): Snapshot => ({
    ...open(
      text,
      () => [],
      () => undefined,
    ),
    shared: sharedAt(name),
  });

  /** Reads what is used and not yet known. */
  async function follow(name: string, uses?: readonly string[]): Promise<void> {
    const unknown = targetsOf(name, uses).filter((target) => !openAt(target) && !files.has(target));
    const most = Math.max(0, MOST_USED - files.size);
    await Promise.all([...new Set(unknown)].slice(0, most).map(load));
  }

  const coming = new Set<string>();
  let spreading: Promise<void> | undefined;
  /** Milliseconds that it took last: as long is waited for others, so that half the time is left for whoever types. */
  let took = 0;
  function spreadSoon(name: string): Promise<void> {
    coming.add(name);
    spreading ??= othersCome(took).then(() => {
      spreading = undefined;
      const start = performance.now();
      const all = [...coming];
      coming.clear();
      spread(all);
      took = performance.now() - start;
    });
    return spreading;
  }

  /** Reads again what has come and all that use it, through others too: each once, after those that it uses. */
  function spread(from: readonly string[]): void {
    const readAgain = reachedFrom(from, findingUsers(names(), targetsOf));
    circles = findingCircles(targetsOf);
    const order = usedFirst(readAgain, (name) => targetsOf(name).filter((target) => readAgain.has(target)));
    try {
      for (const name of order) renew(name);
    } finally {
      circles = undefined;
    }
  }

  function renew(name: string): void {
    const before = snapshotOf(name);
    if (!before) return;
    const after = refresh(before, before.shared);
    if (after.pages.every((page, i) => page === before.pages[i])) return;
    const document = openAt(name);
    if (document) {
      documents.renew(document.uri, after);
      renewed(document.uri);
    } else files.set(name, after);
  }

  /** What no open notebook uses any more is let go. */
  function letGo(): void {
    const needed = reachedFrom(
      [...documents.all()].flatMap(({ uri }) => targetsOf(plainAddress(uri))),
      targetsOf,
    );
    for (const name of files.keys()) if (!needed.has(name) || openAt(name)) files.delete(name);
  }

  /** By notebook; only while there is something to read. */
  const readings = new Map<string, Promise<void>>();
  const changed = (uri: string) => {
    const name = plainAddress(uri);
    letGo();
    spread([name]);
    const reading = Promise.all([readings.get(name), follow(name)]).then(() => {
      if (readings.get(name) === reading) readings.delete(name);
    });
    readings.set(name, reading);
  };
  return {
    known,
    sharedFor: (uri) => sharedAt(plainAddress(uri)),
    changed,
    readAgain: (uri) => renew(plainAddress(uri)),
    closed: (uri) => {
      const name = plainAddress(uri);
      letGo();
      if (findingUsers(names(), targetsOf)(name).length > 0) void load(name);
    },
    fileChanged: (uri) => {
      const changes = plainAddress(uri);
      for (const name of files.keys())
        if ((name === changes || partsBelow(changes, name)) && !openAt(name)) void load(name);
    },
    readFor: (uri, uses) => follow(plainAddress(uri), uses),
    whenRead: async (uri) => {
      const name = plainAddress(uri);
      const reading = readings.get(name);
      // What did not come in time is not waited for at the next keystroke again.
      if (reading) await inTime(reading, () => void readings.delete(name));
    },
  };
}

const othersCome = (pause: number): Promise<void> =>
  pause < LEAST_PAUSE
    ? Promise.resolve()
    : new Promise((resolve) => setTimeout(resolve, Math.min(pause, LONGEST_PAUSE)));

function findingUsers(
  names: Iterable<string>,
  targetsOf: (name: string) => Iterable<string>,
): (name: string) => readonly string[] {
  const users = new Map<string, Set<string>>();
  for (const name of names)
    for (const target of targetsOf(name)) {
      const known = users.get(target);
      if (known) known.add(name);
      else users.set(target, new Set([name]));
    }
  return (name) => [...(users.get(name) ?? [])];
}

/** Those and all that they use, through others too. */
function reachedFrom(
  names: Iterable<string>,
  targetsOf: (name: string) => Iterable<string>,
): ReadonlySet<string> {
  const reached = new Set(names);
  for (const name of reached) for (const target of targetsOf(name)) reached.add(target);
  return reached;
}
