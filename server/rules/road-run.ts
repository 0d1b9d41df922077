/** When the engine is about to move somebody. */
import type { QuantityEntry } from '../model/notebook.ts';
import type { Quantity } from '../trade/quantity.ts';

/** A reading that is only taken under way: a speed, a timed run, or one said to be taken on the road. */
export const isRoadRun = ({ quantity, said }: QuantityEntry): boolean =>
  isMoving(quantity) || said.some((each) => each.heard.some((word) => ROAD_WORDS.has(word)));

/** Of a speed or a timed run. */
export const isMoving = ({ name }: Pick<Quantity, 'name'>): boolean => ON_THE_MOVE.has(name);

const ON_THE_MOVE: ReadonlySet<string> = new Set(['speed', 'run time']);
const ROAD_WORDS: ReadonlySet<string> = new Set(['road', 'driving', 'underway']);
