/** Rename of a part, an item or an own word; built-in words cannot be renamed. */
import type { Position, Range } from '../../grammar/index.ts';
import type { Interruptible } from '../model/snapshot/interruptible.ts';
import type { Shared } from '../model/snapshot/look-up.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import type { State } from '../model/state/state.ts';
import { findQuantity } from '../trade/vocabulary/vocabulary.ts';
import type { TextEdit } from './document-links.ts';
import { mentionAt, mentioning, mentionsOf, type Subject, type SubjectKind } from './mentions.ts';
import { readAgain } from './rename/read-again.ts';

/** Why not, in words for the reader. */
export interface Refusal {
  readonly refused: string;
}

interface Renamable {
  readonly range: Range;
  /** The present name. */
  readonly text: string;
  readonly subject: Subject;
}

/** What would be renamed at a place. */
export function renamableAt(snapshot: Snapshot, { line, character }: Position): Renamable | Refusal {
  const mention = mentionAt(snapshot, line, character);
  if (!mention) return refused('There is nothing to rename here.');
  const because = NOT_RENAMED[mention.of];
  if (because) return refused(`"${mention.name}" ${because}`);
  if (mention.of === 'word' && !isDefinedIn(snapshot, mention))
    return refused(`"${mention.name}" comes from another notebook. Rename it there.`);
  return { range: mention.range, text: mention.name, subject: mention };
}

interface Renaming {
  /** In the order of lines. */
  readonly edits: readonly TextEdit[];
  /** What the notebook gives then to those that use it. */
  readonly given: State;
}

/**
 * The edits that give a subject another name wherever the notebook names it, a page a step. Refused where the lines would
 * not mean the same afterwards: the name is taken, is a word of the trade, says another kind of part, cannot be read as a
 * name. `shared`: what other notebooks will give then.
 */
export function* renaming(
  snapshot: Snapshot,
  subject: Subject,
  newName: string,
  shared: Shared = snapshot.shared,
): Interruptible<Renaming | Refusal> {
  const { text, name } = spellings(newName);
  if (!NAME.test(text))
    return refused(
      `"${text}" can't be a name. Use words, letters and numbers, with spaces or hyphens between them.`,
    );
  if (subject.of === 'word' && isOfTheTrade(name))
    return refused(`"${text}" is a built-in word. Lines that use it would be read as yours.`);
  const mentions = yield* mentioning(snapshot, subject);
  const others = name === subject.name ? [] : yield* mentioning(snapshot, { of: subject.of, name });
  if (others.length > 0) return refused(`There is already ${CALLED[subject.of]} called "${name}".`);
  const read = yield* readAgain(snapshot, { mentions, text, name, shared });
  if (typeof read === 'string') return refused(`"${text}" can't be the name: ${read}.`);
  return { edits: mentions.map(({ range }) => ({ range, text })), given: read };
}

/**
 * What a notebook gives to others once one that it uses has a word by the new name, where it means something else by the
 * old one and so keeps it. Refused where it says the new name already: those lines would come to mean the other's word.
 */
export function* keeping(
  snapshot: Snapshot,
  newName: string,
  shared: Shared,
): Interruptible<State | Refusal> {
  const { text, name } = spellings(newName);
  const others = yield* mentioning(snapshot, { of: 'word', name });
  const read =
    others.length > 0 ? undefined : yield* readAgain(snapshot, { mentions: [], text, name, shared });
  if (read === undefined)
    return refused(`There is ${CALLED.word} "${name}" already, which would get another meaning.`);
  return typeof read === 'string' ? refused(`"${text}" can't be the name: ${read}.`) : read;
}

/** As it will be written, and as it will be known by. */
function spellings(newName: string): { readonly text: string; readonly name: string } {
  const text = newName.trim();
  return { text, name: text.toLowerCase().replace(/[\s-]+/g, ' ') };
}

/** Words of letters and numbers on one line. */
const NAME = /^[\p{L}\p{N}](?:[\p{L}\p{N}-]|[^\S\r\n])*$/u;

const refused = (why: string): Refusal => ({ refused: why });

const isOfTheTrade = (name: string): boolean => {
  const words = name.split(' ');
  return findQuantity(words, 0, undefined)?.length === words.length;
};

const isDefinedIn = (snapshot: Snapshot, subject: Subject): boolean =>
  mentionsOf(snapshot, subject).some(({ role }) => role === 'defines');

const NOT_RENAMED: Partial<Readonly<Record<SubjectKind, string>>> = {
  quantity: 'is a built-in word. Only parts, items and your own words can be renamed.',
  check: 'is a built-in check. Only parts, items and your own words can be renamed.',
  port: 'is a port. Only parts, items and your own words can be renamed.',
  session: 'is a date, not a name.',
  file: 'is a file. Rename the file itself, and the path follows.',
};

const CALLED: Partial<Readonly<Record<SubjectKind, string>>> = {
  part: 'a part',
  item: 'an item',
  word: 'a word of your own',
};
