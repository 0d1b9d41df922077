/**
 * Which of the photos and logs that notebooks name are missing. Looked up in the background, a few at a time, so that no
 * keystroke waits for a disk or for an editor that has the files.
 */

import { filesAskedBy } from '../../model/snapshot/used-notebooks.ts';
import type { Absent } from '../../model/state/lookup.ts';
import { yieldToEventLoop } from '../yielding.ts';
import { plainAddress } from './addresses.ts';
import type { WorkspaceContext } from './context.ts';
import { createFileTable, isContent } from './file-table.ts';

export interface FilePresence {
  /** That a file is missing; undefined where it is there, or has not been looked up yet. */
  readonly missing: (address: string) => Absent | undefined;
  /** A notebook was opened or changed. `isNew`: the files it names are looked up again, whatever is known. */
  readonly changed: (uri: string, isNew: boolean) => void;
  /** A file or a folder was changed on the disk, came or went. */
  readonly fileChanged: (uri: string) => void;
  /** Resolves when files that are not known, or were missing lately, have been looked up. */
  readonly lookFor: (addresses: readonly string[]) => Promise<void>;
}

/** Files in one turn; typing goes first. */
const AT_ONCE = 20;
/** Milliseconds before a missing file is looked up again: an editor that does not report changed files is asked this often. */
const AGAIN_AFTER = 2000;
/** More than this are forgotten, and looked up again. */
const MOST_KNOWN = 20_000;

const PRESENT = { isPresent: true };

/** `renew`: rereads an open notebook that names a file which came or went. */
export function createFilePresence(context: WorkspaceContext, renew: (uri: string) => void): FilePresence {
  const { documents, places, absence, log } = context;
  const files = createFileTable<typeof PRESENT>(async (address) =>
    (await absence(address)) === 'missing'
      ? { problem: 'missing', lookedAt: places.placeOf(address).parts.join('/') }
      : PRESENT,
  );
  const missing = (address: string): Absent | undefined => {
    const known = files.get(address);
    return isContent(known) ? undefined : known;
  };
  const targetsOf = (uri: string): readonly string[] => {
    const document = documents.get(uri);
    if (!document) return [];
    return filesAskedBy(document.snapshot).flatMap((path) => places.resolve(plainAddress(uri), path) ?? []);
  };
  const isDue = (address: string): boolean =>
    files.get(address) === undefined || (missing(address) !== undefined && files.age(address) > AGAIN_AFTER);

  let looking: Promise<void> = Promise.resolve();
  /** Lists of files are looked up one after another, so that a disk has few at once. */
  function look(addresses: readonly string[]): Promise<void> {
    if (addresses.length > 0)
      looking = looking.then(() => lookNow(addresses)).catch((error) => log(String(error)));
    return looking;
  }

  async function lookNow(addresses: readonly string[]): Promise<void> {
    const changed = new Set<string>();
    for (let i = 0; i < addresses.length; i += AT_ONCE) {
      await yieldToEventLoop();
      if (files.size() > MOST_KNOWN) for (const address of files.addresses()) files.forget(address);
      const some = addresses.slice(i, i + AT_ONCE);
      const changes = await Promise.all(some.map(hasChanged));
      for (const [j, address] of some.entries()) if (changes[j]) changed.add(address);
    }
    if (changed.size === 0) return;
    for (const { uri } of [...documents.all()])
      if (targetsOf(uri).some((address) => changed.has(address))) renew(uri);
  }

  /** Whether a file came or went: one that is there at the first look makes no difference. */
  async function hasChanged(address: string): Promise<boolean> {
    const before = missing(address);
    await files.read(address);
    return missing(address) !== before;
  }

  return {
    missing,
    changed: (uri, isNew) => {
      const targets = targetsOf(uri);
      void look(isNew ? targets : targets.filter(isDue));
    },
    fileChanged: (uri) => void look(files.at(uri)),
    lookFor: (addresses) => look(addresses.filter(isDue)),
  };
}
