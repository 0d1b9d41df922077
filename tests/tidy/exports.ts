/** What a file gives out must be taken by another, and what only tests take is no part of the program. */
import { type Files, sources } from './files.ts';

/** One line for each exported name that no other file names, or that the program does without. */
export function unusedExports(files: Files): readonly string[] {
  const programs = [...sources(files)];
  const words = new Map(programs.map(([path, text]) => [path, new Set(text.match(/\w+/g))]));
  return programs.flatMap(([path, text]) =>
    exported(text).flatMap((name) => {
      const users = [...words].filter(([other, named]) => other !== path && named.has(name));
      if (users.length === 0) return [`${path}: ${name} is named nowhere else`];
      const isNeeded = !isProgram(path) || isUsedIn(text, name) || users.some(([other]) => isMaker(other));
      return isNeeded ? [] : [`${path}: ${name} is named by tests alone`];
    }),
  );
}

function exported(text: string): readonly string[] {
  const found = text.matchAll(/^export (?:async )?(?:const|function\*?|interface|type|class) (\w+)/gm);
  return [...found].map(([, name]) => name as string);
}

/** Beside where it is made. */
const isUsedIn = (text: string, name: string): boolean =>
  (text.match(RegExp(`\\b${name}\\b`, 'g')) ?? []).length > 1;

const isProgram = (path: string): boolean => /^(?:grammar|server|client)\//.test(path);
/** What generates files of the program counts as the program. */
const isMaker = (path: string): boolean => isProgram(path) || path.startsWith('tests/tidy/');
