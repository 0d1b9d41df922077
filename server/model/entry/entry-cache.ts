/**
 * A line's text to its entry, remembered: at the bench the same things are written again and again, and an entry knows
 * nothing of where its line stands. Law 3 is what makes this right: the text and what is around it decide.
 */
import { parseLine } from '../../../grammar/index.ts';
import type { Entry } from './entry.ts';
import type { Around } from './name-lookup.ts';
import { entryOf } from './read-entry.ts';

/** Entries held in each of two generations; the older is dropped as a whole. */
const HELD = 1000;
/** Sections and stocks of own words held at once. */
const AROUNDS = 8;

interface Known {
  readonly around: Around;
  young: Map<string, Entry>;
  old: Map<string, Entry>;
}

const known: Known[] = [];
let next = 0;

/** The entry of a line, by its text without the break. */
export function entryOfText(text: string, around: Around): Entry {
  const entries = entriesIn(around);
  const young = entries.young.get(text);
  if (young) return young;
  const entry = entries.old.get(text) ?? entryOf(parseLine(text), around);
  if (entries.young.size >= HELD) {
    entries.old = entries.young;
    entries.young = new Map();
  }
  entries.young.set(text, entry);
  return entry;
}

function entriesIn({ section, inConflict, words, specs }: Around): Known {
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
  const made: Known = {
    around: { section, inConflict, words, specs },
    young: new Map(),
    old: new Map(),
  };
  known[next] = made;
  next = (next + 1) % AROUNDS;
  return made;
}
