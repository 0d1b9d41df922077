import { isResponse, isUnderWay } from '../../trade/vocabulary/quantity.ts';
import type {
  CheckEntry,
  ConflictMark,
  Entry,
  ItemEntry,
  Origin,
  QuantityEntry,
  RowEntry,
} from '../entry/entry.ts';
import { isOpenAfter } from '../entry/merge-conflict.ts';
import { withSpec } from '../entry/spec-names.ts';
import { machineIn } from '../spoken/machines.ts';
import { applySetting } from './apply-setting.ts';
import { withChange } from './changed-since-reading.ts';
import { fitPart, remove } from './fitted-parts.ts';
import { withUsedNotebook } from './from-used-notebook.ts';
import { habitsAfter } from './habits.ts';
import { put, putLast, same, withoutKey } from './immutable.ts';
import { jetAirAfter } from './jet-air.ts';
import { isAbsent, type LookUp, type LookUpResult } from './lookup.ts';
import { backIn, withAsked, withHead, withLines } from './plain-speech.ts';
import { withPort } from './ports.ts';
import { readingKey } from './reading-key.ts';
import { withReading } from './reading-window.ts';
import {
  cooledDown,
  rechecksAfterReading,
  rechecksAfterWork,
  rechecksDone,
  withRecheck,
  withRechecksDue,
} from './rechecks.ts';
import { afterUse, withUnused } from './replaced-unused.ts';
import { NO_WORK, withChecksDue } from './road-checks-due.ts';
import { startSession } from './start-session.ts';
import { keyOf, type OpenItem, type SessionReading, type State } from './state.ts';
import { newTrial, rowOf, trialWith } from './trial-rows.ts';

/** The state after a line; after a line of plain speech that of all it means, one after the other. */
export function applyEntry(before: State, entry: Entry, where: Origin, lookUp: LookUp): State {
  if (entry.kind === 'blank' || entry.isVoid) return before;
  if (entry.kind === 'asked') return withAsked(before, entry, where);
  if (entry.kind !== 'spoken')
    return withLines(applyOne(before, entry, where, lookUp), [entry.line.text.trim()]);
  const after = entry.entries.reduce(
    (state, each) => applyOne(state, each, originIn(state, each, where), lookUp),
    before,
  );
  return withLines(withHead(backIn(before, after), entry), entry.as);
}

/** Of something that a line says: the line, and the day it belongs to. */
export const originIn = (state: State, entry: Entry, { ref }: Origin): Origin => ({
  ref,
  date: entry.kind === 'session' ? entry.date : state.session?.date,
});

function applyOne(before: State, entry: Entry, where: Origin, lookUp: LookUp): State {
  const after = applied(before, entry, where, lookUp);
  const habits = habitsAfter(after.habits, entry);
  return habits === after.habits ? after : { ...after, habits };
}

