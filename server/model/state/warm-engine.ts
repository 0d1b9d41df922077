/** Whether the engine got warm, by what was read. Common practice, no source. */
import { isUnderWay, type Quantity } from '../../trade/vocabulary/quantity.ts';
import { amountIn } from '../entry/amount.ts';
import type { Statement } from '../entry/entry.ts';
import { ofName } from './immutable.ts';
import type { State } from './state.ts';

/** degC from which water, oil, gearbox or head temperature means a warm engine. */
const WARM = 60;

/** Words on a line that say it themselves. */
const SAID: ReadonlyMap<string, Warmth> = new Map([
  ['hot', 'warm'],
  ['warm', 'warm'],
  ['warmed', 'warm'],
  ['cold', 'cold'],
]);

type Warmth = 'cold' | 'warm';

/** The words of a line beside its values and in its conditions, lower case, less those on warmth. */
export const wordsBesideWarmth = (said: Statement): string[] =>
  wordsOf(said).filter((word) => !SAID.has(word));

/** True where the reading says `hot` or `warm`, is of a run, or is of a temperature that only a warm engine has. */
export function showsWarm(quantity: Quantity, said: Statement): boolean {
  const warmth = warmthSaid(said);
  if (warmth) return warmth === 'warm';
  if (isUnderWay(quantity) || quantity.traits?.needsWarmEngine) return true;
  return quantity.traits?.warmthOf !== undefined && warmthBy(quantity, said) === 'warm';
}

/**
 * Cold where noted as such, or where the water is or was last read cold in this session; else a reading is taken to be of the
 * warm engine.
 */
export function isCold(quantity: Quantity, said: Statement, state: State): boolean {
  const warmth = warmthSaid(said);
  if (warmth) return warmth === 'cold';
  const water =
    quantity.traits?.warmthOf === 'water'
      ? { quantity, statement: said }
      : ofName(state.readings, 'water', 1)[0];
  return water !== undefined && warmthBy(water.quantity, water.statement) === 'cold';
}

/** Cold where both are said. */
function warmthSaid(said: Statement): Warmth | undefined {
  const all = wordsOf(said).map((word) => SAID.get(word));
  return all.find((each) => each === 'cold') ?? all.find((each) => each !== undefined);
}

/** Undefined where a temperature may be on either side. */
function warmthBy(quantity: Quantity, said: Statement): Warmth | undefined {
  const celsius = amountIn(said.values[0], 'C', quantity.unit);
  if (!celsius || (celsius.low < WARM && celsius.high >= WARM)) return undefined;
  return celsius.low >= WARM ? 'warm' : 'cold';
}

const wordsOf = (said: Statement): string[] =>
  [...said.words, ...said.conditions.flatMap(({ words }) => words)].map((word) => word.text.toLowerCase());
