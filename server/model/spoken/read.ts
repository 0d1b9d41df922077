/**
 * `readSpoken`, the door of plain speech: a line that the notation does not fully account for, to lines that it does. Text in, text out; what the
 * lines mean is the ordinary reader's business. A line that may mean two things is asked, never guessed.
 */

import { findQuantity } from '../../trade/vocabulary/vocabulary.ts';
import type { NameScope } from '../entry/name-lookup.ts';
import { classify } from './classify.ts';
import { type Clause, clausesOf } from './clauses.ts';
import { contradicts, current, withRemark, withStates } from './fact-list.ts';
import { type Context, type Fact, type Meaning, matches } from './form.ts';
import { complainsOf, faultOffers, shortName, troubleIn } from './forms/danger.ts';
import { engineIn } from './forms/engine.ts';
import { atMost, firingIn, limitedIn, rowUnder, speedAtRevs } from './forms/facts.ts';
import { isOfElsewhere } from './forms/foreign.ts';
import { headOf } from './forms/heads.ts';
import { metersIn } from './forms/meters.ts';
import { checksIn, doneIn, doneOffers, isPlan, openIn, todoOffers } from './forms/open.ts';
import { rowsIn } from './forms/rows.ts';
import { weatherIn } from './forms/weather.ts';
import { asked, type Habits, noteOf, type SpokenReading, spokenAs, UNREAD } from './habits.ts';
import { doubtIn, isProse, isUncounted } from './prose.ts';
import { remarkOf } from './remarks.ts';
import { linesOf } from './render.ts';
import { fitsOf } from './resolve.ts';
import { type Settled, settle } from './settle.ts';
import { subjectsOf } from './subjects.ts';
import { FORMS } from './table.ts';
import { holds } from './verify.ts';
import { isReverted, movedIn, profileIn, reworded } from './wordings.ts';

