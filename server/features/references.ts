/** Every line about the same thing: the history of a setting or reading, the uses of a part, an item, a word of one's own. */
import type { Position, Range } from '../../grammar/index.ts';
import type { Snapshot } from '../model/snapshot.ts';
import { type Mention, mentionAt, mentionsOf } from './mentions.ts';

interface Highlight {
  readonly range: Range;
  readonly role: Mention['role'];
}

/** In the order of lines; none where nothing with a name stands. `definitions`: the lines that say what it is too. */
export function referencesAt(
  snapshot: Snapshot,
  { line, character }: Position,
  definitions: boolean,
): readonly Range[] {
  const subject = mentionAt(snapshot, line, character);
  if (!subject) return [];
  return mentionsOf(snapshot, subject)
    .filter(({ role }) => definitions || role !== 'defines')
    .map(({ range }) => range);
}

/** As `referencesAt`, for marks in the text. */
export function highlightsAt(snapshot: Snapshot, { line, character }: Position): readonly Highlight[] {
  const subject = mentionAt(snapshot, line, character);
  return subject ? mentionsOf(snapshot, subject).map(({ range, role }) => ({ range, role })) : [];
}
