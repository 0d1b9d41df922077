/** Mentions: every use of a name in the lines of a notebook. */
import { isEmpty, type Line, type Range, type Run, runSpan, type Span } from '../../grammar/index.ts';
import type { Entry } from '../model/entry/entry.ts';
import { nameAt, nameOf } from '../model/entry/name-lookup.ts';
import { specNames } from '../model/entry/spec-names.ts';
import { type Interruptible, runToEnd } from '../model/snapshot/interruptible.ts';
import { lineStateAt, touches } from '../model/snapshot/locate.ts';
import { type LineState, type Page, saidOn } from '../model/snapshot/page.ts';
import { keptByPage } from '../model/snapshot/per-page.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { lineSpan } from '../rules/lib/line-syntax.ts';
import { ROAD_CHECKS } from '../trade/practice/road-checks.ts';
import { onLine } from './ranges.ts';

/** `word`: a quantity that the notebook, or one it uses, defines for itself. */
export type SubjectKind = 'quantity' | 'word' | 'part' | 'item' | 'check' | 'port' | 'session' | 'file';

export interface Subject {
  readonly of: SubjectKind;
  readonly name: string;
}

export interface Mention extends Subject {
  /** Whether the line says what it is, changes it, or only names it. */
  readonly role: 'defines' | 'writes' | 'reads';
  readonly span: Span;
}

export interface LocatedMention extends Mention {
  /** From zero. */
  readonly at: number;
  readonly range: Range;
}

/** Subject under the cursor; undefined where that has no name. */
export function mentionAt(snapshot: Snapshot, line: number, column: number): LocatedMention | undefined {
  const reading = lineStateAt(snapshot, line);
  const mention = reading && mentionsIn(reading).find(({ span }) => touches(span, column));
  return mention && { ...mention, at: line, range: onLine(line, mention.span) };
}

/** Every mention of it, in the order of lines. */
export const mentionsOf = (snapshot: Snapshot, subject: Subject): readonly LocatedMention[] =>
  runToEnd(mentioning(snapshot, subject));

/** As `mentionsOf`, a page a step. Pages that cannot name it are not read. */
export function* mentioning(snapshot: Snapshot, subject: Subject): Interruptible<readonly LocatedMention[]> {
  const found: LocatedMention[] = [];
  const mayName = namedOn(subject);
  for (const [index, page] of snapshot.pages.entries()) {
    if (!mayName(page)) continue;
    const start = snapshot.starts[index] as number;
    for (const { line, ...mention } of mentionsOn(snapshot, index)) {
      if (!isOf(subject, mention)) continue;
      found.push({ ...mention, at: start + line, range: onLine(start + line, mention.span) });
    }
    yield;
  }
  return found;
}

export const isOf = ({ of, name }: Subject, mention: Mention): boolean =>
  mention.of === of && mention.name === name;

/** The others go by several names, or by what is not written out. */
const AS_WRITTEN: ReadonlySet<SubjectKind> = new Set(['word', 'part', 'item']);

/** A page that names something as it is written has the first word of the name in its text. */
function namedOn({ of, name }: Subject): (page: Page) => boolean {
  const [first = ''] = name.split(/[^a-z0-9]/, 1);
  if (!AS_WRITTEN.has(of) || first === '') return () => true;
  return ({ text }) => text.toLowerCase().includes(first);
}

const mentionsOn = keptByPage((readings) =>
  readings.flatMap((reading, line) => mentionsIn(reading).map((mention) => ({ ...mention, line }))),
);

/** What one line names, in its order. */
export function mentionsIn(reading: LineState): readonly Mention[] {
  if (reading.entry.kind === 'spoken') return mentionsOnPencilled(reading);
  return named(reading).filter(({ name, span }) => name !== '' && span.to > span.from);
}

/** Of all that a line of plain speech means, each where the line has one of its names, else on the whole line; the shortest first. */
function mentionsOnPencilled(reading: LineState): readonly Mention[] {
  const { line } = reading.entry;
  const found = saidOn(reading).flatMap((said) =>
    mentionsIn(said).map((mention) => ({ ...mention, span: placeOn(line, namesOf(said.entry, mention)) })),
  );
  const places = new Map(
    found.map((mention) => [`${mention.of} ${mention.name} ${mention.span.from}`, mention]),
  );
  return [...places.values()].sort((a, b) => lengthOf(a.span) - lengthOf(b.span));
}

