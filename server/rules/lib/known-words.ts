/** Words known beside a value, other than units and places. Any other is a remark and is left alone. */
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { PLACE_WORDS } from '../../trade/vocabulary/vocabulary.ts';

/** How, when and where a value was taken. */
const BESIDE: readonly string[] = (
  'hot cold warm infrared ir gas probe crank crankshaft engine distributor dist manifold ported plugged capped ' +
  'vacuum idle neutral park drive gear reverse first second third fourth fifth top cruise throttle wide open ' +
  'closed full half light heavy load road water cranking boost off on new old set ' +
  'wot dry wet static strobe torqued tightened steady fluctuating hunting wobbling drifting flicking swinging'
).split(' ');

/** Whether a word, in any case, is known beside a value of this quantity. */
export const knownBeside = (quantity: Quantity, word: string): boolean =>
  KNOWN.has(word.toLowerCase()) || (quantity.words?.includes(word.toLowerCase()) ?? false);

/** Candidates for a misspelt word. */
export const wordsBeside = (quantity: Quantity): readonly string[] => [
  ...(quantity.words ?? []),
  ...(quantity.places?.length ? PLACES : []),
  ...BESIDE,
];

const PLACES = [...PLACE_WORDS.keys()].flatMap((words) => words.split(' '));
const KNOWN: ReadonlySet<string> = new Set([...BESIDE, ...PLACES]);
