/**
 * Reminders by where they fall due, so that a session or a reading looks at those near it alone, however many are open.
 */
import { amountIn } from '../entry/amount.ts';
import { daysBetween } from '../entry/date.ts';
import type { Amount } from '../entry/value.ts';
import { ofName, put, withoutKey } from './immutable.ts';
import type { Recheck, SessionReading, State } from './state.ts';

type Index = State['recheckIndex'];

/** What a reminder counts, and in which unit of the table. Undefined where the amount counts nothing a notebook keeps. */
export type Counted = 'odometer' | 'hours' | 'days' | 'heat cycles';
export const COUNTED_IN = { odometer: 'km', hours: 'h', days: 'day', 'heat cycles': 'heat-cycle' } as const;
/** Those in one interval of this width are looked at together; in the units above. */
const WIDTH: Readonly<Record<Counted, number>> = { odometer: 100, hours: 10, days: 1, 'heat cycles': 1 };
const METERS = ['odometer', 'hours'] as const;
const OF_DAYS: ReadonlySet<string> = new Set(['day', 'week']);
/** Miles turned to kilometres and back are the same miles. */
export const ROUNDING = 1e-9;

export const isMeter = (name: string): name is (typeof METERS)[number] =>
  METERS.some((each) => each === name);

export function countedBy({ unit }: Amount): Counted | undefined {
  if (unit?.dimension === 'heat cycles') return 'heat cycles';
  if (unit?.dimension === 'distance') return 'odometer';
  if (unit?.dimension !== 'time') return undefined;
  return OF_DAYS.has(unit.id) ? 'days' : 'hours';
}

/** With a reminder in it: at its place while it waits, among those counted once it is due. */
export function added(index: Index, name: string, recheck: Recheck): Index {
  if (recheck.due) return { ...index, due: index.due + 1 };
  const place = placeOf(recheck);
  const counting = index.counting + (countsCycles(recheck) ? 1 : 0);
  return { ...index, counting, at: place === undefined ? index.at : put(index.at, `${place}|${name}`, name) };
}

/** Without a reminder. Where none counts heat cycles they begin at zero again, so that those of long ago carry no further. */
export function taken(index: Index, name: string, recheck: Recheck): Index {
  if (recheck.due) return { ...index, due: index.due - 1 };
  const counting = index.counting - (countsCycles(recheck) ? 1 : 0);
  const at = withoutKey(index.at, `${placeOf(recheck)}|${name}`);
  return { ...index, at, counting, cycles: counting === 0 ? 0 : index.cycles };
}

const countsCycles = ({ after }: Recheck): boolean => countedBy(after) === 'heat cycles';

/** Whole heat cycles to go by. */
export const cyclesWanted = ({ after }: Recheck): number =>
  Math.ceil((amountIn(after, COUNTED_IN['heat cycles'])?.low ?? 0) * (1 - ROUNDING));

/** Names of reminders that may fall due between two states; others do not. */
export function mayFallDue(before: State, after: State): readonly string[] {
  const { at } = before.recheckIndex;
  if (at.size === 0) return [];
  const unstarted = METERS.filter((meter) => before.latest.get(meter) !== after.latest.get(meter));
  const places = [
    ...between('days', dayOf(before.lastDate?.date), dayOf(after.lastDate?.date), at.size),
    ...between('heat cycles', before.recheckIndex.cycles, cyclesAfter(before, after), at.size),
    ...unstarted.flatMap((meter) => [
      notStarted(meter),
      ...between(meter, meterAt(before, meter), meterAt(after, meter), at.size),
    ]),
  ];
  return places.length > at.size ? [...at.values()] : ofName(at, places);
}

/** The count may have begun at zero again, once the last of them was due. */
const cyclesAfter = (before: State, after: State): number =>
  Math.max(after.recheckIndex.cycles, before.recheckIndex.cycles + (before.recheckIndex.warm ? 1 : 0));

/** The places from one amount up to another, and of many only as many as show that all must be looked at. */
function between(counted: Counted, from: number | undefined, to: number | undefined, most: number): string[] {
  if (to === undefined || (from ?? to) > to || (from === to && counted !== 'odometer')) return [];
  const first = Math.floor((from ?? to) / WIDTH[counted]) - 1;
  const count = Math.min(Math.floor(to / WIDTH[counted]) + 2 - first, most + 1);
  return Array.from({ length: count }, (_, i) => `${counted} ${first + i}`);
}

export const notStarted = (meter: Counted): string => `${meter} not started`;

/** Undefined where it never falls due. */
function placeOf({ after, by, start, fromCycle }: Recheck): string | undefined {
  const counted = countedBy(after);
  const wanted = counted && amountIn(after, COUNTED_IN[counted])?.low;
  if (!counted || wanted === undefined) return undefined;
  const isStarted = !isMeter(counted) || start !== undefined;
  const from = { days: dayOf(by.date), 'heat cycles': fromCycle, odometer: high(start), hours: high(start) }[
    counted
  ];
  if (!isStarted) return notStarted(counted);
  return from === undefined ? undefined : `${counted} ${Math.floor((from + wanted) / WIDTH[counted])}`;
}

const dayOf = (date: string | undefined): number | undefined =>
  date === undefined ? undefined : daysBetween('1970-01-01', date);

const meterOf = (reading: SessionReading | undefined, unit: string) =>
  amountIn(reading?.statement.values[0], unit, reading?.quantity.unit);

const high = (start: SessionReading | undefined): number | undefined =>
  start && meterOf(start, isMeter(start.quantity.name) ? COUNTED_IN[start.quantity.name] : '')?.high;

const meterAt = ({ latest }: State, meter: (typeof METERS)[number]): number | undefined =>
  meterOf(latest.get(meter), COUNTED_IN[meter])?.low;
