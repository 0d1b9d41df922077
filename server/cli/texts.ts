/** From what stands on the command line to the texts of notebooks, or to why there is none. */
import type { Terminal } from './terminal.ts';

export const STANDARD_INPUT = '-';
const ENDING = '.tappet';
const BYTE_ORDER_MARK = [0xef, 0xbb, 0xbf];
const PASSED_OVER = /^(?:\.|node_modules\/$)/;

export type Text =
  | {
      readonly text: string;
      /** What stands before the text in the file: a byte order mark, or nothing. */
      readonly mark: '\uFEFF' | '';
      /** Of the file. */
      readonly bytes: number;
    }
  | { readonly problem: string };
export type Paths = { readonly paths: readonly string[] } | { readonly problem: string };

/** Says of a path why nothing can be done with it. */
export type Tell = (path: string, problem: string) => void;

/** Each once, however often and by whatever folder it was named. */
export function pathsOf(args: readonly string[], terminal: Terminal, tell: Tell): ReadonlySet<string> {
  const paths = new Set<string>();
  for (const argument of args.length > 0 ? args : ['.']) {
    const found = notebooksOf(argument, terminal);
    if ('problem' in found) tell(argument === '.' ? 'the current folder' : argument, found.problem);
    else for (const path of found.paths) paths.add(path);
  }
  return paths;
}

/** The notebooks meant by an argument: the file itself, or every one below a folder. */
function notebooksOf(argument: string, terminal: Terminal): Paths {
  if (argument === STANDARD_INPUT || !terminal.isFolder(argument)) return { paths: [argument] };
  try {
    const paths = below(argument, terminal);
    return paths.length > 0 ? { paths } : { problem: `holds no notebook (*${ENDING})` };
  } catch (error) {
    return { problem: problemOf(error) };
  }
}

/** In order of name; hidden folders and those of installed packages are passed over. */
function below(folder: string, terminal: Terminal): readonly string[] {
  const names = terminal.list(folder).filter((name) => !PASSED_OVER.test(name));
  const start = folder === '.' ? '' : folder.endsWith('/') ? folder : `${folder}/`;
  return names
    .toSorted()
    .flatMap((name) =>
      name.endsWith('/')
        ? below(start + name, terminal)
        : name.toLowerCase().endsWith(ENDING)
          ? [start + name]
          : [],
    );
}

/** As `textOf`, of a notebook that is to be held whole; one for which there is not the memory has none. */
export function wholeTextOf(path: string, terminal: Terminal): Text {
  const read = textOf(path, terminal);
  if ('problem' in read || read.bytes <= terminal.mostBytes) return read;
  return { problem: tooLarge(read.bytes, terminal.mostBytes) };
}

const tooLarge = (bytes: number, most: number): string =>
  `is too large to be held whole: ${megabytes(bytes)}, where the memory Node has is enough for ${megabytes(most)}. "tappet check" reads it all the same. Part it into several notebooks, one for each year perhaps, that "use" one with what they share; or give Node more memory: NODE_OPTIONS=--max-old-space-size=${Math.ceil((bytes * HEAP_A_BYTE) / 1e6)}`;

const megabytes = (bytes: number): string => `${(bytes / 1e6).toPrecision(3)} MB`;

/**
 * Bytes of memory for each byte of a notebook that is held whole. Measured: 32 once it is opened, 55 with all that is worked
 * out of it; as much again for what is let go on the way.
 */
export const HEAP_A_BYTE = 110;

/** The text of a file, without a byte order mark. */
export function textOf(path: string, terminal: Terminal): Text {
  try {
    const bytes = terminal.read(path);
    const isMarked = BYTE_ORDER_MARK.every((byte, i) => bytes[i] === byte);
    return {
      text: new TextDecoder('utf-8', { fatal: true }).decode(bytes),
      mark: isMarked ? '\uFEFF' : '',
      bytes: bytes.length,
    };
  } catch (error) {
    return { problem: problemOf(error) };
  }
}

const PROBLEMS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    ENOENT: 'there is no such file',
    ENOTDIR: 'there is no such file',
    EACCES: 'no permission',
    EPERM: 'no permission',
    EROFS: 'lies where nothing can be written',
    EISDIR: 'is a folder, not a notebook',
    ERR_ENCODING_INVALID_ENCODED_DATA: 'is not text in UTF-8',
    ERR_FS_FILE_TOO_LARGE: 'is too large to be read',
    ERR_STRING_TOO_LONG: 'is too large to be read',
  }),
);

/** Why reading or writing failed, in words. */
export function problemOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : 'unknown';
  return PROBLEMS.get(code) ?? `could not be read (${code})`;
}
