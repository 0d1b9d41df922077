/** How one line changes what is carried: `step(carried, entry, where)` gives the state after it. */

import { partKind } from '../trade/parts.ts';
import type { PartKind } from '../trade/quantity.ts';
import { type Carried, keyOf, same, type Taken } from './carry.ts';
import { isResponse } from './comparable.ts';
import { isOpenAfter } from './conflicts.ts';
import { isMoving, NO_WORK, withDue } from './due.ts';
import type { FileProblem } from './files.ts';
import { jetDayAfter } from './jet-day.ts';
import { put, putAll, putLast, without, withoutKey } from './maps.ts';
import type {
  CheckEntry,
  ConflictMark,
  Entry,
  FitEntry,
  ItemEntry,
  Origin,
  QuantityEntry,
  Ref,
  RowEntry,
  SessionEntry,
} from './notebook.ts';
import { aged, withReading } from './past.ts';
import { withPort } from './ports.ts';
import { readingKey } from './reading-key.ts';
import {
  rechecksAfterReading,
  rechecksAfterSession,
  rechecksAfterWork,
  rechecksDone,
  withRecheck,
} from './rechecks.ts';
import { set } from './setting.ts';
import { rowOf, trialBegun, trialWith } from './trials.ts';
import { alsoTurned, withTurned } from './turned.ts';
import { sinceTried, withUntried } from './untried.ts';
import { withShared } from './with-shared.ts';

/** What a line may ask beyond what is carried to it. */
export type Question =
  /** The state at the end of that day's session, not of the one that asks. */
  | { readonly of: 'day'; readonly date: string; readonly asking: Ref | undefined }
  /** The state at the end of another notebook, by the path as written. */
  | { readonly of: 'notebook'; readonly path: string }
  /** Whether a file that is only named is missing, by the path as written. */
  | { readonly of: 'file'; readonly path: string };

/** Why another notebook gives nothing; `cycle`: it uses, in the end, the one that asks. */
export interface Absent {
  readonly problem: FileProblem | 'cycle';
  /** Where a file was looked for, from the folder that may be read; where that says more than the path. */
  readonly lookedAt?: string;
}

/** Undefined where there is no such day, the file is there, or nobody looked. */
export type Found = Carried | Absent | undefined;

export type LookUp = (question: Question) => Found;

export const isAbsent = (found: Found): found is Absent => found !== undefined && 'problem' in found;

export function step(carried: Carried, entry: Entry, where: Origin, lookUp: LookUp): Carried {
  if (entry.kind === 'conflict') return throughConflict(carried, entry.mark);
  const since = sinceTried(carried, entry);
  const state = since.trial && endsTrial(entry) ? { ...since, trial: undefined } : since;
  switch (entry.kind) {
    case 'section':
      return {
        ...state,
        section: entry.section,
        session: undefined,
        portsHead: entry.section === 'ports' ? where : undefined,
        readings: NO_READINGS,
        dueSinceRun: NO_WORK,
        jetDay: jetDayAfter(state),
        rechecks: rechecksAfterSession(state.rechecks),
        notebook: entry.title || state.notebook,
      };
    case 'session':
      return startSession(state, entry, where);
    case 'setting':
      return withSettings(state, entry, where);
    case 'reading':
      return withReadings(state, entry, where);
    case 'fact':
      return { ...state, facts: withStated(state.facts, entry, where) };
    case 'limit':
      return { ...state, limits: withStated(state.limits, entry, where) };
    case 'target':
      return { ...state, targets: withStated(state.targets, entry, where) };
    case 'spec': {
      const { name, quantity, values, source } = entry;
      return {
        ...state,
        specs: put(state.specs, keyOf(name, quantity.name), { name, quantity, values, source, by: where }),
      };
    }
    case 'part':
      return {
        ...state,
        parts: put(state.parts, entry.name, { part: entry.part, text: entry.text, by: where }),
      };
    case 'port':
      return { ...state, ...withPort(state, entry, where) };
    case 'word':
      return entry.quantity ? { ...state, words: put(state.words, entry.name, entry.quantity) } : state;
    case 'item':
      return withItem(state, entry, where);
    case 'fit':
      return entry.word === 'fit' ? fitPart(state, entry, where) : remove(state, entry, where);
    case 'check':
      return withCheck(state, entry, where);
    case 'recheck':
      return { ...state, rechecks: withRecheck(state, entry, where) };
    case 'trial':
      return { ...state, trial: trialBegun(entry, where) };
    case 'row':
      return withRow(state, entry, where);
    case 'keep':
      return { ...state, kept: { date: state.session?.date, by: where } };
    case 'file':
      return entry.word === 'use' ? use(state, lookUp({ of: 'notebook', path: entry.path }), where) : state;
    case 'revert':
      return revert(
        state,
        entry.date === undefined
          ? undefined
          : lookUp({ of: 'day', date: entry.date, asking: state.session?.by.ref }),
        where,
      );
    default:
      return state;
  }
}

