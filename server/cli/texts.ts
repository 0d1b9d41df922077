/**
 * The notebooks named on the command line: their paths and texts, or why there is none. The walk through folders is our own:
 * `tinyglobby` 0.2.17 leaves out a folder it may not read without a word, so that notebooks in it would pass for checked.
 */
import { whyUnread } from './faults.ts';
import type { Terminal } from './terminal.ts';

export const STANDARD_INPUT = '-';
const ENDING = '.tappet';
const BYTE_ORDER_MARK = [0xef, 0xbb, 0xbf];
const SKIPPED = /^(?:\.|node_modules\/$)/;

export type Text =
  | {
      readonly text: string;
      /** The byte order mark before the text in the file, or nothing. */
      readonly mark: '\uFEFF' | '';
      /** Size of the file. */
      readonly bytes: number;
    }
  | { readonly problem: string };

/** Reports why nothing can be done with a path. */
export type ReportProblem = (path: string, problem: string) => void;

/** Each path once, however often and by whatever folder it was named. */
export function pathsOf(
  args: readonly string[],
  terminal: Terminal,
  report: ReportProblem,
): ReadonlySet<string> {
  const paths = new Set<string>();
  for (const argument of args.length > 0 ? args : ['.']) {
    for (const path of notebooksOf(argument, terminal, report)) paths.add(path);
  }
  return paths;
}

/** The notebooks meant by an argument: the file itself, or every one below a folder. */
function notebooksOf(argument: string, terminal: Terminal, report: ReportProblem): readonly string[] {
  if (argument === STANDARD_INPUT || !terminal.isFolder(argument)) return [argument];
  let isComplete = true;
  const paths = below(argument, terminal, (folder, problem) => {
    isComplete = false;
    report(folder, problem);
  });
  if (isComplete && paths.length === 0) report(folderName(argument), `no notebooks (*${ENDING}) here`);
  return paths;
}

/** In order of name; hidden folders and installed packages are skipped, folders that cannot be read are reported. */
function below(folder: string, terminal: Terminal, report: ReportProblem): readonly string[] {
  const start = folder === '.' ? '' : folder.endsWith('/') ? folder : `${folder}/`;
  return namesIn(folder, terminal, report).flatMap((name) =>
    name.endsWith('/')
      ? below(start + name, terminal, report)
      : name.toLowerCase().endsWith(ENDING)
        ? [start + name]
        : [],
  );
}

function namesIn(folder: string, terminal: Terminal, report: ReportProblem): readonly string[] {
  try {
    return terminal
      .list(folder)
      .filter((name) => !SKIPPED.test(name))
      .toSorted();
  } catch (error) {
    report(folderName(folder), whyUnread(error));
    return [];
  }
}

const folderName = (folder: string): string => (folder === '.' ? 'the current folder' : folder);

/** As `textOf`, for a command that holds the whole notebook in memory: up to `LARGEST_WHOLE`. */
export function wholeTextOf(path: string, terminal: Terminal): Text {
  const read = textOf(path, terminal);
  return 'problem' in read || read.bytes <= LARGEST_WHOLE ? read : { problem: TOO_LARGE };
}

/**
 * Bytes, some half a million lines. A notebook held whole takes about 55 bytes of memory a byte, measured, and up to twice that
 * on the way: this much fits into the 2 GB that Node has without being given more.
 */
export const LARGEST_WHOLE = 16e6;

const TOO_LARGE = `too large: more than ${LARGEST_WHOLE / 1e6} MB. "tappet check" can read it. Split it, for example into one notebook a year, and move what they share into a notebook that each of them "use"s`;

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
