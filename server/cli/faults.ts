/** What goes wrong with a file, in words: by the codes of the system, and by those for what the system lets pass. */

/** No more is read of anything that is to be a notebook, bytes: some three million lines. */
export const LARGEST_NOTEBOOK = 100e6;

/** What the system would let pass. */
const OURS = {
  CHANGED:
    'has been changed by another program since it was read, so it is left as it is; run this once more',
  SEVERAL_NAMES:
    'has further names on the disk (hard links), which would keep the old text, so it is left as it is; print it laid out without --write',
  FOLDER_CLOSED:
    'is left as it is: its folder takes no new file (no permission), and a file is only ever replaced by a whole new one',
  TOO_LARGE: `is too large to be read: more than ${LARGEST_NOTEBOOK / 1e6} MB`,
  FOLDER: 'is a folder, not a notebook',
  PIPE: 'is a pipe, not a file; what comes through a pipe is read as the standard input: -',
  SOCKET: 'is a socket, not a file',
  DEVICE: 'is a device, not a file',
} as const;

export type Fault = keyof typeof OURS;

/** To be thrown, as Node throws its own. */
export const fault = (code: Fault): Error => Object.assign(new Error(OURS[code]), { code });

export const isFault = (error: unknown, code: Fault): boolean => codeOf(error) === code;

const EITHER = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'there is no such file',
  EACCES: 'no permission',
  EPERM: 'no permission',
  ELOOP: 'its symbolic links lead round in a circle',
  ENAMETOOLONG: 'its name is too long',
} as const;

const READING: ReadonlyMap<string, string> = new Map(
  Object.entries({
    ...EITHER,
    ...OURS,
    EISDIR: OURS.FOLDER,
    ERR_ENCODING_INVALID_ENCODED_DATA: 'is not text in UTF-8',
    ERR_STRING_TOO_LONG: OURS.TOO_LARGE,
  }),
);

const WRITING: ReadonlyMap<string, string> = new Map(
  Object.entries({
    ...EITHER,
    ENOENT: 'it has gone since it was read',
    EROFS: 'nothing can be written where it lies (read-only)',
    ENOSPC: 'there is no space left on the disk',
    EDQUOT: 'your share of the disk is full',
    EFBIG: 'it would be larger than a file may be here',
    EIO: 'the disk failed',
    EBUSY: 'another program holds it',
  }),
);

const codeOf = (error: unknown): string =>
  error instanceof Error && 'code' in error ? String(error.code) : String(error);

/** Why a file could not be read. */
export function whyUnread(error: unknown): string {
  const code = codeOf(error);
  return READING.get(code) ?? `could not be read (${code})`;
}

/** Why a file was not written; it is as it was. */
export function whyUnwritten(error: unknown): string {
  const code = codeOf(error);
  if (Object.hasOwn(OURS, code)) return OURS[code as Fault];
  return `left as it was: ${WRITING.get(code) ?? code}`;
}

/** Why an answer did not get out. */
export function whyUnsaid(error: unknown): string {
  const code = codeOf(error);
  return `could not be written to the end: ${WRITING.get(code) ?? code}`;
}
