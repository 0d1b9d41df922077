/**
 * Reminders: `recheck NAME after 1 heat cycle | 200 mi | 10 h | 30 days`, by the notebook's own odometer, hour meter,
 * dates and heat cycles. A heat cycle is a session in which the engine got warm after the line, and which has ended.
 */
import { type Interval, subtract } from '../../trade/measure/interval.ts';
import { amountIn } from '../entry/amount.ts';
import { daysBetween } from '../entry/date.ts';
import type { Origin, QuantityEntry, RecheckEntry } from '../entry/entry.ts';
import { specNames } from '../entry/spec-names.ts';
import { ofName, put, withoutKey } from './immutable.ts';
import {
  added,
  COUNTED_IN,
  type Counted,
  countedBy,
  cyclesWanted,
  isMeter,
  mayFallDue,
  notStarted,
  ROUNDING,
  taken,
} from './recheck-index.ts';
import type { Recheck, SessionReading, State } from './state.ts';
import { showsWarm } from './warm-engine.ts';

type Reminders = Pick<State, 'rechecks' | 'recheckIndex'>;
type Index = State['recheckIndex'];

/** The reminders after one more; under a name that is there already the new one holds. */
export const withRecheck = (state: State, { name, after, again }: RecheckEntry, by: Origin): Reminders =>
  after ? begin(state, name, { after, again }, by) : state;

/** Removes a reminder that was done, or restarts it where it repeats. */
export function rechecksDone(state: State, name: string, by: Origin): Reminders {
  const recheck = state.rechecks.get(name);
  if (!recheck) return state;
  if (recheck.again) return begin(state, name, recheck, by);
  const { rechecks, recheckIndex } = state;
  return { rechecks: withoutKey(rechecks, name), recheckIndex: taken(recheckIndex, name, recheck) };
}

function begin(
  state: State,
  name: string,
  { after, again }: Pick<Recheck, 'after' | 'again'>,
  by: Origin,
): Reminders {
  const counted = countedBy(after);
  const start = counted === 'odometer' || counted === 'hours' ? state.latest.get(counted) : undefined;
  const old = state.rechecks.get(name);
  const index = old ? taken(state.recheckIndex, name, old) : state.recheckIndex;
  const fromCycle = index.cycles + (index.warm ? 1 : 0);
  const begun: Recheck = { after, again, by, start, fromCycle, due: false };
  const due = progressOf(begun, { ...state, recheckIndex: index })?.due ?? false;
  const recheck = { ...begun, due };
  return { rechecks: put(state.rechecks, name, recheck), recheckIndex: added(index, name, recheck) };
}

/** Removes a due reminder whose quantity was set or read again. */
export function rechecksAfterWork(state: State, { quantity }: QuantityEntry, by: Origin): Reminders {
  if (state.recheckIndex.due === 0) return state;
  const names = namesOf(quantity.name, state).filter((name) => state.rechecks.get(name)?.due);
  let after: State = state;
  for (const name of names) after = { ...after, ...rechecksDone(after, name, by) };
  return after;
}

/** The names under which a quantity may be waited for: its own, and what comes before the measure in one that is specified. */
function namesOf(quantity: string, { specs }: State): readonly string[] {
  const words = quantity.split(' ');
  const shorter = words.slice(1).map((_, i) => words.slice(0, i + 1).join(' '));
  return [quantity, ...shorter.filter((name) => specNames(specs).get(name)?.name === quantity)];
}

/** Applies a reading, which `after` contains: a meter reading starts reminders that had none; a warm engine begins a heat cycle. */
export function rechecksAfterReading(
  before: State,
  after: State,
  { quantity, statements, time }: QuantityEntry,
  by: Origin,
): State {
  const index = after.recheckIndex;
  const warm = index.warm || statements.some((each) => showsWarm(quantity, each));
  const warmed = warm === index.warm ? after : { ...after, recheckIndex: { ...index, warm } };
  const [statement] = statements;
  if (!statement || !isMeter(quantity.name)) return warmed;
  const start: SessionReading = { quantity, statement, time, by };
  return withRechecksDue(before, { ...warmed, ...started(warmed, quantity.name, start) });
}

function started(state: State, meter: Counted, start: SessionReading): Reminders {
  const names = ofName(state.recheckIndex.at, notStarted(meter));
  return names.reduce<Reminders>(({ rechecks, recheckIndex }, name) => {
    const old = rechecks.get(name) as Recheck;
    const recheck = { ...old, start };
    return {
      rechecks: put(rechecks, name, recheck),
      recheckIndex: added(taken(recheckIndex, name, old), name, recheck),
    };
  }, state);
}

/** A session that ends has cooled down. */
export function cooledDown(index: Index): Index {
  if (!index.warm) return index;
  return { ...index, warm: false, cycles: index.cycles + (index.counting > 0 ? 1 : 0) };
}

/** With those marked that fall due by what `after` has and `before` had not. */
export function withRechecksDue(before: State, after: State): State {
  const due = mayFallDue(before, after).filter((name) => {
    const recheck = after.rechecks.get(name);
    return recheck && !recheck.due && progressOf(recheck, after)?.due;
  });
  let { rechecks, recheckIndex } = after;
  for (const name of due) {
    const old = rechecks.get(name) as Recheck;
    const recheck = { ...old, due: true };
    rechecks = put(rechecks, name, recheck);
    recheckIndex = added(taken(recheckIndex, name, old), name, recheck);
  }
  return due.length === 0 ? after : { ...after, rechecks, recheckIndex };
}

/** Reminders, by name, that are due after a line and were not before it. */
export function rechecksFallenDue(before: State, after: State): readonly (readonly [string, Recheck])[] {
  if (before.recheckIndex === after.recheckIndex) return [];
  return mayFallDue(before, after).flatMap((name) => {
    const recheck = after.rechecks.get(name);
    return recheck?.due && !before.rechecks.get(name)?.due ? [[name, recheck] as const] : [];
  });
}

/** Progress of a reminder. */
export interface Progress {
  readonly counted: Counted;
  /** In the unit of `COUNTED_IN`. */
  readonly wanted: Interval;
  /** Undefined where the notebook has no reading or no date to count from. */
  readonly gone: Interval | undefined;
  /** Due for certain, and from then on until it is done, whatever a meter says later. A rough amount counts by what it says. */
  readonly due: boolean;
}

/** Undefined where the interval is no amount that a notebook counts. */
export function progressOf(recheck: Recheck, state: State): Progress | undefined {
  const counted = countedBy(recheck.after);
  const wanted = counted && amountIn(recheck.after, COUNTED_IN[counted]);
  if (!counted || !wanted) return undefined;
  const gone = goneBy(counted, recheck, state);
  const due = recheck.due || (gone !== undefined && gone.low >= wanted.low * (1 - ROUNDING));
  return { counted, wanted, gone, due };
}

function goneBy(counted: Counted, recheck: Recheck, state: State): Interval | undefined {
  if (counted === 'heat cycles')
    return number(
      recheck.due ? cyclesWanted(recheck) : Math.max(0, state.recheckIndex.cycles - recheck.fromCycle),
    );
  if (counted === 'days') {
    const [from, to] = [recheck.by.date, state.lastDate?.date];
    return from && to ? number(daysBetween(from, to)) : undefined;
  }
  const [start, now] = [recheck.start, state.latest.get(counted)].map((taken) =>
    amountIn(taken?.statement.values[0], COUNTED_IN[counted], taken?.quantity.unit),
  );
  return start && now && subtract(now, start);
}

const number = (n: number): Interval => ({ low: n, high: n, about: false });
