/** When the engine is about to move somebody. */
import { isMoving } from '../model/due.ts';
import type { QuantityEntry } from '../model/notebook.ts';

/** A reading that is only taken under way: a speed, a timed run, or one said to be taken on the road. */
export const isRoadRun = ({ quantity, said }: QuantityEntry): boolean =>
  isMoving(quantity) || said.some((each) => each.heard.some((word) => ROAD_WORDS.has(word)));

const ROAD_WORDS: ReadonlySet<string> = new Set(['road', 'driving', 'underway']);