function throughConflict(carried: Carried, mark: ConflictMark | undefined): Carried {
  const inConflict = isOpenAfter(carried.inConflict, mark);
  return inConflict === carried.inConflict ? carried : { ...carried, inConflict };
}

const NO_READINGS: Carried['readings'] = new Map();
const NOTHING_TURNED: Carried['turned'] = [];

const endsTrial = (entry: Entry): boolean => !['row', 'want', 'note', 'blank', 'file'].includes(entry.kind);

function startSession(state: Carried, entry: SessionEntry, where: Origin): Carried {
  const { date, clock, title } = entry;
  const later = date !== undefined && (state.lastDate === undefined || date >= state.lastDate.date);
  return {
    ...state,
    section: 'session',
    session: { date, title, by: where },
    lastDate: later ? { date, clock, by: where } : state.lastDate,
    portsHead: undefined,
    readings: NO_READINGS,
    dueSinceRun: NO_WORK,
    jetDay: jetDayAfter(state),
    rechecks: rechecksAfterSession(state.rechecks),
    past: aged(state.past),
  };
}

function withSettings(state: Carried, entry: QuantityEntry, where: Origin): Carried {
  let settings = state.settings;
  for (const said of entry.said) settings = set(settings, entry, said, where);
  const turned = withTurned(state.turned, entry, state.settings, settings, where);
  const untried = withUntried(state.untried, entry, where);
  const rechecks = rechecksAfterWork(state, entry, where);
  return withDue({ ...state, settings, turned, untried, rechecks }, [entry.quantity], where);
}

/** What totals and reminders ask for beside settings. Kept few: each one carried ties later pages to earlier ones. */
const ASKED_LATER: ReadonlySet<string> = new Set(['idle', 'depression', 'odometer', 'hours']);

function withReadings(state: Carried, entry: QuantityEntry, where: Origin): Carried {
  let { readings, lastly, past } = state;
  for (const said of entry.said) {
    const taken: Taken = { quantity: entry.quantity, said, time: entry.time, by: where };
    const key = readingKey(entry.quantity.name, said);
    readings = putLast(readings, key, taken); // as its line is the last
    past = withReading(past, key, entry.quantity, said);
    if (ASKED_LATER.has(entry.quantity.name)) lastly = put(lastly, entry.quantity.name, taken);
  }
  const turned = isResponse(entry.quantity) ? NOTHING_TURNED : state.turned;
  const rechecks = rechecksAfterReading(rechecksAfterWork(state, entry, where), entry, where);
  const dueSinceRun = isMoving(entry.quantity) ? NO_WORK : state.dueSinceRun;
  return { ...state, readings, lastly, past, turned, rechecks, dueSinceRun };
}