function applied(before: State, entry: Entry, where: Origin, lookUp: LookUp): State {
  if (entry.kind === 'conflict') return throughConflict(before, entry.mark);
  const since = afterUse(before, entry);
  const state = since.trial && endsTrial(entry) ? { ...since, trial: undefined } : since;
  switch (entry.kind) {
    case 'section':
      return withRechecksDue(state, {
        ...state,
        section: entry.section,
        session: undefined,
        recentLines: NO_LINES,
        isElsewhere: false,
        machine: machineIn(entry.title) ?? state.machine,
        portsHead: entry.section === 'ports' ? where : undefined,
        readings: NO_READINGS,
        checksDueSinceRun: NO_WORK,
        jetAir: jetAirAfter(state),
        recheckIndex: cooledDown(state.recheckIndex),
        notebook: entry.title || state.notebook,
      });
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
        specs: withSpec(state.specs, keyOf(name, quantity.name), {
          name,
          quantity,
          values,
          source,
          by: where,
        }),
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
      return { ...state, ...withRecheck(state, entry, where) };
    case 'trial':
      return { ...state, trial: newTrial(entry, where) };
    case 'row':
      return withRow(state, entry, where);
    case 'keep':
      return { ...state, keptSession: { date: state.session?.date, by: where } };
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

function throughConflict(state: State, mark: ConflictMark | undefined): State {
  const inConflict = isOpenAfter(state.inConflict, mark);
  return inConflict === state.inConflict ? state : { ...state, inConflict };
}

const NO_LINES: State['recentLines'] = [];
const NO_READINGS: State['readings'] = new Map();
const NOTHING_TURNED: State['changesSinceReading'] = [];

const endsTrial = (entry: Entry): boolean => !['row', 'want', 'note', 'blank', 'file'].includes(entry.kind);

function withSettings(state: State, entry: QuantityEntry, where: Origin): State {
  let settings = state.settings;
  for (const said of entry.statements) settings = applySetting(settings, entry, said, where);
  const turned = withChange(state.changesSinceReading, entry, state.settings, settings, where);
  const untried = withUnused(state.notYetUsed, entry, where);
  const { rechecks, recheckIndex } = rechecksAfterWork(state, entry, where);
  return withChecksDue(
    {
      ...state,
      rechecks,
      recheckIndex,
      settings,
      changesSinceReading: turned,
      notYetUsed: untried,
    },
    [entry.quantity],
    where,
  );
}

function withReadings(state: State, entry: QuantityEntry, where: Origin): State {
  const { name, traits } = entry.quantity;
  let { readings, latest: lastly, recentReadings: past } = state;
  for (const said of entry.statements) {
    const taken: SessionReading = { quantity: entry.quantity, statement: said, time: entry.time, by: where };
    const key = readingKey(name, said);
    readings = putLast(readings, key, taken); // as its line is the last
    past = withReading(past, key, entry.quantity, said);
    if (traits?.meter || traits?.outlastsSession) lastly = put(lastly, name, taken);
  }
  const turned = isResponse(entry.quantity) ? NOTHING_TURNED : state.changesSinceReading;
  const dueSinceRun = isUnderWay(entry.quantity) ? NO_WORK : state.checksDueSinceRun;
  const { rechecks, recheckIndex } = rechecksAfterWork(state, entry, where);
  const after = {
    ...state,
    rechecks,
    recheckIndex,
    readings,
    latest: lastly,
    recentReadings: past,
    changesSinceReading: turned,
    checksDueSinceRun: dueSinceRun,
  };
  return rechecksAfterReading(state, after, entry, where);
}

function withStated(map: State['facts'], entry: QuantityEntry, where: Origin): State['facts'] {
  const { quantity, text } = entry;
  let after = map;
  for (const said of entry.statements)
    after = put(after, keyOf(quantity.name, said.place?.text), {
      quantity,
      statement: said,
      text,
      by: where,
    });
  return after;
}

function withItem(state: State, entry: ItemEntry, where: Origin): State {
  if (entry.word === 'done') {
    const items = withoutKey(state.items, entry.id);
    const safetyItems = withoutKey(state.safetyItems, entry.id);
    return { ...state, ...rechecksDone(state, entry.id, where), items, safetyItems };
  }
  const { id, word, text, safety } = entry;
  const item: OpenItem = { word, text, safety, by: where };
  const safetyItems = safety ? put(state.safetyItems, id, item) : withoutKey(state.safetyItems, id);
  return { ...state, items: put(state.items, id, item), safetyItems };
}

function withCheck(state: State, entry: CheckEntry, where: Origin): State {
  if (entry.ok === undefined) return state;
  const checks = put(state.checks, entry.name, { ok: entry.ok, by: where });
  if (!entry.ok) return { ...state, checks };
  const checksDue = withoutKey(state.checksDue, entry.name);
  return { ...state, ...rechecksDone(state, entry.name, where), checks, checksDue };
}

function withRow(state: State, entry: RowEntry, where: Origin): State {
  if (!state.trial) return state;
  return { ...state, trial: trialWith(state.trial, rowOf(entry, where)) };
}

/** The settings and the parts of that day; items, limits and what was read stay as they are now. */
function revert(state: State, then: LookUpResult, where: Origin): State {
  if (!then || isAbsent(then)) return state;
  const { settings, fitted, parked } = then;
  const work = [...settings].filter(([key, setting]) => !same(state.settings.get(key), setting));
  const quantities = work.map(([, { quantity }]) => quantity);
  return withChecksDue(
    { ...state, settings, fitted, parked, changesSinceReading: NOTHING_TURNED },
    quantities,
    where,
  );
}

const use = (state: State, shared: LookUpResult, where: Origin): State =>
  shared && !isAbsent(shared) ? withUsedNotebook(state, shared, where) : state;
