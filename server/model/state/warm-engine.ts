/** Whether the engine got warm, by what was read. Common practice, no source. */
import { isUnderWay, type Quantity } from '../../trade/vocabulary/quantity.ts';
import { amountIn } from '../entry/amount.ts';
import type { Statement } from '../entry/entry.ts';
import { ofName } from './immutable.ts';
import type { State } from './state.ts';

/** From this on water, oil, gearbox or head tell of a warm engine, degC. */
const WARM = 60;

/** True where the reading says `hot` or `warm`, is of a run, or is of a temperature that only a warm engine has. */
export function showsWarm(quantity: Quantity, said: Statement): boolean {
  const words = [...said.words, ...said.conditions.flatMap((condition) => condition.words)];
  if (words.some(({ text }) => /^cold$/i.test(text))) return false;
  if (words.some(({ text }) => /^(?:hot|warm|warmed)$/i.test(text)) || isUnderWay(quantity)) return true;
  if (quantity.traits?.needsWarmEngine) return true;
  if (!quantity.traits?.warmthOf) return false;
  const celsius = amountIn(said.values[0], 'C', quantity.unit);
  return celsius !== undefined && celsius.low >= WARM;
}

/** Under this the cooling water tells of an engine not yet warm, degC. Common practice, no source. */
const WARM_WATER = 60;

export const WARMTH: ReadonlySet<string> = new Set(['hot', 'warm', 'warmed', 'cold']);

/**
 * Cold where it is said, or where the water is or was last read so in this session; else a reading is taken to be of the
 * warm engine.
 */
export function isCold(quantity: Quantity, said: Statement, state: State): boolean {
  const words = wordsOf(said);
  if (words.some((word) => WARMTH.has(word))) return words.includes('cold');
  const water =
    quantity.traits?.warmthOf === 'water'
      ? { quantity, statement: said }
      : ofName(state.readings, 'water', 1)[0];
  const celsius = water && amountIn(water.statement.values[0], 'C', water.quantity.unit);
  return celsius !== undefined && celsius.high < WARM_WATER;
}

export const wordsOf = (said: Statement): string[] =>
  [...said.words, ...said.conditions.flatMap(({ words }) => words)].map((word) => word.text.toLowerCase());
