/** Lists of words of the trade kept outside the vocabulary, where a new word of the same sort would be forgotten. */
import type { Files } from './files.ts';

/** Fewer words are a case, not a sort of word. */
const MOST_WORDS = 2;

/** What a figure or rule is about is its own affair: `about: [...]`, `about: ({ name }) => [...]`, `const ABOUT = new Set([...])`. */
const OF_ABOUT = /(?:about: (?:\(\{ name \}\) => )?|const ABOUT(?:_\w+)?(?:: [^=\n]+)? = (?:new Set\()?)$/;

/** The start of a list, or of an object that is a table by name. */
const START = /\[|(?<=Object\.entries\(|(?:Record|Map)<[^=\n]*> = )\{/g;

/** `PATH: word, word, word` for each list, set or table of more than two `words`; texts in `programs` have no comments removed. */
export function wordLists(programs: Files, words: ReadonlySet<string>): readonly string[] {
  return [...programs].flatMap(([path, text]) =>
    [...text.matchAll(START)].flatMap(({ index }) => {
      if (OF_ABOUT.test(text.slice(Math.max(0, index - 120), index))) return [];
      const listed = new Set(elements(text, index).map(wordOf));
      const found = [...listed].filter((word) => word !== undefined && words.has(word));
      return found.length > MOST_WORDS ? [`${path}: ${found.join(', ')}`] : [];
    }),
  );
}

/** The word an element is, begins with (a pair) or is named by (a property). */
function wordOf(element: string): string | undefined {
  const [, quoted, name] =
    /^\s*(?:\[\s*)?'([^'\n]*)'|^\s*(\w+):/.exec(element.replace(/^\s*\/[/*].*\n/, '')) ?? [];
  return quoted ?? name;
}

/** Texts of the elements of the list or object that opens at `start`. */
function elements(text: string, start: number): readonly string[] {
  const found: string[] = [];
  let from = start + 1;
  let depth = 0;
  for (const { 0: token, index } of text.slice(start).matchAll(TOKEN)) {
    const at = start + index;
    if (token === ',' && depth === 1) {
      found.push(text.slice(from, at));
      from = at + 1;
    }
    if ('[{('.includes(token)) depth++;
    if (']})'.includes(token)) depth--;
    if (depth === 0) return [...found, text.slice(from, at)];
  }
  return found;
}

const TOKEN = /'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"|[[\](){},]/g;
