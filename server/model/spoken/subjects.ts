/** What a number is of, where its line does not name it: its unit, its gear, or the clause before it says so. */
import { findQuantity } from '../../trade/vocabulary/vocabulary.ts';
import type { Context } from './form.ts';
import type { Frame } from './frames.ts';
import { sizeOf } from './numbers.ts';
import { changesOf, type Fit, fitsOf } from './resolve.ts';
import type { SpokenAmount } from './spoken-amount.ts';

/** Ways to read a frame; none where nothing says what it is of. */
export function fitsOfFrame(frame: Frame, context: Context): readonly Fit[] {
  const { habits } = context;
  const isChange = frame.changes.length > 0 && !frame.isWhole;
  const fitting = isChange ? withChanges : fitsOf;
  const guessed = bySelf(frame, context);
  if (frame.names)
    return usedOf(frame, fitting(narrowed(frame.names, frame, context), frame.amount, habits, true), habits);
  const amount = withUnitOf(frame, context);
  // `8 gal used, 4200 wot`: of what went before, or of itself.
  const isOwn = guessed?.[0] === 'wide open speed';
  const own = isOwn ? fitting(guessed as readonly string[], frame.amount, habits, true) : [];
  for (const names of [context.names, ...context.earlier]) {
    // The unit said before holds on for what it was said of.
    const fits = [amount, frame.amount]
      .map((each) => (names ? fitting(narrowed(names, frame, context), each, habits, false) : []))
      .find((each) => each.length > 0);
    if (fits) return [...fits, ...own];
  }
  return guessed ? fitting(guessed, frame.amount, habits, true) : [];
}

/** Of several, the only one that the notebook has written before. */
function usedOf({ nameText }: Frame, fits: readonly Fit[], { used }: Context['habits']): readonly Fit[] {
  // Any screw is called one.
  if (/^screws?$/.test(nameText)) return fits;
  const known = fits.filter(({ name }) => used?.has(name));
  return known.length === 1 ? known : fits;
}

/** How far a setting was changed, else a value; a part of one is a part of a turn or an inch. */
function withChanges(
  names: readonly string[],
  amount: SpokenAmount,
  habits: Context['habits'],
  isNamed: boolean,
): readonly Fit[] {
  const isPart = (amount.low[0] ?? '').includes('/') && !amount.unit;
  const moved = changesOf(names, amount, habits).filter(
    ({ quantity }) => !isPart || quantity.dimension === 'turns' || quantity.dimension === 'length',
  );
  return moved.length > 0 ? moved : fitsOf(names, amount, habits, isNamed);
}

/** `oil 28 hot at idle` has a pressure or a temperature; jets that are wound are no numbers. */
function narrowed(
  names: readonly string[],
  { amount, remark, states, changes, isWhole }: Frame,
  { facts, text, habits: { used } }: Context,
): readonly string[] {
  if (amount.unit?.dimension === 'turns' && names.includes('mixture')) return ['mixture'];
  if (
    names[0] === 'timing' &&
    changes.length > 0 &&
    states.length === 0 &&
    (amount.isStep === 'from' || (!isWhole && amount.high === undefined))
  )
    return ['initial'];
  // `ign 22 full`: all of the advance is in.
  if (names.includes('timing') && /^full\b/.test(remark) && changes.length === 0) return ['total'];
  // `idle up half a turn`: its screw.
  if (names[0] === 'idle' && amount.unit?.dimension === 'turns') return ['idle screw'];
  // A sync with gauges is read on what was read with before.
  if (names.includes('depression') && names.includes('carburettor balance'))
    return byHabit(names, amount, used);
  if (
    names[0] === 'idle' &&
    /\bchoke\b/.test(remark) &&
    !/\bwithout|no choke\b|\bchoke (?:in|off|home)\b/.test(remark)
  )
    return ['fast idle'];
  // `mag 11 thou`: only a gap has a length.
  if (names.includes('initial') && names.includes('points gap'))
    return amount.unit?.dimension === 'length' ? ['points gap'] : ['initial'];
  // `oil 3/4`: a pressure is no part of one, and how much of what is not said.
  if (names.length > 1 && names.includes('oil used') && !amount.unit && amount.low[0]?.includes('/'))
    return [];
  // `oil 0.3 l`: what was put in has its unit.
  const isOilIn = facts.some(({ name }) => name === 'oil grade');
  if (names.length > 1 && names.includes('oil used') && isOilIn)
    return names.filter((name) => name !== 'oil used');
  if (names.length > 1 && names.includes('oil used'))
    return names.filter((name) => (name === 'oil used') === (amount.unit?.dimension === 'volume'));
  // `fuel 14`: what was burnt has its unit.
  if (names.length > 1 && names.includes('fuel used') && !amount.unit)
    return names.filter((name) => name !== 'fuel used');
  // `timing set 12`: nobody sets what a light shows.
  const isSet = /\bset\b|\bstatic/i.test(text) && !states.some((state) => state.startsWith('@'));
  if (names[0] === 'timing' && isSet) return ['initial'];
  // A governor has one speed without load; what it falls to is the engine's.
  const isLoaded = names[0] === 'governed speed' && facts.some(({ name }) => name === 'governed speed');
  if (
    isLoaded &&
    (remark !== '' || states.length > 0 || /\b(?:pulls|drops|goes|sags|lugs) down to\b/.test(text))
  )
    return ['engine speed'];
  return names;
}

