/** References: every line about the same thing: the history of a setting or reading, the uses of a part, an item, a word of one's own. */
import type { Position, Range } from '../../grammar/index.ts';
import type { Interruptible } from '../model/snapshot/interruptible.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { type Mention, mentionAt, mentioning, type Subject } from './mentions.ts';

interface Highlight {
  readonly range: Range;
  readonly role: Mention['role'];
}

/**
 * In the order of lines; none where there is nothing with a name. `definitions`: the lines that say what it is too. A page a
 * step.
 */
export function* referring(
  snapshot: Snapshot,
  subject: Subject,
  definitions: boolean,
): Interruptible<readonly Range[]> {
  const mentions = yield* mentioning(snapshot, subject);
  return mentions.filter(({ role }) => definitions || role !== 'defines').map(({ range }) => range);
}

/** Highlights of the thing at a place; otherwise as `referring`. */
export function* highlighting(
  snapshot: Snapshot,
  { line, character }: Position,
): Interruptible<readonly Highlight[]> {
  const subject = mentionAt(snapshot, line, character);
  if (!subject) return [];
  const mentions = yield* mentioning(snapshot, subject);
  return mentions.map(({ range, role }) => ({ range, role }));
}
