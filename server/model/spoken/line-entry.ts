/**
 * A line to its entry: read strictly, and where a word or number is left over, as plain speech. The text and what is carried to
 * it decide (law 3), so both are remembered by the text: at the bench the same things are written again and again.
 */
import { FIRST_WORDS, isEmpty, parseLine, tokenSpan } from '../../../grammar/index.ts';
import { bounded, latestFew, once } from '../../memo.ts';
import { editDistance, maxEdits } from '../../trade/text/spelling-distance.ts';
import { findQuantity, nearestWords } from '../../trade/vocabulary/vocabulary.ts';
import type { Entry, QuantityEntry, SectionKind } from '../entry/entry.ts';
import { unaccounted } from '../entry/every-word-counts.ts';
import type { NameScope } from '../entry/name-lookup.ts';
import { readEntry } from '../entry/read-entry.ts';
import type { Word } from '../entry/value.ts';
import { mayBeDated } from './dated-line.ts';
import { headOf } from './forms/heads.ts';
import type { Habits, SpokenReading } from './habits.ts';
import { CHANGES, COMPARISONS, LOOKS, TROUBLES, WANTS } from './lexicon.ts';
import { isOtherMachine } from './machines.ts';
import { readSpoken } from './read.ts';

/** What is carried to a line, as far as its meaning depends on it. */
interface LineScope extends NameScope {
  readonly habits: Habits;
  /** Of the last session, ISO 8601. */
  readonly lastDate: { readonly date: string } | undefined;
  /** The last lines of the session as they were read, the latest last. */
  readonly recentLines: readonly string[];
  readonly trial: object | undefined;
  /** What the notebook is kept of, as its heads say. */
  readonly machine: string | undefined;
  /** Below a head of another machine, where nothing counts. */
  readonly isElsewhere: boolean;
}

/** The entry of a line, by its text without the break. */
export function entryOfLine(text: string, around: LineScope): Entry {
  const scope = namesIn(around);
  const { entry, isWhole } = strictly(scope)(text);
  const counts = entry.kind === 'row' ? isWhole && around.trial !== undefined : isWhole;
  if (counts && !around.isElsewhere) return entry;
  if (isEmptyLine(entry) || entry.kind === 'conflict' || entry.line.tooLong) return entry;
  return spokenly(scope)(keyOf(text, around), entry, counts, around);
}

/** Nothing but a comment; a line of signs alone is none. */
const isEmptyLine = ({ kind, line }: Entry): boolean => kind === 'blank' && isEmpty(line.syntax.stray);

interface Strict {
  readonly entry: Entry;
  readonly isWhole: boolean;
}

/** Entries held in each of two generations. */
const HELD = 1000;
/** How many scopes (section, own words, specs) are cached. */
const SCOPES = 8;

/** A scope of its own: the state that comes as one would be held with all it carries. */
const namesIn = ({ section, inConflict, words, specs }: NameScope): NameScope => ({
  section,
  inConflict,
  words,
  specs,
});

const isSameScope = (a: NameScope, b: NameScope): boolean =>
  a.section === b.section && a.inConflict === b.inConflict && a.words === b.words && a.specs === b.specs;

const strictly = latestFew(
  SCOPES,
  (scope: NameScope) =>
    bounded(HELD, (text): Strict => {
      const entry = readEntry(parseLine(text), scope);
      return { entry, isWhole: isWhole(entry, scope) };
    }),
  isSameScope,
);

const spokenly = latestFew(
  SCOPES,
  (_: NameScope) =>
    bounded(HELD, (_key, entry: Entry, counts: boolean, around: LineScope) =>
      plainEntry(entry, counts, around),
    ),
  isSameScope,
);

/** All else that the reading depends on, as text: the same habits are made anew whenever a page is read again. */
const keyOf = (
  text: string,
  { lastDate, trial, machine, isElsewhere, habits, recentLines }: LineScope,
): string =>
  [text, lastDate?.date, trial !== undefined, machine, isElsewhere, habitsKey(habits), ...recentLines].join(
    '\n',
  );

const habitsKey = once((habits: Habits) => JSON.stringify({ ...habits, used: [...(habits.used ?? [])] }));

/** A head without a date may have one that is written in another way. */
const isWhole = (entry: Entry, around: NameScope): boolean =>
  entry.kind !== 'unknown' &&
  unaccounted(entry, around.section).every((word) => isOfSpec(word, around)) &&
  !(entry.kind === 'session' && entry.dateText === undefined && entry.title !== '');

