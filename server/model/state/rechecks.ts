/**
 * Reminders: `recheck NAME after 1 heat cycle | 200 mi | 10 h | 30 days`, by the notebook's own odometer, hour meter,
 * dates and heat cycles. A heat cycle is a session in which the engine got warm after the line, and which has ended.
 */
import { type Interval, subtract } from '../../trade/measure/interval.ts';
import { amountIn } from '../entry/amount.ts';
import { daysBetween } from '../entry/date.ts';
import type { Origin, QuantityEntry, RecheckEntry } from '../entry/entry.ts';
import { specNames } from '../entry/spec-names.ts';
import type { Amount } from '../entry/value.ts';
import { put, withoutKey } from './immutable.ts';
import type { Recheck, State } from './state.ts';
import { showsWarm } from './warm-engine.ts';

/** What a reminder counts, and in which unit of the table. Undefined where the amount counts nothing a notebook keeps. */
export type Counted = 'odometer' | 'hours' | 'days' | 'heat cycles';
export const COUNTED_IN = { odometer: 'km', hours: 'h', days: 'day', 'heat cycles': 'heat-cycle' } as const;

const OF_DAYS: ReadonlySet<string> = new Set(['day', 'week']);

function countedBy({ unit }: Amount): Counted | undefined {
  if (unit?.dimension === 'heat cycles') return 'heat cycles';
  if (unit?.dimension === 'distance') return 'odometer';
  if (unit?.dimension !== 'time') return undefined;
  return OF_DAYS.has(unit.id) ? 'days' : 'hours';
}

type Rechecks = State['rechecks'];

/** The reminders after one more; under a name that is there already the new one holds. */
export function withRecheck(state: State, { name, after, again }: RecheckEntry, by: Origin): Rechecks {
  return after ? put(state.rechecks, name, begunAt(state, { after, again }, by)) : state.rechecks;
}

/** Removes a reminder that was done, or restarts it where it repeats. */
export function rechecksDone(state: State, name: string, by: Origin): Rechecks {
  const recheck = state.rechecks.get(name);
  if (!recheck) return state.rechecks;
  return recheck.again
    ? put(state.rechecks, name, begunAt(state, recheck, by))
    : withoutKey(state.rechecks, name);
}

function begunAt(state: State, { after, again }: Pick<Recheck, 'after' | 'again'>, by: Origin): Recheck {
  const counted = countedBy(after);
  const meter = counted === 'odometer' || counted === 'hours' ? state.latest.get(counted) : undefined;
  const warm = counted === 'heat cycles' && isWarm(state);
  return { after, again, by, start: meter, cycles: 0, cycle: warm ? 'warm before' : 'not yet' };
}

const isWarm = (state: State): boolean =>
  [...state.readings.values()].some(({ quantity, statement: said }) => showsWarm(quantity, said));

/** Applies a reading: a meter reading starts reminders that had none; a warm engine begins a heat cycle. */
export function rechecksAfterReading(rechecks: Rechecks, entry: QuantityEntry, by: Origin): Rechecks {
  if (rechecks.size === 0) return rechecks;
  const { quantity, statements: said, time } = entry;
  const first = said[0];
  const warm = said.some((each) => showsWarm(quantity, each));
  return mapped(rechecks, (recheck) => {
    const counted = countedBy(recheck.after);
    if (counted === 'heat cycles') return warm ? begun(recheck) : recheck;
    if (counted !== quantity.name || recheck.start || !first) return recheck;
    return { ...recheck, start: { quantity, statement: first, time, by } };
  });
}

const begun = (recheck: Recheck): Recheck =>
  recheck.cycle === 'not yet' && !isReached(recheck) ? { ...recheck, cycle: 'under way' } : recheck;

/** Removes a due reminder whose quantity was set or read again. */
export function rechecksAfterWork(state: State, { quantity }: QuantityEntry, by: Origin): Rechecks {
  const { rechecks, specs } = state;
  if (rechecks.size === 0) return rechecks;
  const isIt = (name: string): boolean =>
    name === quantity.name || specNames(specs).get(name)?.name === quantity.name;
  const done = [...rechecks.keys()].filter((name) => isIt(name) && isDue(rechecks.get(name), state));
  return done.reduce((after, name) => rechecksDone({ ...state, rechecks: after }, name, by), rechecks);
}

/** A session that ends has cooled down. */
export function rechecksAfterSession(rechecks: Rechecks): Rechecks {
  if (rechecks.size === 0) return rechecks;
  return mapped(rechecks, (recheck) => {
    if (recheck.cycle === 'not yet') return recheck;
    const cycles = recheck.cycles + (recheck.cycle === 'under way' ? 1 : 0);
    return { ...recheck, cycles, cycle: 'not yet' };
  });
}

/** The same map where nothing is another, so that what follows is not read again. */
function mapped(rechecks: Rechecks, change: (recheck: Recheck) => Recheck): Rechecks {
  const changed = [...rechecks].map(([name, recheck]) => [name, change(recheck)] as const);
  return changed.every(([name, recheck]) => recheck === rechecks.get(name)) ? rechecks : new Map(changed);
}

const isReached = ({ after, cycles }: Recheck): boolean =>
  cycles >= (amountIn(after, 'heat-cycle')?.low ?? Number.POSITIVE_INFINITY);

/** Progress of a reminder. */
export interface Progress {
  readonly counted: Counted;
  /** In the unit of `COUNTED_IN`. */
  readonly wanted: Interval;
  /** Undefined where the notebook has no reading or no date to count from. */
  readonly gone: Interval | undefined;
  /** Due for certain; a rough amount counts by what it says. */
  readonly due: boolean;
}

/** Miles turned to kilometres and back are the same miles. */
const ROUNDING = 1e-9;

/** Undefined where the interval is no amount that a notebook counts. */
export function progressOf(recheck: Recheck, state: State): Progress | undefined {
  const counted = countedBy(recheck.after);
  const wanted = counted && amountIn(recheck.after, COUNTED_IN[counted]);
  if (!counted || !wanted) return undefined;
  const gone = goneBy(counted, recheck, state);
  return { counted, wanted, gone, due: gone !== undefined && gone.low >= wanted.low * (1 - ROUNDING) };
}

/** False where there is no reminder, or nothing that it counts by. */
export const isDue = (recheck: Recheck | undefined, state: State): boolean =>
  recheck !== undefined && (progressOf(recheck, state)?.due ?? false);

function goneBy(counted: Counted, recheck: Recheck, state: State): Interval | undefined {
  if (counted === 'heat cycles') return number(recheck.cycles);
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
