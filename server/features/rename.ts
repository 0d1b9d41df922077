/** Another name for a part, an item or a word of the notebook's own; everything else keeps the name the trade gives it. */
import { comparePositions, cutLines, type Position, type Range } from '../../grammar/index.ts';
import { readingsBetween, textOf } from '../model/locate.ts';
import type { Entry } from '../model/notebook.ts';
import { open, type Shared, type Snapshot } from '../model/snapshot.ts';
import { kindOfPart } from '../model/step.ts';
import type { PartKind } from '../trade/quantity.ts';
import { findQuantity } from '../trade/vocabulary.ts';
import type { TextEdit } from './document-links.ts';
import { type LocatedMention, mentionAt, mentionsOf, type Subject, type SubjectKind } from './mentions.ts';

/** Why not, in words for the reader. */
export interface Refusal {
  readonly refused: string;
}

interface Renamable {
  readonly range: Range;
  /** The name as it stands there. */
  readonly text: string;
  readonly subject: Subject;
}

/** What would be renamed at a place. */
export function renamableAt(snapshot: Snapshot, { line, character }: Position): Renamable | Refusal {
  const mention = mentionAt(snapshot, line, character);
  if (!mention) return refused('Nothing with a name stands here.');
  const because = NOT_RENAMED[mention.of];
  if (because) return refused(`"${mention.name}" ${because}`);
  if (mention.of === 'word' && !isDefinedIn(snapshot, mention))
    return refused(`"${mention.name}" comes from another notebook: rename it there.`);
  return { range: mention.range, text: mention.name, subject: mention };
}

/**
 * The edits that give a subject another name wherever the notebook names it. Refused where the lines would not mean
 * the same afterwards: the name is taken, is a word of the trade, says another kind of part, cannot be read as a name.
 * `shared`: what other notebooks will give then.
 */
export function renameIn(
  snapshot: Snapshot,
  subject: Subject,
  newName: string,
  shared: Shared = snapshot.shared,
): readonly TextEdit[] | Refusal {
  const text = newName.trim();
  const name = text.toLowerCase().replace(/[\s-]+/g, ' ');
  if (!/^[\p{L}\p{N}][\p{L}\p{N}\s-]*$/u.test(text))
    return refused(
      `"${text}" cannot be a name: it is made of words, letters and numbers, with blanks or hyphens.`,
    );
  if (subject.of === 'word' && isOfTheTrade(name))
    return refused(`"${text}" is a word of the trade: lines that mean that would be read as yours.`);
  const mentions = mentionsOf(snapshot, subject);
  if (name !== subject.name && mentionsOf(snapshot, { of: subject.of, name }).length > 0)
    return refused(`There is ${CALLED[subject.of]} "${name}" already: the two could not be told apart.`);
  const edits = mentions.map(({ range }) => ({ range, text }));
  const because = whyNot(snapshot, renamed(snapshot, edits, shared), mentions, name);
  return because ? refused(`"${text}" cannot be the name: ${because}.`) : edits;
}

const refused = (why: string): Refusal => ({ refused: why });

const isOfTheTrade = (name: string): boolean => {
  const words = name.split(' ');
  return findQuantity(words, 0, undefined)?.length === words.length;
};

const isDefinedIn = (snapshot: Snapshot, subject: Subject): boolean =>
  mentionsOf(snapshot, subject).some(({ role }) => role === 'defines');

const NOT_RENAMED: Partial<Readonly<Record<SubjectKind, string>>> = {
  quantity: 'is a word of the trade: only parts, items and words of your own can be renamed.',
  check: 'is a check with a name of its own: only parts, items and words of your own can be renamed.',
  port: 'is named by the engine: only parts, items and words of your own can be renamed.',
  session: 'is a day, not a name.',
  file: 'is a file: rename the file itself, and the path follows.',
};

const CALLED: Partial<Readonly<Record<SubjectKind, string>>> = {
  part: 'a part',
  item: 'an item',
  word: 'a word of your own',
};

/** The notebook after the edits of a rename, each inside one line; unchecked. */
export function renamed(
  snapshot: Snapshot,
  edits: readonly TextEdit[],
  shared: Shared = snapshot.shared,
): Snapshot {
  const lines = cutLines(textOf(snapshot));
  // From the end, so that columns before an edit stay what they are; one by one the notebook would be read over and over.
  for (const { range, text } of [...edits].sort((a, b) => comparePositions(b.range.start, a.range.start))) {
    const { line, character } = range.start;
    const old = lines[line] as string;
    lines[line] = old.slice(0, character) + text + old.slice(range.end.character);
  }
  return open(lines.join(''), () => [], shared);
}

/** Read again, the notebook must say what it said, of the same lines. */
function whyNot(
  before: Snapshot,
  after: Snapshot,
  mentions: readonly LocatedMention[],
  name: string,
): string | undefined {
  const now = readingsBetween(after);
  for (const { entry, at, before: carried } of readingsBetween(before)) {
    const other = now.next().value;
    if (!other) return 'a line would be lost';
    const [kind, otherKind] = [partKindOf(entry, carried), partKindOf(other.entry, other.before)];
    if (kind !== otherKind)
      return otherKind ? `it would be read as a ${otherKind}` : `a ${kind} is named by that word`;
    if (entry.kind !== other.entry.kind) return `line ${at + 1} would be read as something else`;
  }
  const first = mentions[0];
  const found = first ? mentionsOf(after, { of: first.of, name }) : [];
  const sameLines = found.map(({ at }) => at).join() === mentions.map(({ at }) => at).join();
  return sameLines ? undefined : 'the lines would not be read the same, it has a meaning already';
}

function partKindOf(entry: Entry, carried: Parameters<typeof kindOfPart>[0]): PartKind | undefined {
  if (entry.kind === 'part') return entry.part;
  return entry.kind === 'fit' ? kindOfPart(carried, entry.name) : undefined;
}
