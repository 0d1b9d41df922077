/**
 * Writing a file, whole or not at all; no file is written in any other way. Whatever happens on the way (a full disk, a kill, the power),
 * the file is the old one or the new one. Our own, since the packages for it (two were read) write once without looking how much
 * of it was taken, so that a nearly full disk leaves half a file in place of the whole one; none compares the file with what was
 * read, or looks at hard links.
 */
/// <reference types="node" />
import { randomUUID } from 'node:crypto';
import {
  accessSync,
  closeSync,
  constants,
  fchmodSync,
  fchownSync,
  fsyncSync,
  lstatSync,
  openSync,
  readdirSync,
  realpathSync,
  renameSync,
  type Stats,
  statSync,
  unlinkSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { fault, isFault } from './faults.ts';
import { needRegular, readRegular } from './read-file.ts';

/**
 * Puts `after` in the place of a file that holds `before`. A symbolic link stays one, and the file behind it is replaced. Mode,
 * owner and group are kept as far as the user may; access lists and other attributes are not. A file with further names (hard
 * links) is left alone: they would keep the old text. So is one that may not be written, and one in a folder that takes no new
 * file. A kill at the wrong moment may leave a `.tappet-….tmp` beside the file, never anything else; the next write to a
 * file of that folder takes it away.
 * Throws as Node does, and with the codes of `faults.ts`; then the file is as it was.
 */
export function replaceFile(path: string, before: string, after: string): void {
  const target = realpathSync(path);
  const old = statSync(target);
  needRegular(old);
  if (old.nlink > 1) throw fault('SEVERAL_NAMES');
  accessSync(target, constants.W_OK);
  const temporary = join(dirname(target), `${BEFORE}${randomUUID()}${AFTER}`);
  try {
    writeNew(temporary, Buffer.from(after), old);
    if (realpathSync(path) !== target || !holds(target, Buffer.from(before))) throw fault('CHANGED');
    renameSync(temporary, target);
  } catch (error) {
    attempt(() => unlinkSync(temporary));
    throw error;
  }
  attempt(() => flushFolder(dirname(target)));
  attempt(() => removeStale(dirname(target)));
}

/** What a kill left behind. Only regular files with our own sort of name, and old enough that nobody is writing them, ms. */
const STALE_AFTER = 60_000;
const [BEFORE, AFTER] = ['.tappet-', '.tmp'];
const UUID_LENGTH = 36;

const isTemporary = (name: string): boolean =>
  name.startsWith(BEFORE) &&
  name.endsWith(AFTER) &&
  name.length === BEFORE.length + UUID_LENGTH + AFTER.length;

function removeStale(folder: string): void {
  for (const name of readdirSync(folder)) {
    if (!isTemporary(name)) continue;
    const path = join(folder, name);
    attempt(() => {
      const found = lstatSync(path);
      if (found.isFile() && Date.now() - found.mtimeMs > STALE_AFTER) unlinkSync(path);
    });
  }
}

/** On the disk, not only on its way there. */
function writeNew(path: string, bytes: Uint8Array, like: Stats): void {
  const file = openNew(path);
  try {
    for (let done = 0; done < bytes.length; ) done += writeSync(file, bytes, done);
    // The group first: who may not give a file away may still give it to a group of theirs. The mode last: a new owner clears some of it.
    attempt(() => fchownSync(file, UNCHANGED, like.gid));
    attempt(() => fchownSync(file, like.uid, UNCHANGED));
    attempt(() => fchmodSync(file, like.mode & PERMISSIONS));
    fsyncSync(file);
  } catch (error) {
    attempt(() => closeSync(file));
    throw error;
  }
  closeSync(file);
}

const UNCHANGED = -1;
const PERMISSIONS = 0o7777;
/** Nobody else reads it until it has the mode of the old one. */
const OWN_ONLY = 0o600;

function openNew(path: string): number {
  try {
    return openSync(path, 'wx', OWN_ONLY);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    throw code === 'EACCES' || code === 'EPERM' ? fault('FOLDER_CLOSED') : error;
  }
}

function holds(path: string, bytes: Buffer): boolean {
  try {
    return bytes.equals(readRegular(path, bytes.length));
  } catch (error) {
    if (isFault(error, 'TOO_LARGE')) return false;
    throw error;
  }
}

/** So that the new name, too, outlives a loss of power. Not every system can do this. */
function flushFolder(path: string): void {
  const folder = openSync(path, 'r');
  try {
    fsyncSync(folder);
  } finally {
    closeSync(folder);
  }
}

/** Runs a step whose failure is no reason to give up. */
function attempt(action: () => void): void {
  try {
    action();
  } catch {
    // Nothing is lost without it.
  }
}