/** A letter that looks like a figure, among figures: what was meant is offered. */
function letterFor(line: string, scope: NameScope, habits: Habits): SpokenReading | undefined {
  const mended = line
    .replace(/(?<=\d[.,]?)[oO](?![a-zA-Z/])|(?<![\w/])[oO](?=[.,]\d)|(?<=(?:^|\s)[.,])[oO](?=\d)/g, '0')
    .replace(/(?<![\w/.'’])[lI](?=\d)/g, '1');
  if (mended === line) return undefined;
  const read = readSpoken(mended, scope, habits);
  const offers = read.status === 'spoken' ? [read.as.join(' | ')] : read.offers.slice(0, 1);
  return read.status === 'spoken' || read.status === 'asked'
    ? asked('Is that a letter among the figures?', [...offers, `note ${line}`])
    : undefined;
}

/** Longer lines are left to the notation: nobody pencils one. */
const LONGEST = 300;

export function readSpoken(text: string, scope: NameScope, habits: Habits): SpokenReading {
  const line = text.trim();
  if (line === '' || line.length > LONGEST) return UNREAD;
  const slip = letterFor(line, scope, habits);
  if (slip) return slip;
  const head = headOf(line, habits);
  if (head) return head;
  const settled = settle(classify(line, scope), habits);
  const trouble = troubleIn(line);
  const open = openIn(line);
  if (trouble && (trouble.safety || !open)) {
    const read = trouble.safety ? undefined : readLine(line, settled, scope, habits);
    const isRead = read !== undefined && saysSomething(read.lines) && holds(read.lines, scope);
    if (!isRead) return troubled(line, trouble, settled, scope, habits);
  }
  if (open) return todoOffers(line, []);
  return inOrder(line, settled, scope, habits);
}

function troubled(
  line: string,
  trouble: NonNullable<ReturnType<typeof troubleIn>>,
  settled: Settled,
  scope: NameScope,
  habits: Habits,
): SpokenReading {
  const read = readLine(line, settled, scope, habits)?.lines ?? [];
  return faultOffers(line, trouble, holds(read, scope) ? read : []);
}

function inOrder(line: string, settled: Settled, scope: NameScope, habits: Habits): SpokenReading {
  const { pieces } = settled;
  const whole =
    firingIn(line) ??
    engineIn(line, habits) ??
    profileIn(line) ??
    limits(line, scope, habits) ??
    speedAtRevs(pieces, habits) ??
    rowsIn(pieces, line, habits) ??
    metersIn(pieces, line, habits);
  if (whole && holds(whole, scope)) return spokenAs(whole);
  if (isOfElsewhere(pieces, line)) return noteOf(line);
  const row = rowOf(line, scope, habits);
  if (row) return row;
  const weather = weatherIn(pieces, line, habits);
  if (weather && holds(weather, scope)) return spokenAs(weather);
  const checks = checksIn(line);
  const hasNumber = pieces.some(({ kind }) => kind === 'v');
  if (doneIn(line, pieces) && !hasNumber) return doneOffers(line, checks);
  if (checks.length > 0 && !hasNumber)
    return asked('Is this what was looked at?', [checks.join(' | '), `note ${line}`]);
  if (!pieces.some(({ kind }) => kind === '?')) {
    const read = readLine(line, settled, scope, habits) ?? namedLate(line, settled, scope, habits);
    const reading = read && decided(line, read, scope);
    if (reading) return reading;
  }
  const other = inOtherWords(line, scope, habits);
  if (other) return other;
  if (!hasNumber && complainsOf(pieces, line))
    return faultOffers(line, { safety: false, name: shortName(line) }, []);
  const doubt = doubtIn(pieces);
  if (doubt) return asked('How far was it moved?', [`note ${line}`], { doubts: [doubt] });
  const isOpen = isUncounted(pieces) || (hasNumber && isPlan(line));
  if (!isOpen && isProse(pieces, line, habits.cylinders)) return noteOf(line);
  return leaning(line, settled, scope, habits);
}

/** `dont go past 36 total or 220 on the temp`. */
function limits(line: string, scope: NameScope, habits: Habits): readonly string[] | undefined {
  const limited = limitedIn(line)?.replace(/ or /g, ', ');
  const read = limited && readLine(limited, settle(classify(limited, scope), habits), scope, habits);
  return read && read.others.length === 0 ? atMost(read.lines) : undefined;
}

/** A row of a table is read by its heading above: offered. */
function rowOf(line: string, scope: NameScope, habits: Habits): SpokenReading | undefined {
  const row = rowUnder(line, habits.lines ?? []);
  const lines = row?.cells.map(({ name, text }) => {
    const amount = classify(text, scope)[0]?.amount;
    const fit = amount && fitsOf([name], amount, habits)[0];
    return fit ? `${name} #${row.cylinder} ${fit.value}` : '';
  });
  if (!row || !lines || lines.includes('') || !holds(lines, scope)) return undefined;
  // Right under its heading or another row it can be nothing else.
  if (row.isNext) return spokenAs(lines);
  return asked('Is this a row of the table above?', [lines.join(' | '), `note ${line}`]);
}

/** `front 4 1/2, rear 5 on the meter`: the one word of the trade stands after its numbers. */
function namedLate(line: string, settled: Settled, scope: NameScope, habits: Habits): Read | undefined {
  const [named, ...more] = settled.pieces.filter(({ kind }) => kind === 'n');
  const first = settled.pieces.findIndex(({ kind }) => kind === 'v');
  if (!named || more.length > 0 || first < 0 || settled.pieces.indexOf(named) < first) return undefined;
  // `8 gal used, oil 45`: the word has a number of its own.
  if (settled.pieces.slice(settled.pieces.indexOf(named)).some(({ kind }) => kind === 'v')) return undefined;
  return readLine(line, settled, scope, habits, named.names);
}

/** A change that is said in a roundabout way. */
function inOtherWords(line: string, scope: NameScope, habits: Habits): SpokenReading | undefined {
  const said = reworded(line, habits);
  const settled = said === undefined ? undefined : settle(classify(said, scope), habits);
  if (!said || !settled || settled.pieces.some(({ kind }) => kind === '?')) return undefined;
  const read = readLine(said, settled, scope, habits);
  return read && decided(line, read, scope);
}

/** More than remarks. */
const saysSomething = (lines: readonly string[]): boolean => lines.some((line) => !line.startsWith('note '));

interface Read {
  readonly lines: readonly string[];
  readonly others: readonly string[];
  readonly doubts: SpokenReading['doubts'];
}

function decided(line: string, { lines, others, doubts }: Read, scope: NameScope): SpokenReading | undefined {
  if (lines.length === 0 || !holds(lines, scope)) return undefined;
  if (!saysSomething(lines)) return undefined;
  if ((isPlan(line) || isReverted(line)) && lines.every(isSetting))
    return asked('Was it done, or is it to be done?', [
      lines.join(' | '),
      `todo ${shortName(line)}: ${plainOf(line)}`,
      `note ${line}`,
    ]);
  if (others.length === 0 && doubts.length === 0) return spokenAs(lines);
  return asked('Which of these is it?', [lines.join(' | '), ...others], { doubts });
}

const isSetting = (line: string): boolean => findQuantity(line.split(' '))?.quantity.kind === 'setting';
const plainOf = (line: string): string => line.replace(/[:;[\]]/g, ' ');

/** What leans on an earlier line, or could not be read whole: offered, never counted. */
function leaning(line: string, settled: Settled, scope: NameScope, habits: Habits): SpokenReading {
  const subjects: readonly (string | undefined)[] = [...subjectsOf(habits.lines ?? []), undefined];
  const carried = subjects.flatMap((subject) => {
    const read = readLine(line, settled, scope, habits, subject ? [subject] : undefined);
    return read && read.lines.length > 0 && holds(read.lines, scope) ? [read.lines.join(' | ')] : [];
  });
  const offers = [...new Set([...movedIn(line), ...carried])];
  const isAny = offers.length > 0 || isPlan(line) || settled.pieces.some(({ kind }) => /[nvkq]/.test(kind));
  if (!isAny) return UNREAD;
  return asked('What does this belong to?', [
    ...offers.slice(0, 2),
    `note ${line}`,
    `todo ${shortName(line)}: ${plainOf(line)}`,
  ]);
}

/** Each clause by the first form that fits it. Undefined where one has none. */
function readLine(
  text: string,
  { pieces, time }: Settled,
  scope: NameScope,
  habits: Habits,
  subject?: readonly string[],
): Read | undefined {
  let facts: readonly Fact[] = [];
  const notes: string[] = [];
  const doubts: SpokenReading['doubts'][number][] = [];
  const about: (readonly string[])[] = subject ? [subject] : [];
  let place: string | undefined;
  let unit: Context['unit'];
  let heading: readonly (readonly string[])[] = [];
  for (const clause of clausesOf(pieces)) {
    const [names, ...earlier] = about;
    const context: Context = {
      text,
      scope,
      habits,
      facts,
      names,
      earlier,
      place,
      unit,
      isCarried: subject !== undefined,
    };
    const meaning = clauseOf(clause, context);
    if (!meaning) return undefined;
    facts = [...(meaning.corrects ? facts.slice(0, -1) : facts), ...(meaning.facts ?? [])];
    if (meaning.remark) facts = withRemark(facts, meaning.remark);
    if (meaning.states) facts = withStates(facts, meaning.states);
    if (meaning.note) notes.push(meaning.note);
    if (meaning.doubt) doubts.push(meaning.doubt);
    if (meaning.names) about.unshift(meaning.names);
    // `oil 90 C, 4 bar`: the word may be both.
    const word = clause.find(({ kind }) => kind === 'n')?.names;
    if (word && word.length > 1) about.splice(1, 0, word);
    if (meaning.isHeading) heading = [...heading, meaning.names ?? []];
    place = meaning.place ?? place;
    unit = meaning.unit ?? unit;
  }
  // What names a thing and says nothing of it has no part in the meaning.
  if (heading.some((named) => !facts.some(({ name }) => named.includes(name)) && !isCovered(named, facts)))
    return undefined;
  const now = current(facts);
  if (DOUBTED.test(text) && now.length > 1) return undefined;
  if (contradicts(now) || (PRINTED.test(text) && now.some(isGone))) return undefined;
  const lines = [...linesOf(now, time), ...notes.map((note) => `note ${note}`)];
  const open = doubts.filter(({ name }) => !now.some((fact) => fact.name === name));
  return { lines, others: now.flatMap((fact) => fact.others), doubts: open };
}

/** `27 - glasses - 17`: one word between two numbers takes the first back, or does not. */
const DOUBTED = /\d - \p{L}{2,20} - \d/u;

const PRINTED = /\b(?:book|handbook|spec|manual|should|supposed)\b/i;

/** What a setting was, beside what is printed: which it is now is not said. */
const isGone = ({ of, name }: Fact): boolean =>
  of === 'before' && findQuantity(name.split(' '))?.quantity.kind === 'setting';

/** Jets that are wound are the mixture, a governed engine has a speed. */
const isCovered = (named: readonly string[], facts: readonly Fact[]): boolean =>
  named.includes('plug') && facts.some(({ name }) => name === 'plug');

function clauseOf(clause: Clause, context: Context): Meaning | undefined {
  for (const form of FORMS) {
    const meaning = matches(form.pattern, clause) ? form.means(clause, context) : undefined;
    if (meaning) return meaning;
  }
  return remarkOf(clause, context);
}
