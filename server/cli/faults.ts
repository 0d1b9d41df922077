/** Messages for everything that goes wrong with a file: by the codes of the system, and by our own for what the system allows. */

/** Bytes, some three million lines: no larger notebook is read. */
export const LARGEST_NOTEBOOK = 100e6;

/** Faults that the system would allow. */
const OURS = {
  CHANGED: 'not written: another program has changed it since it was read. Run this again',
  SEVERAL_NAMES:
    'not written: it has other names on the disk (hard links), which would keep the old text. Without --write the formatted text is printed',
  FOLDER_CLOSED:
    'not written: no permission to create a file in its folder. A file is replaced by a whole new one or not at all',
  TOO_LARGE: `too large: more than ${LARGEST_NOTEBOOK / 1e6} MB`,
  FOLDER: 'this is a folder, not a notebook',
  PIPE: 'this is a pipe, not a file. Use - to read the standard input',
  SOCKET: 'this is a socket, not a file',
  DEVICE: 'this is a device, not a file',
} as const;

export type Fault = keyof typeof OURS;

/** To be thrown, as Node throws its own. */
export const fault = (code: Fault): Error => Object.assign(new Error(OURS[code]), { code });

export const isFault = (error: unknown, code: Fault): boolean => codeOf(error) === code;

const EITHER = {
  ENOENT: 'no such file',
  ENOTDIR: 'no such file',
  EACCES: 'no permission',
  EPERM: 'no permission',
  ELOOP: 'its symbolic links form a loop',
  ENAMETOOLONG: 'the name is too long',
} as const;

const READING: ReadonlyMap<string, string> = new Map(
  Object.entries({
    ...EITHER,
    ...OURS,
    EISDIR: OURS.FOLDER,
    ERR_ENCODING_INVALID_ENCODED_DATA: 'not UTF-8 text',
    ERR_STRING_TOO_LONG: OURS.TOO_LARGE,
  }),
);

const WRITING: ReadonlyMap<string, string> = new Map(
  Object.entries({
    ...EITHER,
    ENOENT: 'it was removed after it was read',
    EROFS: 'the disk is read-only',
    ENOSPC: 'no space left on the disk',
    EDQUOT: 'your disk quota is used up',
    EFBIG: 'over the size limit for files here',
    EIO: 'the disk failed',
    EBUSY: 'another program is using it',
  }),
);

const codeOf = (error: unknown): string =>
  error instanceof Error && 'code' in error ? String(error.code) : String(error);

/** Why a file could not be read. */
export function whyUnread(error: unknown): string {
  const code = codeOf(error);
  return READING.get(code) ?? `can't be read (${code})`;
}

/** Why a file was not written; it is unchanged. */
export function whyUnwritten(error: unknown): string {
  const code = codeOf(error);
  if (Object.hasOwn(OURS, code)) return OURS[code as Fault];
  return `not written: ${WRITING.get(code) ?? code}`;
}

/** Why the output failed. */
export function whyOutputFailed(error: unknown): string {
  const code = codeOf(error);
  return `was cut short: ${WRITING.get(code) ?? code}`;
}
