/** What a number is of, where its line does not name it: its unit, its gear, or the clause before it says so. */
import { findQuantity } from '../../trade/vocabulary.ts';
import type { SpokenAmount } from './classify.ts';
import type { Context, Fact } from './form.ts';
import type { Frame } from './frames.ts';
import { type Fit, fitsOf } from './resolve.ts';
import { sizeOf } from './numbers.ts';

/** Ways to read a frame; none where nothing says what it is of. */
export function fitsOfFrame(frame: Frame, context: Context): readonly Fit[] {
  const { habits } = context;
  if (frame.names) return fitsOf(narrowed(frame.names, frame), frame.amount, habits);
  const guessed = bySelf(frame, context);
  const carried = context.names ? fitsOf(narrowed(context.names, frame), frame.amount, habits) : [];
  if (carried.length > 0) return carried;
  return guessed ? fitsOf(guessed, frame.amount, habits) : [];
}

/** `oil 28 hot at idle` has a pressure or a temperature; jets that are wound are no numbers. */
function narrowed(names: readonly string[], { amount, changes, changeAfter }: Frame): readonly string[] {
  const isTurned = amount.unit?.dimension === 'turns' || (changes.length > 0 && !changeAfter && false);
  return isTurned && names.includes('mixture') ? ['mixture'] : names;
}

/** By the unit, the gear or the remark alone, where only one thing of the trade goes with it. */
function bySelf({ amount, states, remark, changes }: Frame, { habits }: Context): readonly string[] | undefined {
  const dimension = amount.unit?.dimension;
  if (dimension && BY_DIMENSION[dimension]) return BY_DIMENSION[dimension];
  if (amount.unit?.id === 'flat' && habits.wound === 'jets') return ['mixture'];
  if (dimension === 'angle' && states.some((state) => state.startsWith('@'))) return ['timing'];
  if (changes.some((word) => TIMED.has(word)) && (!dimension || dimension === 'angle')) return ['initial'];
  if (dimension === 'angle' && changes.some((word) => word === 'gave' || word === 'took')) return ['initial'];
  if (/\bgps\b/i.test(remark)) return ['speed'];
  if (dimension && dimension !== 'rotation') return undefined;
  return byGear(amount, states);
}

const TIMED = new Set(['advanced', 'retarded', 'advance', 'retard']);
const BY_DIMENSION: Readonly<Record<string, readonly string[]>> = {
  'road speed': ['speed'],
  'fuel economy': ['fuel economy'],
  voltage: ['volts'],
  'heat cycles': [],
};

function byGear(amount: SpokenAmount, states: readonly string[]): readonly string[] | undefined {
  const size = sizeOf(amount.low.at(-1) as string);
  if (states.some((state) => IDLING.has(state)) && size >= 300 && size <= 1800) return ['idle'];
  if (states.some((state) => DRIVING.test(state)) && size >= 600) return ['engine speed'];
  return undefined;
}

const IDLING = new Set(['in park', 'in neutral', 'in drive', 'in reverse', 'in ahead', 'in astern', 'at idle']);
const DRIVING = /^in (?:top|first|second|3rd|fourth|fifth|6th)$/;

/** What a word of change does to a setting: `+` and `-` of angles and numbers, in and out of screws. Undefined where it may be either. */
export function directionOf(fit: Fit, words: readonly string[]): '+' | '-' | 'in ' | 'out ' | undefined {
  const ways = new Set(words.map((word) => wayOf(fit, word)).filter((way) => way !== undefined));
  return ways.size === 1 ? [...ways][0] : undefined;
}

function wayOf({ quantity }: Fit, word: string): '+' | '-' | 'in ' | 'out ' | undefined {
  if (quantity.dimension === 'turns') {
    const inward = quantity.name === 'mixture' || quantity.name === 'main needle' ? MIXTURE : STOP;
    return inward.in.has(word) ? 'in ' : inward.out.has(word) ? 'out ' : undefined;
  }
  if (quantity.name === 'needle clip') return word === 'up' ? '+' : word === 'down' || word === 'back' ? '-' : undefined;
  return MORE.has(word) ? '+' : LESS.has(word) ? '-' : undefined;
}

const words = (text: string): ReadonlySet<string> => new Set(text.split(' '));
const MIXTURE = {
  in: words('in leaner weaker leaned weakened closed up'),
  out: words('out richer richened opened down'),
};
const STOP = { in: words('in opened more up raised'), out: words('out less down closed lowered') };
const MORE = words('up more raised added gave give advanced advance bumped upped another extra increased bigger larger richer higher');
const LESS = words('down less lowered took retarded retard out decreased smaller lower leaner weaker');

/** The subject of the latest line of a session that has one. */
export function subjectOf(lines: readonly string[]): { readonly names: readonly string[]; readonly place: string | undefined } | undefined {
  for (const line of lines.toReversed().slice(0, 3)) {
    const found = findQuantity(line.replace(/^\+?\S+ (?:min|h) /, '').split(' '));
    if (found && found.quantity.kind !== 'fact') return { names: [found.quantity.name], place: undefined };
  }
  return undefined;
}

export type { Fact };