const lengthOf = ({ from, to }: Span): number => to - from;

/** As the canonical line writes it, and what else the trade calls it; the longest first. */
function namesOf(entry: Entry, { span }: Mention): readonly string[] {
  const written = entry.line.text.slice(span.from, span.to).toLowerCase();
  const others = 'quantity' in entry && entry.quantity ? entry.quantity.aliases : [];
  return [written, ...[...others].sort((a, b) => b.length - a.length)];
}

function placeOn(line: Line, names: readonly string[]): Span {
  const text = line.text.toLowerCase();
  for (const name of names) {
    const from = wordsAt(text, name);
    if (from >= 0) return { from, to: from + name.length };
  }
  return lineSpan(line);
}

/** Where whole words stand in a text, -1 where they do not. */
function wordsAt(text: string, words: string): number {
  for (let from = text.indexOf(words); from >= 0 && words !== ''; from = text.indexOf(words, from + 1)) {
    const around = `${text.charAt(from - 1)} ${text.charAt(from + words.length)}`;
    if (!/[\p{L}\p{N}]/u.test(around)) return from;
  }
  return -1;
}

function named(reading: LineState): readonly Mention[] {
  const { entry, before } = reading;
  switch (entry.kind) {
    case 'setting':
    case 'reading':
    case 'fact':
    case 'limit':
    case 'target': {
      const { quantity, name, kind } = entry;
      return [quantityMention(quantity.name, before, name, kind === 'setting' ? 'writes' : 'reads')];
    }
    case 'spec': {
      const alone = specNames(new Map([['', { ...entry, by: NOWHERE }]]));
      const name = [...alone.keys()][0] ?? entry.quantity.name;
      return [quantityMention(name, before, entry.nameSpan, 'reads')];
    }
    case 'word':
      return entry.quantity ? [{ of: 'word', name: entry.name, span: entry.nameSpan, role: 'defines' }] : [];
    case 'part':
      return [{ of: 'part', name: entry.name, span: entry.nameSpan, role: 'defines' }];
    case 'fit':
      return [{ of: 'part', name: entry.name, span: entry.nameSpan, role: 'writes' }];
    case 'port':
      return [{ of: 'port', name: entry.name, span: entry.nameSpan, role: 'writes' }];
    case 'item': {
      const role = entry.word === 'done' ? 'writes' : 'defines';
      return [{ of: 'item', name: entry.id, span: entry.idSpan, role }];
    }
    case 'check':
      return [{ of: 'check', name: entry.name, span: entry.nameSpan, role: 'writes' }];
    case 'recheck': {
      const of = ROAD_CHECKS.some((check) => check.name === entry.name) ? 'check' : 'item';
      return [{ of, name: entry.name, span: entry.nameSpan, role: 'reads' }];
    }
    case 'file':
      return [{ of: 'file', name: entry.path, span: entry.pathSpan, role: 'reads' }];
    case 'session':
      return entry.date !== undefined && entry.dateText
        ? [{ of: 'session', name: entry.date, span: entry.dateText.span, role: 'defines' }]
        : [];
    case 'revert':
      return [{ of: 'session', name: entry.date ?? '', span: entry.dateSpan, role: 'reads' }];
    case 'trial':
      return trialMentions(entry, before);
    default:
      return [];
  }
}

const NOWHERE = { ref: { page: 0, line: 0 }, date: undefined };

type MentionScope = LineState['before'];

const quantityMention = (
  name: string,
  { words }: MentionScope,
  span: Span,
  role: Mention['role'],
): Mention => ({
  of: words.has(name) ? 'word' : 'quantity',
  name,
  span,
  role,
});

function trialMentions({ line }: Entry, around: MentionScope): readonly Mention[] {
  const { syntax } = line;
  const runs: readonly Run[] = syntax.kind === 'trial' ? [syntax.knob, syntax.response] : [];
  return runs.flatMap((run) => {
    if (isEmpty(run)) return [];
    const words = nameOf(line, run).split(' ');
    const found = nameAt(words, 0, around);
    return found?.length === words.length
      ? [quantityMention(found.quantity.name, around, runSpan(line, run), 'reads')]
      : [];
  });
}
