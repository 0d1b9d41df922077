/** Reading from the disk: regular files only, up to a limit, so that reading always ends. */
/// <reference types="node" />
import { closeSync, constants, fstatSync, openSync, readSync, type Stats, statSync } from 'node:fs';
import { type Fault, fault } from './faults.ts';

/**
 * The bytes of a regular file: a pipe may never end, and a device never does. Throws as Node does, and with the codes of `faults.ts`.
 * @param largest bytes; throws for a larger file.
 */
export function readRegular(path: string, largest: number): Buffer {
  // Checked before it is opened, since opening alone can block or start a device; and again, since it may be another file by then.
  needRegular(statSync(path));
  const file = openSync(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
  try {
    needRegular(fstatSync(file));
    return readUpTo(file, largest);
  } finally {
    closeSync(file);
  }
}

/** All that comes from an open file or the standard input, to its end. @param largest bytes; throws for more. */
export function readUpTo(file: number, largest: number): Buffer {
  const pieces: Buffer[] = [];
  let length = 0;
  for (;;) {
    const piece = Buffer.allocUnsafe(Math.min(PIECE, largest + 1 - length));
    const read = readSync(file, piece);
    if (read === 0) return Buffer.concat(pieces, length);
    pieces.push(piece.subarray(0, read));
    length += read;
    if (length > largest) throw fault('TOO_LARGE');
  }
}

/** Bytes. */
const PIECE = 1 << 20;

/** Throws for anything but a regular file. */
export function needRegular(stats: Stats): void {
  if (!stats.isFile()) throw fault(KINDS.find(([isIt]) => isIt(stats))?.[1] ?? 'DEVICE');
}

const KINDS: readonly (readonly [isIt: (stats: Stats) => boolean, problem: Fault])[] = [
  [(stats) => stats.isDirectory(), 'FOLDER'],
  [(stats) => stats.isFIFO(), 'PIPE'],
  [(stats) => stats.isSocket(), 'SOCKET'],
];
