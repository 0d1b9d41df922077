/** From what stands on the command line to the texts of notebooks, or to why there is none. */
import { whyUnread } from './faults.ts';
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

/** Says of a path why nothing can be done with it. */
export type Tell = (path: string, problem: string) => void;

/** Each once, however often and by whatever folder it was named. */
export function pathsOf(args: readonly string[], terminal: Terminal, tell: Tell): ReadonlySet<string> {
  const paths = new Set<string>();
  for (const argument of args.length > 0 ? args : ['.']) {
    for (const path of notebooksOf(argument, terminal, tell)) paths.add(path);
  }
  return paths;
}

/** The notebooks meant by an argument: the file itself, or every one below a folder. */
function notebooksOf(argument: string, terminal: Terminal, tell: Tell): readonly string[] {
  if (argument === STANDARD_INPUT || !terminal.isFolder(argument)) return [argument];
  let isRead = true;
  const paths = below(argument, terminal, (folder, problem) => {
    isRead = false;
    tell(folder, problem);
  });
  if (isRead && paths.length === 0) tell(folderName(argument), `holds no notebook (*${ENDING})`);
  return paths;
}

/** In order of name; hidden folders and those of installed packages are passed over, and those that cannot be read are told. */
function below(folder: string, terminal: Terminal, tell: Tell): readonly string[] {
  const start = folder === '.' ? '' : folder.endsWith('/') ? folder : `${folder}/`;
  return namesIn(folder, terminal, tell).flatMap((name) =>
    name.endsWith('/')
      ? below(start + name, terminal, tell)
      : name.toLowerCase().endsWith(ENDING)
        ? [start + name]
        : [],
  );
}

function namesIn(folder: string, terminal: Terminal, tell: Tell): readonly string[] {
  try {
    return terminal
      .list(folder)
      .filter((name) => !PASSED_OVER.test(name))
      .toSorted();
  } catch (error) {
    tell(folderName(folder), whyUnread(error));
    return [];
  }
}

const folderName = (folder: string): string => (folder === '.' ? 'the current folder' : folder);

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
    return { problem: whyUnread(error) };
  }
}
