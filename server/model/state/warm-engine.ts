/** Whether the engine got warm, by what was read. Common practice, no source. */
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { amountIn } from '../entry/amount.ts';
import type { Statement } from '../entry/entry.ts';
import { ofName } from './immutable.ts';
import type { State } from './state.ts';

/** degC from which water, oil, gearbox or head temperature means a warm engine. */
const WARM = 60;
const WARMTH_OF: ReadonlySet<string> = new Set([
  'water',
  'oil temperature',
  'head temperature',
  'gearbox temperature',
]);
/** Nobody takes these with a cold engine. */
const OF_A_RUN: ReadonlySet<string> = new Set(['speed', 'run time', 'power']);

/** True where the reading says `hot` or `warm`, is of a run, or is of a temperature that only a warm engine has. */
export function showsWarm(quantity: Quantity, said: Statement): boolean {
  const words = [...said.words, ...said.conditions.flatMap((condition) => condition.words)];
  if (words.some(({ text }) => /^cold$/i.test(text))) return false;
  if (words.some(({ text }) => /^(?:hot|warm|warmed)$/i.test(text)) || OF_A_RUN.has(quantity.name))
    return true;
  if (!WARMTH_OF.has(quantity.name)) return false;
  const celsius = amountIn(said.values[0], 'C', quantity.unit);
  return celsius !== undefined && celsius.low >= WARM;
}

/** degC under which the cooling water means a cold engine (common practice, no source). */
const WARM_WATER = 60;

export const WARMTH: ReadonlySet<string> = new Set(['hot', 'warm', 'warmed', 'cold']);

/**
 * Cold where noted as such, or where the water is or was last read cold in this session; else a reading is taken to be of the
 * warm engine.
 */
export function isCold(quantity: Quantity, said: Statement, state: State): boolean {
  const words = wordsOf(said);
  if (words.some((word) => WARMTH.has(word))) return words.includes('cold');
  const water =
    quantity.name === 'water' ? { quantity, statement: said } : ofName(state.readings, 'water', 1)[0];
  const celsius = water && amountIn(water.statement.values[0], 'C', water.quantity.unit);
  return celsius !== undefined && celsius.high < WARM_WATER;
}

export const wordsOf = (said: Statement): string[] =>
  [...said.words, ...said.conditions.flatMap(({ words }) => words)].map((word) => word.text.toLowerCase());
