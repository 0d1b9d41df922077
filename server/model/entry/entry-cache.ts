/**
 * Entry cache by a line's text: at the bench the same things are written again and again, and an entry knows nothing
 * of where its line is. Valid by law 3: text and scope alone decide the entry.
 */
import { parseLine } from '../../../grammar/index.ts';
import type { Entry } from './entry.ts';
import type { NameScope } from './name-lookup.ts';
import { readEntry } from './read-entry.ts';

/** Entries held in each of two generations; the older is dropped as a whole. */
const HELD = 1000;
/** How many scopes (section, own words, specs) are cached. */
const SCOPES = 8;

interface CachedScope {
  readonly around: NameScope;
  young: Map<string, Entry>;
  old: Map<string, Entry>;
}

const known: CachedScope[] = [];
let next = 0;

/** The entry of a line, by its text without the break. */
export function entryOfText(text: string, around: NameScope): Entry {
  const entries = entriesIn(around);
  const young = entries.young.get(text);
  if (young) return young;
  const entry = entries.old.get(text) ?? readEntry(parseLine(text), around);
  if (entries.young.size >= HELD) {
    entries.old = entries.young;
    entries.young = new Map();
  }
  entries.young.set(text, entry);
  return entry;
}

function entriesIn({ section, inConflict, words, specs }: NameScope): CachedScope {
  for (const each of known) {
    const { around } = each;
    if (
      around.section === section &&
      around.inConflict === inConflict &&
      around.words === words &&
      around.specs === specs
    )
      return each;
  }
  const made: CachedScope = {
    around: { section, inConflict, words, specs },
    young: new Map(),
    old: new Map(),
  };
  known[next] = made;
  next = (next + 1) % SCOPES;
  return made;
}
