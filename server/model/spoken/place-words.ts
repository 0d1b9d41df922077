/** Words for a place as plain speech has them. */
import { PLACE_NAMES, PLACE_WORDS } from '../../trade/vocabulary/vocabulary.ts';

interface Place {
  /** As the notation writes it. */
  readonly text: string;
  /** In words. */
  readonly length: number;
}

/** Sides by the kerb; where people drive on the left, the near one is the left one, and nobody else speaks so. */
const SIDES: ReadonlyMap<string, string> = new Map([
  ['nearside', 'left'],
  ['near side', 'left'],
  ['n/s', 'left'],
  ['offside', 'right'],
  ['off side', 'right'],
  ['o/s', 'right'],
  ['fronts', 'front'],
  ['rears', 'rear'],
  ['left-hand', 'left'],
  ['left hand', 'left'],
  ['right-hand', 'right'],
  ['right hand', 'right'],
  ['l/h', 'left'],
  ['r/h', 'right'],
  ['int', 'intake'],
  ['drv side', 'driver side'],
  ['driver side', 'driver side'],
  ["driver's side", 'driver side'],
  ['drivers side', 'driver side'],
  ['pass side', 'passenger side'],
  ['passenger side', 'passenger side'],
  ['inlets', 'inlet'],
  ['exhausts', 'exhaust'],
]);

const TYRES = /\bt[yi]res?\b/;
const CARBS = new Set(['carb', 'carburettor', 'carburetor']);

/** `afterNumber` lets `back` be where it was, beside a front. */
export function placeAt(words: readonly string[], at: number, afterNumber: boolean): Place | undefined {
  const side = sideAt(words, at);
  if (side)
    return CARBS.has(words[at + side.length] ?? '')
      ? { text: `${side.text} carb`, length: side.length + 1 }
      : side;
  const first = words[at] as string;
  // `tyres 26 f 28 r`
  if (
    afterNumber &&
    /^[fr]$/.test(first) &&
    words.includes('f') &&
    words.includes('r') &&
    TYRES.test(words.join(' '))
  )
    return { text: first === 'f' ? 'front' : 'rear', length: 1 };
  const two = `${first} ${words[at + 1]}`;
  if (PLACE_WORDS.has(two)) return { text: two, length: 2 };
  if (afterNumber && first === 'back' && words.includes('front')) return { text: 'rear', length: 1 };
  const isBefore = words[at + 1] === '\u0000' && words.includes('ex');
  if ((afterNumber || isBefore) && first === 'in' && saysExhaust(words)) return { text: 'inlet', length: 1 };
  const isLetter = first === 'r' || first === 'l';
  if (
    !PLACE_WORDS.has(first) ||
    (isLetter && !(words.includes('r') && words.includes('l'))) ||
    first === 'all' ||
    first === 'lower'
  )
    return undefined;
  return { text: PLACE_NAMES.get(first) ?? first, length: 1 };
}

function sideAt(words: readonly string[], at: number): Place | undefined {
  const two = SIDES.get(`${words[at]} ${words[at + 1]}`);
  if (two) return { text: two, length: 2 };
  const one = SIDES.get(words[at] ?? '');
  return one ? { text: one, length: 1 } : undefined;
}

/** `12 in, 14 ex`: the valves that let in and out. */
const saysExhaust = (words: readonly string[]): boolean =>
  words.includes('ex') || (words.includes('exhaust') && !words.includes('inlet'));
