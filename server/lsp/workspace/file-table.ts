/**
 * A table of files, with the state of each: being read for the first time, read, or why it could not be read (missing, too
 * large, ...). A file that is read again keeps its state until the reading ends.
 */
import type { Absent } from '../../model/state/lookup.ts';
import { partsBelow, plainAddress } from './addresses.ts';

interface FileTable<Content extends object> {
  /** Undefined while the file is being read for the first time, and for one that is not in the table. */
  readonly get: (address: string) => Content | Absent | undefined;
  readonly has: (address: string) => boolean;
  readonly size: () => number;
  readonly addresses: () => readonly string[];
  /** Milliseconds since the last reading of a file ended; infinite where none has. */
  readonly age: (address: string) => number;
  /** Reads a file, which is in the table from now on. Of several readings at once the last counts. @returns whether its state has changed. */
  readonly read: (address: string) => Promise<boolean>;
  /** Sets the content of a file that is in the table, without reading it. */
  readonly set: (address: string, content: Content) => void;
  /** Takes a file out of the table; a reading under way is ignored when it ends. */
  readonly forget: (address: string) => void;
  /** The files at a URI or in a folder there, when an editor reports that it changed. */
  readonly at: (uri: string) => readonly string[];
}

interface FileRow<Content> {
  readonly known: Content | Absent | undefined;
  /** The last reading that has begun, while it is under way. */
  readonly reading: Promise<boolean> | undefined;
  /** As `performance.now` gives it. */
  readonly readAt: number;
}

const NEVER = Number.NEGATIVE_INFINITY;

/** `readFile`: the content of a file, or why there is none. Where it fails, so does `read`, and the file is out of the table. */
export function createFileTable<Content extends object>(
  readFile: (address: string) => Promise<Content | Absent>,
): FileTable<Content> {
  const rows = new Map<string, FileRow<Content>>();

  function read(address: string): Promise<boolean> {
    const before = rows.get(address);
    const reading: Promise<boolean> = readFile(address).then(
      (next) => {
        const row = rows.get(address);
        // Forgotten meanwhile, or read once more: then that reading has the answer.
        if (row?.reading !== reading) return row?.reading ?? false;
        const known = isSameAbsence(row.known, next) ? row.known : next;
        rows.set(address, { known, reading: undefined, readAt: performance.now() });
        return known !== row.known;
      },
      (error) => {
        if (rows.get(address)?.reading === reading) rows.delete(address);
        throw error;
      },
    );
    rows.set(address, { known: before?.known, reading, readAt: before?.readAt ?? NEVER });
    return reading;
  }

  return {
    get: (address) => rows.get(address)?.known,
    has: (address) => rows.has(address),
    size: () => rows.size,
    addresses: () => [...rows.keys()],
    age: (address) => performance.now() - (rows.get(address)?.readAt ?? NEVER),
    read,
    set: (address, content) => {
      const row = rows.get(address);
      if (row) rows.set(address, { ...row, known: content });
    },
    forget: (address) => void rows.delete(address),
    at: (uri) => {
      const changed = plainAddress(uri);
      return [...rows.keys()].filter((address) => address === changed || partsBelow(changed, address));
    },
  };
}

/** The same object stays, so that what was made from it is known to be up to date. */
const isSameAbsence = (before: object | undefined, after: object): boolean =>
  before !== undefined && 'problem' in before && 'problem' in after && before.problem === after.problem;

/** True of a file that has been read and has content. */
export const isContent = <Content extends object>(known: Content | Absent | undefined): known is Content =>
  known !== undefined && !('problem' in known);
