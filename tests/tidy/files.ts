/** The project's own files, as git knows them, and what they import. */
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';

export const ROOT = join(import.meta.dirname, '../..');

/** Paths to texts. */
export type Files = ReadonlyMap<string, string>;

/** Every file that is or would be in the repository; what git ignores is not the project's. */
export function projectFiles(): Files {
  const args = ['ls-files', '--cached', '--others', '--exclude-standard', '-z'];
  const paths = execFileSync('git', args, { cwd: ROOT, encoding: 'utf8' }).split('\0');
  const present = [...new Set(paths)].filter((path) => path && existsSync(join(ROOT, path)));
  return new Map(present.map((path) => [path, readFileSync(join(ROOT, path), 'utf8')]));
}

/** Files of ours that are programs. */
export function sources(files: Files): Files {
  return new Map([...files].filter(([path]) => /\.(ts|mjs)$/.test(path)));
}

/** What a program imports, as it is written there. */
export function imports(text: string): readonly string[] {
  const code = text.replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '');
  const written = code.matchAll(/(?:^|[;\s}])(?:from|import)\s*\(?\s*(['"])([^'"\n]+)\1/g);
  return [...written].map(([, , specifier]) => specifier as string);
}

/** The project's own file that `specifier` names when it is imported by `path`; undefined for a package. */
export function ownFile(path: string, specifier: string): string | undefined {
  return specifier.startsWith('.') ? normalize(join(dirname(path), specifier)) : undefined;
}
