/**
 * Entry cache by a line's text: at the bench the same things are written again and again, and an entry knows nothing
 * of where its line is. Valid by law 3: text and scope alone decide the entry.
 */
import { parseLine } from '../../../grammar/index.ts';
import { bounded, latestFew } from '../../memo.ts';
import type { Entry } from './entry.ts';
import type { NameScope } from './name-lookup.ts';
import { readEntry } from './read-entry.ts';

/** Entries held in each of two generations. */
const HELD = 1000;
/** How many scopes (section, own words, specs) are cached. */
const SCOPES = 8;

/** The entry of a line, by its text without the break. */
export const entryOfText = (text: string, { section, inConflict, words, specs }: NameScope): Entry =>
  // A scope of its own: the state that comes as one would be held with all it carries.
  entriesIn({ section, inConflict, words, specs })(text);

const entriesIn = latestFew(
  SCOPES,
  (scope: NameScope) => bounded(HELD, (text): Entry => readEntry(parseLine(text), scope)),
  (a, b) =>
    a.section === b.section && a.inConflict === b.inConflict && a.words === b.words && a.specs === b.specs,
);
