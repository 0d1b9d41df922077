/**
 * Window of past readings, carried so that a rule can question one that is unlike them. It must expire: it holds few
 * readings of each kind, and a kind not read for some sessions is forgotten, so that an old line never ties all pages
 * below it.
 */
import { isResponse, type Quantity } from '../../trade/vocabulary/quantity.ts';
import { amountIn } from '../entry/amount.ts';
import type { Statement } from '../entry/entry.ts';
import { put } from './immutable.ts';
import type { ReadingWindow, State } from './state.ts';

type Past = State['recentReadings'];

/** Past readings stored of each kind. */
export const WINDOW = 12;
/** Sessions after which a kind not read any more is forgotten. */
const FORGOTTEN_AFTER = 24;
/** Kinds of reading held at once; further ones are not held until others are forgotten. */
const MOST_KINDS = 64;

/** The window with one more reading in it; the same one where there is nothing to hold. */
export function withReading(past: Past, key: string, quantity: Quantity, said: Statement): Past {
  const values = numbersIn(quantity, said);
  const before = past.get(key);
  if (!values || (!before && past.size >= MOST_KINDS)) return past;
  const lists = [...(before?.lists ?? []).slice(1 - WINDOW), values];
  return put(past, key, { lists, unread: 0 });
}

/** At the start of a session. */
export function ageWindows(past: Past): Past {
  if (past.size === 0) return past;
  const after = new Map<string, ReadingWindow>();
  for (const [key, { lists, unread }] of past)
    if (unread < FORGOTTEN_AFTER) after.set(key, { lists, unread: unread + 1 });
  return after;
}

/** The middles of a reading's values in the quantity's usual unit; undefined where one of them is no number known on both sides. */
export function numbersIn(quantity: Quantity, said: Statement): readonly number[] | undefined {
  if (!isResponse(quantity) || said.values.length === 0) return undefined;
  const numbers: number[] = [];
  for (const value of said.values) {
    const interval = amountIn(value, quantity.unit ?? 'number');
    if (!interval || !Number.isFinite(interval.low) || !Number.isFinite(interval.high)) return undefined;
    numbers.push(interval.low / 2 + interval.high / 2);
  }
  return numbers;
}