/** `torque 50 lb-ft head bolts`: the name of what is specified. */
const isOfSpec = ({ text }: Word, { section, specs }: NameScope): boolean =>
  section === 'session' && wordsOfSpecs(specs).has(text.toLowerCase());

/** Of all names in it, gathered once. */
const wordsOfSpecs = once(
  (specs: NameScope['specs']): ReadonlySet<string> =>
    new Set([...specs.values()].flatMap(({ name }) => name.split(' '))),
);

function plainEntry(entry: Entry, counts: boolean, around: LineScope): Entry {
  const text = withoutComment(entry);
  const habits = { ...around.habits, ...(around.lastDate && { date: around.lastDate.date }) };
  const head = mayBeDated(text) ? headOf(text, habits) : undefined;
  if (head) return headEntry(entry, head, around);
  if (entry.kind === 'section' || entry.kind === 'session') return entry;
  if (around.isElsewhere) return spokenEntry(entry, [`note ${text.trim()}`], around);
  if (counts) return entry;
  if (around.section !== undefined && around.section !== 'session') return voided(entry);
  if (saysEnough(entry, text, around)) return voided(entry);
  const reading = readSpoken(text, around, { ...habits, section: 'session', lines: around.recentLines });
  return takenAs(reading, entry, text, around) ?? { ...voided(entry), offers: choicesOf(reading) };
}

/** Undefined where the strict reading says better what is wrong. */
function takenAs(reading: SpokenReading, entry: Entry, text: string, around: LineScope): Entry | undefined {
  switch (reading.status) {
    case 'spoken':
      return isHead(reading.as) || losesSign(text, reading.as) || reading.as.some(hidesWord)
        ? undefined
        : spokenEntry(entry, reading.as, around);
    case 'note':
      if (isDescription(entry)) return askedEntry(entry, described(entry, reading));
      return isRemark(entry, text) ? spokenEntry(entry, reading.as, around) : undefined;
    case 'asked':
      return isWorthAsking(entry, reading, around) ? askedEntry(entry, reading) : undefined;
    default:
      return undefined;
  }
}

/** Nothing but a time, or one word off from what is known: the strict reading tells that best. */
function saysEnough(entry: Entry, text: string, around: LineScope): boolean {
  if (/^\s*\+\s*\d/.test(text) && !('statements' in entry)) return true;
  // A recheck by another name.
  if (/^\s*re-?torque\b.* after \d/i.test(text)) return true;
  if (entry.kind === 'unknown') return entry.words.length === 0;
  if (!('statements' in entry)) return false;
  const left = unaccounted(entry, around.section);
  const [word] = left;
  if (!word || left.length > 1) return false;
  return isMisspeltValue(word.text, entry) || isUnitOf(word, entry, text);
}

/** `850 rmp`: a word of no meaning at the end, straight after a number without a unit. */
const isUnitOf = ({ text: word, span }: Word, { statements }: QuantityEntry, text: string): boolean =>
  /^\p{L}+$/u.test(word) &&
  !isSpokenWord(word) &&
  text.slice(span.to).trim() === '' &&
  statements.some(({ values }) =>
    values.some(
      (value) => value.form === 'amount' && (!value.unit || value.taken) && span.from - value.span.to === 1,
    ),
  );

const isSpokenWord = (word: string): boolean =>
  [CHANGES, COMPARISONS, TROUBLES, WANTS, LOOKS].some((words) => words.has(word.toLowerCase()));

const isMisspeltValue = (word: string, { quantity: { words = [] } }: QuantityEntry): boolean =>
  word.length >= SHORTEST_GUESSED &&
  words.some(
    (known) => editDistance(word.toLowerCase(), known, maxEdits(word.length)) <= maxEdits(word.length),
  );

/** `torque 9 lb-ft "initial"`, `idle 850 rpm "in nuetral"`: a remark that names a word of the trade or begins a condition is none. */
const hidesWord = (line: string): boolean =>
  [...line.matchAll(/"([^"]*)"/g)].some(([, remark = '']) => {
    const words = remark.toLowerCase().split(' ');
    return (words[0] === 'in' && words.length === 2) || findQuantity(words)?.length === words.length;
  });

/** `timing - 2`: a sign, or a dash? `boost 6 psi @`: at what speed? */
const losesSign = (text: string, as: readonly string[]): boolean =>
  text.trimEnd().endsWith('@') ||
  (/(?:^|[\s\p{L}])[-−] \d/u.test(text) &&
    !/\d *[-−]/.test(text) &&
    !as.some((line) => /(?:^|\s)-\d/.test(line)));

