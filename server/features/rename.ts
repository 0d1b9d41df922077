/** Another name for a part, an item or a word of the notebook's own; everything else keeps the name the trade gives it. */
import type { Position, Range } from '../../grammar/index.ts';
import { type Carried, NOTHING_CARRIED } from '../model/carry.ts';
import { keptByPage } from '../model/kept.ts';
import { lineCount } from '../model/locate.ts';
import type { Page, Reading } from '../model/page.ts';
import { linesOf, pageAt, readAs, type Shared, type Snapshot } from '../model/snapshot.ts';
import { kindOfPart } from '../model/step.ts';
import type { Steps } from '../model/steps.ts';
import { findQuantity } from '../trade/vocabulary.ts';
import type { TextEdit } from './document-links.ts';
import {
  isOf,
  type LocatedMention,
  mentionAt,
  mentioning,
  mentionsIn,
  mentionsOf,
  type Subject,
  type SubjectKind,
} from './mentions.ts';

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

export interface Renaming {
  /** In the order of lines. */
  readonly edits: readonly TextEdit[];
  /** All that is carried at the notebook's end then. */
  readonly after: Carried;
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
): Steps<Renaming | Refusal> {
  const text = newName.trim();
  const name = text.toLowerCase().replace(/[\s-]+/g, ' ');
  if (!/^[\p{L}\p{N}][\p{L}\p{N}\s-]*$/u.test(text))
    return refused(
      `"${text}" cannot be a name: it is made of words, letters and numbers, with blanks or hyphens.`,
    );
  if (subject.of === 'word' && isOfTheTrade(name))
    return refused(`"${text}" is a word of the trade: lines that mean that would be read as yours.`);
  const mentions = yield* mentioning(snapshot, subject);
  const others = name === subject.name ? [] : yield* mentioning(snapshot, { of: subject.of, name });
  if (others.length > 0)
    return refused(`There is ${CALLED[subject.of]} "${name}" already: the two could not be told apart.`);
  const read = yield* readAgain(snapshot, { ...subject, name }, text, mentions, shared);
  if (typeof read === 'string') return refused(`"${text}" cannot be the name: ${read}.`);
  return { edits: mentions.map(({ range }) => ({ range, text })), after: read };
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

/**
 * Read again, the notebook must say what it said, of the same lines.
 * @returns what is carried at its end; why it would not say the same, where it would not.
 */
function* readAgain(
  snapshot: Snapshot,
  subject: Subject,
  text: string,
  mentions: readonly LocatedMention[],
  shared: Shared,
): Steps<Carried | string> {
  const isAsBefore = shared === snapshot.shared;
  const first = isAsBefore ? pageAt(snapshot, mentions[0]?.at ?? lineCount(snapshot)) : 0;
  const namedAt: number[] = [];
  let after = NOTHING_CARRIED;
  let index = first;
  for (const read of readAs(snapshot, first, renamedLines(snapshot, mentions, text), shared)) {
    const start = snapshot.starts[index] as number;
    const forms = formsOn(snapshot, index);
    for (const [i, reading] of read.entries()) {
      const because = whyNot(forms[i] as string, formOf(reading), start + i);
      if (because) return because;
      for (const mention of mentionsIn(reading)) if (isOf(subject, mention)) namedAt.push(start + i);
      after = reading.after;
    }
    index++;
    yield;
  }
  const isSame = mentions.length === 0 || namedAt.join() === mentions.map(({ at }) => at).join();
  return isSame ? after : 'the lines would not be read the same, it has a meaning already';
}

/** The lines of a page with another name in the place of the mentions. */
function renamedLines(
  snapshot: Snapshot,
  mentions: readonly LocatedMention[],
  text: string,
): (page: number) => readonly string[] {
  const byPage = new Map<number, LocatedMention[]>();
  for (const mention of mentions) {
    const page = pageAt(snapshot, mention.at);
    byPage.set(page, [...(byPage.get(page) ?? []), mention]);
  }
  return (index) => {
    const lines = [...linesOf(snapshot.pages[index] as Page).lines];
    // From the end, so that columns before a mention stay what they are.
    for (const { at, span } of (byPage.get(index) ?? []).toReversed()) {
      const line = at - (snapshot.starts[index] as number);
      const old = lines[line] as string;
      lines[line] = old.slice(0, span.from) + text + old.slice(span.to);
    }
    return lines;
  };
}

/** The kind of each line's entry, and of the part that it names. */
const formsOn = keptByPage((readings) => readings.map(formOf));

function formOf({ entry, before }: Reading): string {
  const part =
    entry.kind === 'part' ? entry.part : entry.kind === 'fit' ? kindOfPart(before, entry.name) : undefined;
  return part ? `${entry.kind} ${part}` : entry.kind;
}

function whyNot(was: string, is: string, at: number): string | undefined {
  if (was === is) return undefined;
  const [[kind, ...part], [otherKind, ...otherPart]] = [was.split(' '), is.split(' ')];
  if (otherPart.join(' ') !== part.join(' '))
    return otherPart.length > 0
      ? `it would be read as a ${otherPart.join(' ')}`
      : `a ${part.join(' ')} is named by that word`;
  return kind === otherKind ? undefined : `line ${at + 1} would be read as something else`;
}
