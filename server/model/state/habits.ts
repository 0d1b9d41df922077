/** How this notebook is written, for reading plain speech in it: learnt from what is plain, and the same value as long as nothing is new. */

import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { VOCABULARY } from '../../trade/vocabulary/vocabulary.ts';
import type { Entry, QuantityEntry, SessionEntry } from '../entry/entry.ts';
import type { Value } from '../entry/value.ts';
import type { Habits } from '../spoken/habits.ts';
import { put, same } from './immutable.ts';

/** After a line of the notation, or one of those that a spoken line means. */
export function habitsAfter(habits: Habits, entry: Entry): Habits {
  if (!('statements' in entry)) return habits;
  const after = withUnits(habits, entry);
  if (entry.kind === 'fact') return withFact(after, entry);
  return entry.kind === 'setting' ? withPlaces(after, entry) : after;
}

/** After a head with an order of day and month that can be no other. */
export function habitsAfterHead(habits: Habits, text: string, { date }: SessionEntry): Habits {
  const [, first, sign, second] = /(?<!\d)(\d{1,2})([/.])(\d{1,2})(?!\d)/.exec(text) ?? [];
  const [, month, day] = /^\d{4}-(\d\d)-(\d\d)$/.exec(date ?? '') ?? [];
  if (!first || Number(first) === Number(second) || month === undefined) return habits;
  const isMonthFirst = Number(first) === Number(month) && Number(second) === Number(day);
  const isSure = Number(first) > 12 || Number(second) > 12 || sign === '.';
  const dayOrder = isMonthFirst ? 'month first' : 'day first';
  return isSure && habits.dayOrder !== dayOrder ? { ...habits, dayOrder } : habits;
}

/** A notebook's own words, and what it specifies, may be any number; plain speech gives them no unit. */
const OF_THE_TRADE: ReadonlySet<Quantity> = new Set(VOCABULARY);

function withUnits(habits: Habits, { quantity, statements, kind }: QuantityEntry): Habits {
  if (!OF_THE_TRADE.has(quantity)) return habits;
  const unit = statements.flatMap(({ values }) => values.flatMap(unitIn)).at(-1);
  if (unit === undefined || habits.used?.get(quantity.name) === unit) return habits;
  const used = put(habits.used ?? new Map(), quantity.name, unit);
  const units = systemOf(used) ?? habits.units;
  const wound =
    quantity.name === 'mixture' && kind === 'setting' ? (unit === 'flat' ? 'jets' : 'screws') : habits.wound;
  return { ...habits, used, ...(units && { units }), ...(wound && { wound }) };
}

const unitIn = (value: Value): readonly string[] =>
  value.form === 'amount' && value.unit ? [value.unit.symbol] : [];

const METRIC = new Set(['C', 'bar', 'kPa', 'mbar', 'mm', 'km', 'km/h', 'L', 'kg', 'N·m']);
const INCHES = new Set(['psi', 'in', 'thou', 'mi', 'mph', 'lb-ft', 'inHg', 'lb']);
const AMERICAN = new Set(['F', 'US gal', 'US qt', 'US pt', 'cu in']);
const IMPERIAL = new Set(['imp gal', 'imp pt', 'thou']);

/** By the units that are written; undefined where they do not say. */
function systemOf(used: ReadonlyMap<string, string>): Habits['units'] {
  const count = (set: ReadonlySet<string>) => [...used.values()].filter((unit) => set.has(unit)).length;
  const [metric, inches, american, imperial] = [METRIC, INCHES, AMERICAN, IMPERIAL].map(count) as [
    number,
    number,
    number,
    number,
  ];
  if (imperial > american) return 'imperial';
  if (american > 0 && american + inches > metric) return 'us';
  return metric > inches ? 'metric' : undefined;
}

function withFact(habits: Habits, { quantity, statements, text = '' }: QuantityEntry): Habits {
  const value = statements[0]?.values[0];
  const number = value?.form === 'amount' ? value.interval?.low : undefined;
  if (quantity.name === 'cylinders' && number !== undefined && number !== habits.cylinders)
    return { ...habits, cylinders: number };
  if (quantity.name !== 'transmission') return habits;
  const gearbox = /auto/i.test(text) ? 'automatic' : /manual/i.test(text) ? 'manual' : habits.gearbox;
  return gearbox && gearbox !== habits.gearbox ? { ...habits, gearbox } : habits;
}

/** Where the carburettors sit, as the notebook names them. */
function withPlaces(habits: Habits, { quantity, statements }: QuantityEntry): Habits {
  if (quantity.owner !== 'carburettor') return habits;
  const named = statements.flatMap(({ place }) =>
    place && place.cylinder === undefined ? [place.text] : [],
  );
  const places = [...new Set([...(habits.places ?? []), ...named])].slice(0, MOST_PLACES);
  return places.length > 0 && !same(places, habits.places) ? { ...habits, places } : habits;
}

const MOST_PLACES = 8;
