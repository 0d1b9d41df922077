/**
 * The door of plain speech: a line that the notation does not fully account for, to lines that it does. Text in, text out; what the
 * lines mean is the ordinary reader's business. A line that may mean two things is asked, never guessed.
 */
import type { Around } from '../names.ts';
import { classify, type Piece } from './classify.ts';
import { type Clause, clausesOf } from './clauses.ts';
import { type Context, type Fact, type Meaning, matches } from './form.ts';
import { complainsOf, faultOffers, shortName, troubleIn } from './forms/danger.ts';
import { headOf } from './forms/heads.ts';
import { checksIn, doneIn, doneOffers, openIn, todoOffers } from './forms/open.ts';
import { weatherIn } from './forms/weather.ts';
import { asked, type Habits, noteOf, type SpokenReading, spokenAs, UNREAD } from './habits.ts';
import { isProse } from './prose.ts';
import { linesOf } from './render.ts';
import { type Settled, settle } from './settle.ts';
import { subjectOf } from './subjects.ts';
import { FORMS } from './table.ts';
import { holds } from './verify.ts';

export type { Habits, SpokenReading } from './habits.ts';

/** Longer lines are left to the notation: nobody pencils one. */
const LONGEST = 300;

export function readSpoken(text: string, scope: Around, habits: Habits): SpokenReading {
  const line = text.trim();
  if (line === '' || line.length > LONGEST) return UNREAD;
  const head = headOf(line, habits);
  if (head) return head;
  const settled = settle(classify(line, scope), habits);
  const trouble = troubleIn(line);
  const open = openIn(line);
  if (trouble && (trouble.safety || !open)) {
    const read = readLine(line, settled, scope, habits, false);
    if (trouble.safety || !read || !holds(read.lines, scope)) return troubled(line, trouble, settled, scope, habits);
  }
  if (open) return todoOffers(line, []);
  return inOrder(line, settled, scope, habits);
}

function troubled(line: string, trouble: NonNullable<ReturnType<typeof troubleIn>>, settled: Settled, scope: Around, habits: Habits): SpokenReading {
  const hasSubject = trouble.safety || complainsOf(settled.pieces, line) || settled.pieces.some(({ kind }) => kind === 't');
  if (!hasSubject) return noteOf(line);
  const read = readLine(line, settled, scope, habits, false)?.lines ?? [];
  return faultOffers(line, trouble, holds(read, scope) ? read : []);
}

function inOrder(line: string, settled: Settled, scope: Around, habits: Habits): SpokenReading {
  const { pieces } = settled;
  const weather = weatherIn(pieces, line, habits);
  if (weather && holds(weather, scope)) return spokenAs(weather);
  const checks = checksIn(line);
  const hasNumber = pieces.some(({ kind }) => kind === 'v');
  if (doneIn(line, pieces) && !hasNumber) return doneOffers(line, checks);
  if (checks.length > 0 && !hasNumber) return asked('Is this what was looked at?', [checks.join(' | '), `note ${line}`]);
  if (!pieces.some(({ kind }) => kind === '?')) {
    const read = readLine(line, settled, scope, habits, false);
    const reading = read && decided(read, scope);
    if (reading) return reading;
  }
  if (!hasNumber && complainsOf(pieces, line)) return faultOffers(line, { safety: false, name: shortName(line) }, []);
  if (isProse(pieces, line)) return noteOf(line);
  return leaning(line, settled, scope, habits);
}

interface Read {
  readonly lines: readonly string[];
  readonly others: readonly string[];
  readonly doubts: SpokenReading['doubts'];
}

function decided({ lines, others, doubts }: Read, scope: Around): SpokenReading | undefined {
  if (lines.length === 0 || !holds(lines, scope)) return undefined;
  if (lines.every((line) => line.startsWith('note '))) return undefined;
  if (others.length === 0 && doubts.length === 0) return spokenAs(lines);
  return asked('Which of these is it?', [lines.join(' | '), ...others], { doubts });
}

/** What leans on an earlier line, or could not be read whole: offered, never counted. */
function leaning(line: string, settled: Settled, scope: Around, habits: Habits): SpokenReading {
  const read = readLine(line, settled, scope, habits, true);
  const offers = read && read.lines.length > 0 && holds(read.lines, scope) ? [read.lines.join(' | ')] : [];
  const isAny = offers.length > 0 || settled.pieces.some(({ kind }) => /[nvk]/.test(kind));
  if (!isAny) return UNREAD;
  return asked('What does this belong to?', [...offers, `note ${line}`, `todo ${shortName(line)}: ${line.replace(/[:;[\]]/g, ' ')}`]);
}

/** Each clause by the first form that fits it. Undefined where one has none. */
function readLine(text: string, { pieces, time }: Settled, scope: Around, habits: Habits, isCarried: boolean): Read | undefined {
  const last = isCarried ? subjectOf(habits.lines ?? []) : undefined;
  let facts: readonly Fact[] = [];
  const notes: string[] = [];
  const doubts: SpokenReading['doubts'][number][] = [];
  let names = last?.names;
  let place = last?.place;
  for (const clause of clausesOf(pieces)) {
    const context: Context = { text, scope, habits, facts, names, place, isCarried };
    const meaning = clauseOf(clause, context);
    if (!meaning) return undefined;
    facts = [...(meaning.corrects ? facts.slice(0, -1) : facts), ...(meaning.facts ?? [])];
    if (meaning.note) notes.push(meaning.note);
    if (meaning.doubt) doubts.push(meaning.doubt);
    names = meaning.names ?? names;
    place = meaning.place ?? place;
  }
  const now = current(facts);
  const lines = [...linesOf(now, time), ...notes.map((note) => `note ${note}`)];
  return { lines, others: now.flatMap((fact) => fact.others), doubts };
}

/** What was before or is printed goes where the value of today is given too. */
function current(facts: readonly Fact[]): readonly Fact[] {
  const kept = facts.filter((fact) => fact.of === 'now' || !facts.some((each) => each.of === 'now' && each.name === fact.name));
  return kept;
}

function clauseOf(clause: Clause, context: Context): Meaning | undefined {
  for (const form of FORMS) {
    const meaning = matches(form.pattern, clause) ? form.means(clause, context) : undefined;
    if (meaning) return meaning;
  }
  return remarkOf(clause, context);
}

/** A clause without a number that names nothing to be set and complains of nothing. */
function remarkOf(clause: Clause, { text, names }: Context): Meaning | undefined {
  const [first] = clause;
  const last = clause.at(-1);
  if (!first || !last) return undefined;
  const named = clause.filter(({ kind }) => kind === 'n');
  const alone = named.length === 1 && clause.every(({ kind }) => /[nfp:]/.test(kind));
  if (alone) return { names: (named[0] as Piece).names };
  if (clause.some(({ kind }) => /[twq?nvk"]/.test(kind))) return undefined;
  const note = text.slice(first.from, last.to);
  return clause.every(({ kind }) => kind === 'f') ? { ...(names && { names }) } : { note };
}
