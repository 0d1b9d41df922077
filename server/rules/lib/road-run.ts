/** Lines that show the vehicle under way. */

import type { QuantityEntry } from '../../model/entry/entry.ts';
import { isUnderWay } from '../../trade/vocabulary/quantity.ts';

/** Whether a reading was taken under way: a speed, a timed run, or one with a word such as `road`. */
export const isRoadRun = ({ quantity, statements: said }: QuantityEntry): boolean =>
  isUnderWay(quantity) || said.some((each) => each.qualifiers.some((word) => ROAD_WORDS.has(word)));

const ROAD_WORDS: ReadonlySet<string> = new Set(['road', 'driving', 'underway']);
