/**
 * The photos and logs that notebooks name: whether they are there. Looked for behind the answers, a few at a time, so that no
 * keystroke waits for a disk or for an editor that has the files.
 */

import { filesAskedBy } from '../../model/snapshot/used-notebooks.ts';
import type { Absent } from '../../model/state/lookup.ts';
import type { Documents } from '../documents.ts';
import { yieldToEventLoop } from '../yielding.ts';
import { partsBelow, plainAddress } from './addresses.ts';
import type { Places } from './places.ts';

export interface NamedFiles {
  /** That a file is not there; undefined where it is, or was not looked for yet. */
  readonly missing: (address: string) => Absent | undefined;
  /** A notebook was opened or changed. `isNew`: what it names is looked for again, whatever was known. */
  readonly changed: (uri: string, isNew: boolean) => void;
  /** A file or a folder was changed on the disk, came or went. */
  readonly fileChanged: (uri: string) => void;
  /** Resolves when what is not known, or was not there lately, has been looked for. */
  readonly lookFor: (addresses: readonly string[]) => Promise<void>;
}

interface NamedFilesDeps {
  readonly documents: Documents;
  readonly places: Places;
  readonly isMissing: (address: string) => Promise<boolean>;
  /** What is known of the files that a notebook names has changed. */
  readonly renewed: (uri: string) => void;
  readonly log: (message: string) => void;
}

/** In one turn; typing goes first. */
const AT_ONCE = 20;
/** Milliseconds in which what was not there is not looked for again: an editor that does not tell of files is asked this often. */
const AGAIN_AFTER = 2000;
/** More than this are forgotten, and looked for again. */
const MOST_KNOWN = 20_000;

interface Look {
  readonly absent: Absent | undefined;
  /** As `performance.now` gives it. */
  readonly at: number;
}

export function createNamedFiles({ documents, places, isMissing, renewed, log }: NamedFilesDeps): NamedFiles {
  const known = new Map<string, Look>();
  let looking: Promise<void> = Promise.resolve();

  const targetsOf = (uri: string): readonly string[] => {
    const document = documents.get(uri);
    if (!document) return [];
    return filesAskedBy(document.snapshot).flatMap((path) => places.resolve(plainAddress(uri), path) ?? []);
  };
  const isDue = (address: string): boolean => {
    const look = known.get(address);
    return !look || (look.absent !== undefined && performance.now() - look.at > AGAIN_AFTER);
  };

  /** One after another, so that an older look never has the last word. */
  function look(addresses: readonly string[]): Promise<void> {
    if (addresses.length > 0)
      looking = looking.then(() => lookNow(addresses)).catch((error) => log(String(error)));
    return looking;
  }

  async function lookNow(addresses: readonly string[]): Promise<void> {
    const turned = new Set<string>();
    for (let i = 0; i < addresses.length; i += AT_ONCE) {
      await yieldToEventLoop();
      const some = addresses.slice(i, i + AT_ONCE);
      const missing = await Promise.all(some.map(isMissing));
      for (const [j, address] of some.entries())
        if (turns(address, missing[j] as boolean)) turned.add(address);
    }
    if (turned.size === 0) return;
    for (const { uri } of [...documents.all()])
      if (targetsOf(uri).some((address) => turned.has(address))) renewed(uri);
  }

  /** @returns whether something else is known now. */
  function turns(address: string, missing: boolean): boolean {
    const before = known.get(address)?.absent;
    const lookedAt = places.placeOf(address).parts.join('/');
    const absent = missing ? (before ?? ({ problem: 'missing', lookedAt } as const)) : undefined;
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(address, { absent, at: performance.now() });
    return before !== absent;
  }

  return {
    missing: (address) => known.get(address)?.absent,
    changed: (uri, isNew) => {
      const targets = targetsOf(uri);
      void look(isNew ? targets : targets.filter(isDue));
    },
    fileChanged: (uri) => {
      const changed = plainAddress(uri);
      void look([...known.keys()].filter((name) => name === changed || partsBelow(changed, name)));
    },
    lookFor: (addresses) => look(addresses.filter(isDue)),
  };
}