function withStated(map: Carried['facts'], entry: QuantityEntry, where: Origin): Carried['facts'] {
  const { quantity, text } = entry;
  let after = map;
  for (const said of entry.said)
    after = put(after, keyOf(quantity.name, said.place?.text), { quantity, said, text, by: where });
  return after;
}

function withItem(state: Carried, entry: ItemEntry, where: Origin): Carried {
  if (entry.word === 'done') {
    const rechecks = rechecksDone(state, entry.id, where);
    return { ...state, items: withoutKey(state.items, entry.id), rechecks };
  }
  const { word, text, safety } = entry;
  return { ...state, items: put(state.items, entry.id, { word, text, safety, by: where }) };
}

function withCheck(state: Carried, entry: CheckEntry, where: Origin): Carried {
  if (entry.ok === undefined) return state;
  const checks = put(state.checks, entry.name, { ok: entry.ok, by: where });
  if (!entry.ok) return { ...state, checks };
  const rechecks = rechecksDone(state, entry.name, where);
  return { ...state, checks, due: withoutKey(state.due, entry.name), rechecks };
}

function withRow(state: Carried, entry: RowEntry, where: Origin): Carried {
  if (!state.trial) return state;
  return { ...state, trial: trialWith(state.trial, rowOf(entry, where)) };
}

/** The kind of a part by its name: as declared, else by the words of the name. */
export function kindOfPart(state: Carried, name: string): PartKind | undefined {
  return state.parts.get(name)?.part ?? partKind(name.split(' '));
}

/** What the part before it owned is put aside under its name; what this one owned when it came off is back. */
function fitPart(state: Carried, entry: FitEntry, where: Origin): Carried {
  const kind = kindOfPart(state, entry.name);
  if (!kind || state.fitted.get(kind)?.name === entry.name) return state;
  const bare = takeOff(state, kind);
  const back = bare.parked.get(entry.name) ?? new Map();
  const after = {
    ...bare,
    turned: state.fitted.has(kind) ? alsoTurned(state.turned, kind, where) : state.turned,
    settings: putAll(bare.settings, back),
    fitted: put(bare.fitted, kind, { name: entry.name, written: writtenName(entry), by: where }),
    parked: withoutKey(bare.parked, entry.name),
  };
  return withDue(after, [{ name: entry.name, owner: kind }], where);
}

const writtenName = ({ line, nameSpan }: FitEntry): string =>
  line.text.slice(nameSpan.from, nameSpan.to).replace(/\s+/g, ' ');

function remove(state: Carried, entry: FitEntry, where: Origin): Carried {
  const kind = kindOfPart(state, entry.name);
  if (!kind || state.fitted.get(kind)?.name !== entry.name) return state;
  return withDue(takeOff(state, kind), [{ name: entry.name, owner: kind }], where);
}

/** A part that was never named keeps its settings under the empty name of its kind. */
function takeOff(state: Carried, kind: PartKind): Carried {
  const owned = new Map([...state.settings].filter(([, setting]) => setting.quantity.owner === kind));
  const name = state.fitted.get(kind)?.name ?? `(${kind})`;
  return {
    ...state,
    settings: without(state.settings, (key) => owned.has(key)),
    fitted: withoutKey(state.fitted, kind),
    parked: owned.size > 0 || state.fitted.has(kind) ? put(state.parked, name, owned) : state.parked,
  };
}

/** The settings and the parts of that day; items, limits and what was read stay as they are now. */
function revert(state: Carried, then: Found, where: Origin): Carried {
  if (!then || isAbsent(then)) return state;
  const { settings, fitted, parked } = then;
  const work = [...settings].filter(([key, setting]) => !same(state.settings.get(key), setting));
  const quantities = work.map(([, { quantity }]) => quantity);
  return withDue({ ...state, settings, fitted, parked, turned: NOTHING_TURNED }, quantities, where);
}

const use = (state: Carried, shared: Found, where: Origin): Carried =>
  shared && !isAbsent(shared) ? withShared(state, shared, where) : state;