function byHabit(
  names: readonly string[],
  { unit }: SpokenAmount,
  used: Context['habits']['used'],
): readonly string[] {
  if (unit || used?.has('depression')) return ['depression'];
  return names.filter((name) => name !== 'depression');
}

/** `12 flats front, 10 rear`: the unit said before holds on. */
function withUnitOf({ amount }: Frame, { unit, facts }: Context): SpokenAmount {
  return amount.unit || !unit || facts.length === 0 ? amount : { ...amount, unit, unitText: unit.symbol };
}

/** By the unit, the gear or the remark alone, where only one thing of the trade goes with it. */
function bySelf(frame: Frame, { habits, text }: Context): readonly string[] | undefined {
  const { amount, states, remark, changes } = frame;
  const dimension = amount.unit?.dimension;
  const own = dimension && BY_DIMENSION.get(dimension);
  if (own) return own;
  if (amount.unit?.id === 'flat' && habits.wound === 'jets') return ['mixture'];
  if (dimension === 'angle' && states.some((state) => state.startsWith('@'))) return ['timing'];
  // What is tightened has no speed.
  if (dimension === 'torque' && states.some((state) => state.startsWith('@'))) return ['torque'];
  if (changes.some((word) => TIMED.has(word)) && (!dimension || dimension === 'angle')) return ['initial'];
  if (dimension === 'angle' && changes.some((word) => word === 'gave' || word === 'took')) return ['initial'];
  if (/^no load\b/.test(remark) && !amount.unit) return ['governed speed'];
  if (/\bgps\b/i.test(remark)) return ['speed'];
  // `out 1/8 both`: one of two screws, and which is asked.
  const isPart = /^\d\/\d+$/.test(amount.low[0] ?? '') && (!dimension || dimension === 'turns');
  if (isPart && changes.some((word) => word === 'in' || word === 'out')) return ['mixture', 'idle screw'];
  if (/^(?:gal|imp-gal|L)$/.test(amount.unit?.id ?? '') && isFuel(frame.written, remark, text))
    return ['fuel used'];
  // A run is not timed to a tenth of an hour, and no day has a hundred.
  const hours = sizeOf(amount.low.at(-1) as string);
  if (amount.unit?.id === 'h' && !amount.high && hours >= 100) return ['hours'];
  if (dimension === 'distance' && sizeOf(amount.low.at(-1) as string) >= 1000 && isMeter(text))
    return ['odometer'];
  if (dimension && dimension !== 'rotation') return undefined;
  return byGear(amount, states);
}

/** `61.220 km`, `48,210 miles on the clock`: what a meter shows, and no way that was driven. */
const isMeter = (text: string): boolean =>
  /^[\d.,\s\u2009]+(?:km|kms|mi|miles)\b/i.test(text) &&
  !/\b(?:for|since|from|after|trip|run|ago|more|until|till|in|to|of|per|an|a|left|away)\b/i.test(text);

/** Nothing else that is poured is named, nor anything nobody knows. */
const isFuel = (written: string, remark: string, text: string): boolean =>
  text !== written &&
  !POURED.test(text) &&
  (FILLED.test(text) ||
    /^(?:tank )?(?:|loaded|empty|brimmed|filled|both|total|in all|today|at home|petrol|gas|fuel|of petrol|of gas|of fuel|diesel|unleaded|tanks?)$/i.test(
      remark,
    ));
const POURED =
  /\b(?:oil|water|coolant|antifreeze|grease|paint|milk|beer|tea|coffee|fluid|acid|cleaner|thinner|thinners|cleaning|wax|spray|seed|feed|grade|weight|gearbox|sump|hopper|radiator|rad|box)\b/i;

