/** A terminal made of plain data: files in, what was written and the exit code out. */
import { run } from '../../server/cli/command.ts';
import type { Terminal } from '../../server/cli/terminal.ts';
import type { FileText } from '../../server/model/snapshot/named-files.ts';

/** Texts and bytes by path; a string of capitals is the code of the error that reading gives. */
export type Files = Readonly<Record<string, string | Uint8Array>>;

interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  /** By path. */
  readonly saved: Readonly<Record<string, string>>;
}

type Window = Partial<Pick<Terminal, 'columns' | 'colours'>>;

/** Runs a command line as typed, words separated by spaces. */
export function ran(commandLine: string, files: Files = {}, window: Window = {}): Ran {
  let out = '';
  let err = '';
  const saved: Record<string, string> = {};
  const code = run(commandLine.split(' ').filter(Boolean), {
    read: (path) => bytesOf(files[path] ?? 'ENOENT'),
    save: (path, before, after) => {
      if (path.includes('locked')) throw Object.assign(new Error(path), { code: 'EACCES' });
      if (before !== new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytesOf(files[path] ?? 'ENOENT')))
        throw new Error(`${path} holds something else`);
      saved[path] = after;
    },
    list: (folder) => namesIn(files, folder),
    isFolder: (path) => path === '.' || Object.keys(files).some((each) => each.startsWith(`${path}/`)),
    placeOf: (notebook) => ({ root: '', parts: notebook.split('/').slice(0, -1) }),
    readBeside: (notebook, parts) => besideIn(files, notebook, parts),
    write: (text) => {
      out += text;
    },
    complain: (text) => {
      err += text;
    },
    columns: undefined,
    colours: false,
    version: '9.8.7',
    ...window,
  });
  return { code, out, err, saved };
}

function bytesOf(file: string | Uint8Array): Uint8Array {
  if (typeof file === 'string' && /^[A-Z]+$/.test(file)) throw Object.assign(new Error(file), { code: file });
  return typeof file === 'string' ? new TextEncoder().encode(file) : file;
}

function besideIn(files: Files, notebook: string, parts: readonly string[]): FileText {
  const path = [...notebook.split('/').slice(0, -1), ...parts].join('/');
  const file = Object.hasOwn(files, path) ? files[path] : undefined;
  return file === undefined ? { problem: 'missing' } : { text: new TextDecoder().decode(bytesOf(file)) };
}

function namesIn(files: Files, folder: string): readonly string[] {
  const start = folder === '.' ? '' : folder.endsWith('/') ? folder : `${folder}/`;
  const inside = Object.keys(files).filter((path) => path.startsWith(start));
  return [...new Set(inside.map((path) => /^[^/]*\/?/.exec(path.slice(start.length))?.[0] as string))];
}