/** `plug type long reach, as found`: a setting by its full name, and words that may be what it is. */
const isDescription = (entry: Entry): entry is QuantityEntry =>
  entry.kind === 'setting' && entry.text !== undefined && /\s/.test(nameText(entry));

const nameText = ({ line, name }: QuantityEntry): string => line.text.slice(name.from, name.to);

const described = (entry: QuantityEntry, reading: SpokenReading): SpokenReading => ({
  ...reading,
  question: 'Is this what it is, or a remark?',
  offers: [`${nameText(entry)} "${(entry.text ?? '').replaceAll('"', '')}"`, ...reading.as],
});

/** What names a word of the trade and gives a number, or hardly more, was meant to say something of it. */
function isRemark(entry: Entry, text: string): boolean {
  if (entry.kind === 'unknown' || entry.kind === 'row' || entry.kind === 'blank') return true;
  const words = text.match(/\p{L}+/gu) ?? [];
  return 'statements' in entry && words.length >= (/\d/.test(text) ? 4 : 3);
}

function withoutComment({ line }: Entry): string {
  return line.comment === undefined ? line.text : line.text.slice(0, tokenSpan(line, line.comment).from);
}

/** What was read says what is wrong with it; nothing of it is in force. */
const voided = (entry: Entry): Entry => (entry.kind === 'unknown' ? entry : { ...entry, isVoid: true });

/** Pages begin at heads by their text: what that does not show begins none. */
const isHead = (as: readonly string[]): boolean => as.some((line) => /^session\b/.test(line));

function headEntry(entry: Entry, head: SpokenReading, around: LineScope): Entry {
  const isOther = isOtherMachine(head.as[0] ?? head.offers[0] ?? '', around.machine);
  if (isOther)
    return askedEntry(
      entry,
      {
        ...head,
        question: `The head names another machine than this notebook's, the ${around.machine}. Nothing below it counts here, up to the next head: another engine needs a notebook of its own.`,
        offers: [...head.as, ...head.offers],
      },
      'elsewhere',
    );
  return head.status === 'spoken' ? spokenEntry(entry, head.as, around) : askedEntry(entry, head, 'undated');
}

function spokenEntry({ time, line }: Entry, as: readonly string[], around: NameScope): Entry {
  let section: SectionKind | undefined = around.section;
  const entries = as.map((text) => {
    const entry = readEntry(parseLine(text), { ...around, section });
    if (entry.kind === 'section') section = entry.section;
    if (entry.kind === 'session') section = 'session';
    return entry;
  });
  return { kind: 'spoken', as, entries, time, line };
}

const askedEntry = (
  { time, line }: Entry,
  { question = 'What does this mean?', offers, safety, doubts }: SpokenReading,
  head?: 'undated' | 'elsewhere',
): Entry => ({
  kind: 'asked',
  question,
  offers: choicesOf({ offers }),
  safety,
  doubts,
  head,
  time,
  line,
});

const choicesOf = ({ offers }: Pick<SpokenReading, 'offers'>): readonly (readonly string[])[] =>
  offers.map((offer) => offer.split(' | '));

/** Where all that is offered is to keep the line as it is, what the strict reading found wrong says more. */
function isWorthAsking(entry: Entry, { offers, safety, doubts }: SpokenReading, around: LineScope): boolean {
  if (safety || doubts.length > 0 || offers.some((offer) => !/^(?:note|todo)\b/.test(offer))) return true;
  if (entry.kind === 'blank') return true;
  // Numbers and units alone are a row that has lost its trial.
  if (entry.kind === 'row') return entry.words.length > 0 || !isEmpty(entry.line.syntax.stray);
  return (
    entry.kind === 'unknown' &&
    !isMisspelt(
      entry.words.map((word) => word.text),
      around,
    )
  );
}

/** The line begins with words that are one or two letters off a name. */
function isMisspelt(words: readonly string[], { words: own }: NameScope): boolean {
  const names = [...Object.keys(FIRST_WORDS), ...lastOf(own.keys(), MOST_GUESSED)];
  return [1, 2, 3].some((count) => {
    const naming = words.slice(0, count).join(' ');
    return (
      count <= words.length && naming.length >= SHORTEST_GUESSED && nearestWords(naming, 1, names).length > 0
    );
  });
}

const SHORTEST_GUESSED = 5;
/** Own words of a notebook that are compared, the latest. */
const MOST_GUESSED = 200;

const lastOf = (names: Iterable<string>, most: number): readonly string[] => [...names].slice(-most);
