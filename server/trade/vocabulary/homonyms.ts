/** Homonyms: words whose meaning depends on the unit: `oil 48 psi` is no grade of oil (common practice, no source). */

import type { Dimension } from '../measure/units.ts';
import type { Quantity } from './quantity.ts';
import { findQuantity } from './vocabulary.ts';

/** By the quantity that the word alone would be: what it is in a unit of that kind. */
const MEANT: Readonly<Record<string, Partial<Record<Dimension, string>>>> = {
  'oil grade': { pressure: 'oil pressure', temperature: 'oil temperature' },
  coolant: { temperature: 'water' },
  exhaust: { temperature: 'egt' },
  head: { temperature: 'head temperature' },
  transmission: { temperature: 'gearbox temperature' },
  fuel: { volume: 'fuel used', pressure: 'fuel pressure' },
  'fuel pump': { pressure: 'fuel pressure' },
  idle: { turns: 'idle screw' },
  'idle jet': { turns: 'mixture' },
  'main jet': { turns: 'main needle' },
  mixture: { ratio: 'air fuel ratio', percent: 'carbon monoxide' },
  'plug type': { length: 'plug gap' },
  'points gap': { angle: 'dwell' },
  coil: { resistance: 'coil resistance' },
  'plug leads': { resistance: 'lead resistance' },
  speed: { rotation: 'engine speed' },
  'engine speed': { 'road speed': 'speed' },
  'wide open speed': { 'road speed': 'speed' },
};

/** By the row itself, so that a notebook's own word of the same name is left alone. */
const QUANTITIES = new Map(
  Object.entries(MEANT).map(([word, by]) => [
    known(word),
    new Map(Object.entries(by).map(([dimension, name]) => [dimension, known(name)])),
  ]),
);

/** What the word of a quantity means with a unit of that dimension; undefined where nothing else than the quantity itself. */
export const quantityByUnit = (word: Quantity, dimension: Dimension): Quantity | undefined =>
  QUANTITIES.get(word)?.get(dimension);

/** A bare number that the word itself never takes: no jet is numbered under seven, no plug is called .025. */
const SIZES: readonly {
  readonly word: string;
  readonly low: number;
  readonly high: number;
  readonly turned?: true;
  readonly means: string;
}[] = [
  { word: 'main jet', low: 0.25, high: 6, turned: true, means: 'main needle' },
  { word: 'plug type', low: 0.01, high: 1.7, means: 'plug gap' },
];

/** What a bare number makes of a word, or a turn in or out; undefined where nothing else than the quantity itself. */
export function quantityBySize(
  word: Quantity,
  value: { readonly low: number; readonly high: number } | 'turned',
): Quantity | undefined {
  const size = SIZES.find((each) => known(each.word) === word);
  if (!size) return undefined;
  if (value === 'turned') return size.turned && known(size.means);
  return value.low >= size.low && value.high <= size.high ? known(size.means) : undefined;
}

/** Words for how plugs look; plug types are letters and numbers (common practice, no source). */
const LOOKS: ReadonlySet<string> = new Set(
  (
    'tan brown white grey gray black sooty soot oily oiled wet dry fouled dark pale clean chalky blistered glazed burnt ' +
    'coffee biscuit rich lean'
  ).split(' '),
);

/** Words that make timing a setting rather than a timing light reading (common practice, no source). */
const SET: ReadonlySet<string> = new Set(['static', 'statically', 'initial', 'base']);

const BY_WORDS: ReadonlyMap<Quantity, readonly [said: ReadonlySet<string>, means: Quantity]> = new Map([
  [known('plug type'), [LOOKS, known('plug')]],
  [known('timing'), [SET, known('initial')]],
]);

/** `plugs 1 3 4 tan` is how they look and not what is fitted, `timing 8 deg static` is a setting. */
export function quantityByWords(word: Quantity, said: readonly string[]): Quantity | undefined {
  const [words, means] = BY_WORDS.get(word) ?? [];
  return words && said.some((each) => words.has(each)) ? means : undefined;
}

function known(name: string): Quantity {
  const found = findQuantity(name.split(' '));
  if (!found) throw new Error(`no word "${name}" in the table`);
  return found.quantity;
}