const FILLED =
  /\bmpg\b|\bin since\b|\bput .{1,30} in\b|\b(?:gals?|gallons?|l|litres?|liters?) (?:in|for|of (?:paraffin|kerosene|petrol|gasoline|diesel|benzin))\b|\bgallon & a half for|\b(?:burnt|burned|filled|used|brimmed|refilled|topped up|fill|took)\b/i;
const TIMED = new Set(['backed', 'advanced', 'retarded', 'advance', 'retard']);
const BY_DIMENSION: ReadonlyMap<string, readonly string[]> = new Map([
  ['road speed', ['speed']],
  ['fuel economy', ['fuel economy']],
  ['voltage', ['volts']],
  ['power', ['power']],
  ['capacitance', ['condenser']],
  ['concentration', ['hydrocarbons']],
  ['heat cycles', []],
]);

function byGear(amount: SpokenAmount, states: readonly string[]): readonly string[] | undefined {
  const size = sizeOf(amount.low.at(-1) as string);
  if (states.some((state) => IDLING.has(state)) && size >= 300 && size <= 1800) return ['idle'];
  if (states.some((state) => FLAT_OUT.has(state)) && size >= 1500 && size <= 9000) return ['wide open speed'];
  if (states.some((state) => DRIVING.test(state)) && size >= 600) return ['engine speed'];
  return undefined;
}

export const FLAT_OUT: ReadonlySet<string> = new Set(['"at wide open"', '"full throttle"', '"flat out"']);
const IDLING = new Set([
  'in park',
  'in neutral',
  'in drive',
  'in reverse',
  'in ahead',
  'in astern',
  'at idle',
]);
const DRIVING = /^in (?:top|first|second|3rd|fourth|fifth|6th)$/;

/** What a word of change does to a setting: `+` and `-` of angles and numbers, in and out of screws. Undefined where it may be either. */
export function directionOf(
  fit: Fit,
  words: readonly string[],
  nameText: string,
): '+' | '-' | 'in ' | 'out ' | undefined {
  const ways = new Set(words.map((word) => wayOf(fit, word, nameText)).filter((way) => way !== undefined));
  return ways.size === 1 ? [...ways][0] : undefined;
}

function wayOf({ quantity }: Fit, word: string, nameText: string): '+' | '-' | 'in ' | 'out ' | undefined {
  if (quantity.dimension === 'turns') {
    // An air screw lets air in as it goes out: richer is in.
    const isAir = /^air/.test(nameText);
    if (isAir && TASTE.in.has(word)) return 'in ';
    if (isAir && TASTE.out.has(word)) return 'out ';
    const inward = quantity.name === 'mixture' || quantity.name === 'main needle' ? MIXTURE : STOP;
    return inward.in.has(word) ? 'in ' : inward.out.has(word) ? 'out ' : undefined;
  }
  if (quantity.name === 'needle clip') {
    // The needle goes up as its clip goes down, a groove further from the blunt end.
    const [more, less] = nameText.startsWith('clip') ? ['down', 'up'] : ['up', 'down'];
    return word === more ? '+' : word === less || word === 'back' ? '-' : undefined;
  }
  if (quantity.dimension === 'angle' && (word === 'back' || word === 'backed')) return '-';
  return MORE.has(word) ? '+' : LESS.has(word) ? '-' : undefined;
}

const words = (text: string): ReadonlySet<string> => new Set(text.split(' '));
const MIXTURE = {
  in: words('in leaner weaker leaned weakened closed up'),
  out: words('out richer richened opened down'),
};
const TASTE = { in: words('richer richened'), out: words('leaner weaker leaned weakened') };
const STOP = { in: words('in opened more up raised'), out: words('out less down closed lowered') };
const MORE = words(
  'up more raised added gave give advanced advance bumped upped another extra increased bigger larger richer higher',
);
const LESS = words('down less lowered took retarded retard out decreased smaller lower leaner weaker');

/** What the latest lines of a session are about, the latest first. */
export function subjectsOf(lines: readonly string[]): readonly string[] {
  const names = lines
    .toReversed()
    .slice(0, 8)
    .flatMap((line) => {
      const found = findQuantity(line.replace(/^(?:\+\S+ (?:min|h)|\d+:\d\d) +/, '').split(' '));
      return found && found.quantity.kind !== 'fact' ? [found.quantity.name] : [];
    });
  return [...new Set(names)].slice(0, 4);
}
