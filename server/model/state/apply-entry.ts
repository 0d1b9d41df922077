import { isResponse } from '../../trade/vocabulary/quantity.ts';
import type {
  CheckEntry,
  ConflictMark,
  Entry,
  ItemEntry,
  Origin,
  QuantityEntry,
  RowEntry,
  SessionEntry,
} from '../entry/entry.ts';
import { isOpenAfter } from '../entry/merge-conflict.ts';
import { set } from './apply-setting.ts';
import { withTurned } from './changed-since-reading.ts';
import { fitPart, remove } from './fitted-parts.ts';
import { withShared } from './from-used-notebook.ts';
import { put, putLast, same, withoutKey } from './immutable.ts';
import { jetDayAfter } from './jet-air.ts';
import { type Found, isAbsent, type LookUp } from './lookup.ts';
import { withPort } from './ports.ts';
import { readingKey } from './reading-key.ts';
import { aged, withReading } from './reading-window.ts';
import {
  rechecksAfterReading,
  rechecksAfterSession,
  rechecksAfterWork,
  rechecksDone,
  withRecheck,
} from './rechecks.ts';
import { sinceTried, withUntried } from './replaced-unused.ts';
import { isMoving, NO_WORK, withDue } from './road-checks-due.ts';
import { type Carried, keyOf, type Taken } from './state.ts';
import { rowOf, trialBegun, trialWith } from './trial-rows.ts';

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
