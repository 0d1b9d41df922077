/** Objects that are asked for a text as if they were tables: they answer `constructor` too, with what every object has. */
import type { Files } from './files.ts';

/** A table by any text; one by the words of a closed list needs no look, since the types hold its index to that list. */
const TABLE =
  /(\w+)\??:\s*(?:Readonly<|Partial<)*(?:Record<\s*string\s*,|\{\s*(?:readonly\s*)?\[\w+: string\])/g;
const MADE = /const (\w+)(?:: [^=]+)? =\s*Object\.fromEntries\((?![^;\n]* as )/g;
/** `in` with anything but a text written out before it, and a whole name behind it. */
const IN = /(?<!const|let|['"`\w])\s([\w.[\]()]+) in ([\w.]{2,})(?= ?[)?;,&|])/g;
const CAST = /as (?:Readonly<)?Record<string,[^)\n]*\)\[(?!['"`])/g;

/** `PATH: what stands there`, for each place where an object is asked for a text that is not written out. */
export function textsLookedUp(programs: Files): readonly string[] {
  const code = [...programs].map(([path, text]) => [path, withoutProse(text)] as const);
  const tables = new Set(
    code.flatMap(([, text]) =>
      [TABLE, MADE].flatMap((pattern) => [...text.matchAll(pattern)].map(([, name]) => name as string)),
    ),
  );
  return code.flatMap(([path, text]) =>
    [...indexed(text, tables), ...[IN, CAST].flatMap((pattern) => matches(text, pattern))].map(
      (found) => `${path}: ${found}`,
    ),
  );
}

function indexed(text: string, tables: ReadonlySet<string>): readonly string[] {
  const places = [...text.matchAll(/(?<![\w.])(?:\w+\.)*(\w+)(?:\?\.)?\[(?!['"`\d\]])([^\]\n]+)\]/g)];
  return places.flatMap(([place, name, index], i) => {
    const before = text.slice(0, places[i]?.index);
    const isHeld = before.trimEnd().endsWith(`Object.hasOwn(${name}, ${index}) ?`);
    return tables.has(name as string) && !isHeld ? [place] : [];
  });
}

const matches = (text: string, pattern: RegExp): readonly string[] =>
  [...text.matchAll(pattern)].map(([found]) => found.trim());

/** Comments out, and what stands in texts, but for a letter in each. */
const withoutProse = (text: string): string =>
  text
    .replace(/\/\*[\s\S]*?\*\/|(?<![:'"`\\])\/\/.*$/gm, '')
    .replace(/'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"/g, "'x'");
