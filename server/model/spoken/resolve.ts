/** What a spoken number may be: of which word of the trade, read how, in which unit. Bands and habits decide; nothing is guessed. */

import { UNITS } from '../../trade/measure/unit-table.ts';
import { convert, type Unit, unitById } from '../../trade/measure/units.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { findQuantity } from '../../trade/vocabulary/vocabulary.ts';
import type { Habits } from './habits.ts';
import { sizeOf } from './numbers.ts';
import type { SpokenAmount } from './spoken-amount.ts';

/** One way to read a number. */
export interface Fit {
  readonly name: string;
  readonly quantity: Quantity;
  /** The value as the notation writes it, with its unit. */
  readonly value: string;
}

type System = NonNullable<Habits['units']>;

/** Units a bare number is in, by dimension, the likelier first. Common practice, no source. */
const USUAL: Readonly<Record<System, Readonly<Record<string, readonly string[]>>>> = {
  us: {
    temperature: ['F'],
    pressure: ['psi'],
    depression: ['inHg'],
    length: ['in', 'thou'],
    distance: ['mi'],
    volume: ['gal'],
    'road speed': ['mph'],
    'fuel economy': ['mpg'],
    torque: ['lb-ft'],
  },
  imperial: {
    temperature: ['F', 'C'],
    pressure: ['psi'],
    depression: ['inHg'],
    length: ['thou', 'in'],
    distance: ['mi'],
    volume: ['imp-gal'],
    'road speed': ['mph'],
    'fuel economy': ['imp-mpg'],
    torque: ['lb-ft'],
  },
  metric: {
    temperature: ['C'],
    pressure: ['bar'],
    depression: ['kPa', 'mbar'],
    length: ['mm'],
    distance: ['km'],
    volume: ['L'],
    'road speed': ['km/h'],
    torque: ['Nm'],
  },
};

/** How far one of a setting was changed: any size, so that no band is held against it. */
export function changesOf(names: readonly string[], amount: SpokenAmount, habits: Habits): readonly Fit[] {
  const quantities = names
    .map((name) => findQuantity(name.split(' '))?.quantity)
    .filter((each) => each?.kind === 'setting');
  return quantities.flatMap((quantity) =>
    quantity ? fitsIn(quantity, amount, habits, Number.POSITIVE_INFINITY, true) : [],
  );
}

/** Every way to read the amount as one of the names, those of the likeliest unit only. */
export function fitsOf(
  names: readonly string[],
  amount: SpokenAmount,
  habits: Habits,
  isNamed = true,
): readonly Fit[] {
  const first = fitsAmong(names, amount, habits, true);
  return first.length > 0 ? first : fitsAmong(names, amount, habits, false, isNamed);
}

/** Only what is named may be well outside the usual. */
function fitsAmong(
  names: readonly string[],
  amount: SpokenAmount,
  habits: Habits,
  usual: boolean,
  isNamed = false,
): readonly Fit[] {
  const quantities = names
    .map((name) => findQuantity(name.split(' '))?.quantity)
    .filter((each) => each !== undefined);
  const strict = quantities.flatMap((quantity) => fitsIn(quantity, amount, habits, 1, usual));
  if (usual || !isNamed || strict.length > 0 || quantities.length > 1) return strict;
  return quantities.flatMap((quantity) => fitsIn(quantity, amount, habits, 1.7, false));
}

function fitsIn(
  quantity: Quantity,
  amount: SpokenAmount,
  habits: Habits,
  slack: number,
  usual: boolean,
): readonly Fit[] {
  if (quantity.form !== 'number' && quantity.form !== 'curve') return [];
  const units = unitsFor(quantity, amount, habits);
  for (const unit of usual ? units.slice(0, 1) : units) {
    const fits = readingsIn(amount, quantity).filter(({ sizes, text }) =>
      sizes.every((size) =>
        isInBand(size, text.includes('/'), amount.unit !== undefined, unit, quantity, slack),
      ),
    );
    if (fits.length > 0)
      return fits.map(({ text }) => ({
        name: quantity.name,
        quantity,
        value: valueText(amount, text, unit, quantity),
      }));
  }
  return [];
}

/** Undefined stands for a bare number. */
function unitsFor(
  quantity: Quantity,
  { unit, unitText }: SpokenAmount,
  habits: Habits,
): readonly (Unit | undefined)[] {
  if (unit) return givenUnit(unit, unitText, quantity, habits);
  const own = quantity.unit ? unitById(quantity.unit) : undefined;
  const used = usedUnit(quantity, habits);
  const usualIn = habits.units && USUAL[habits.units];
  const kind = own?.id === 'inHg' ? 'depression' : (own?.dimension ?? '');
  const system = (usualIn?.[kind] ?? []).map(unitById);
  const always = (quantity.traits?.unitsLeftOut ?? []).map(unitById);
  if (quantity.bare && own && own.dimension !== 'fuel economy') return [used ?? own];
  const usual = habits.units === 'metric' && always.length > 1 ? [...always].reverse() : always;
  return [...new Set([...(used ? [used] : []), ...usual, ...system])].filter(
    (each) => each.dimension === own?.dimension,
  );
}

function usedUnit(quantity: Quantity, { used }: Habits): Unit | undefined {
  const symbol = used?.get(quantity.name);
  return symbol === undefined
    ? undefined
    : UNITS.find((each) => each.symbol === symbol || each.id === symbol);
}

/** `55 lb` of oil pressure are pounds a square inch, `17 inches` of vacuum inches of mercury, degrees of a thermometer no angle. */
function givenUnit(unit: Unit, text: string, quantity: Quantity, habits: Habits): readonly Unit[] {
  const own = quantity.unit ? unitById(quantity.unit) : undefined;
  if (own?.dimension === 'pressure' && unit.id === 'lb') return [unitById('psi')];
  if (own?.dimension === 'pressure' && unit.id === 'in')
    return quantity.unit === 'inHg' || quantity.name === 'barometer' ? [unitById('inHg')] : [];
  if (own?.dimension === 'temperature' && unit.id === 'deg')
    return habits.units ? (USUAL[habits.units].temperature ?? []).map(unitById) : [];
  // `68s`: jets of that number.
  if (text === 's' && own?.dimension === 'number') return [own];
  // `sec` behind a jet is a barrel.
  if (text === 'sec' && quantity.places?.includes('barrel') && own) return [own];
  const isOwn = unit.dimension === own?.dimension || (quantity.orIn?.includes(unit.dimension) ?? false);
  if (!isOwn) return [];
  if (habits.units === 'imperial' && own?.id === 'gal' && /^(?:gal|gals|gallons?)$/.test(text))
    return [unitById('imp-gal')];
  if (habits.units === 'imperial' && /^(?:pt|pts|pints?)$/.test(text) && unit.id === 'pt')
    return [unitById('imp-pt')];
  if (habits.units === 'imperial' && own?.id === 'mpg' && text === 'mpg') return [unitById('imp-mpg')];
  return [unit];
}

/** What nobody reads to a thousandth. */
const COUNTED = new Set(['distance', 'rotation', 'fuel economy']);

function readingsIn(
  { low, high, link }: SpokenAmount,
  { dimension, name }: Quantity,
): readonly { readonly text: string; readonly sizes: readonly number[] }[] {
  // A meter has no thousandths: what looks like them are its thousands.
  const grouped = COUNTED.has(dimension ?? '') ? low.slice(-1) : low;
  return grouped.flatMap((from) => {
    const scaled =
      name === 'power valve' && /^\d\d\d?$/.test(from) && Number(from) > 12
        ? String(Number(from) / 10)
        : from;
    if (!high) return [{ text: scaled, sizes: [sizeOf(scaled)] }];
    return high.map((to) => ({
      text: `${scaled}${link}${to}`,
      sizes: link === '..' ? [sizeOf(scaled), sizeOf(to)] : [sizeOf(scaled)],
    }));
  });
}

function isInBand(
  size: number,
  isFraction: boolean,
  unitWritten: boolean,
  unit: Unit | undefined,
  { band, unit: own, name, traits }: Quantity,
  slack: number,
): boolean {
  if (!Number.isFinite(size)) return false;
  if (name === 'needle clip' && !Number.isInteger(size)) return false;
  // `run 2` is the second one.
  if (name === 'run time' && !unitWritten && Number.isInteger(size) && size < 10) return false;
  // No meter is met with so few on it; `mileage 13.5` is of a gallon.
  if (name === 'odometer' && !unitWritten && size < 100) return false;
  // `plug 3` is the third one, and no plug has a gap of 3 mm.
  if (name === 'plug gap' && !unitWritten && Number.isInteger(size) && size < 12) return false;
  if (traits?.runningSpeed && size < 150) return false;
  // A fraction is of an inch, never of a thousandth.
  if (unit?.id === 'thou' && (size < 1 || isFraction)) return false;
  if (unit?.id === 'mm' && isFraction) return false;
  if (!band || slack === Number.POSITIVE_INFINITY) return true;
  const written = unit ?? (own ? unitById(own) : undefined);
  const limit = unitById(band.unit);
  if (!written || written.dimension !== limit.dimension) return true;
  const read = convert(size, written, limit);
  return read >= Math.min(band.low / slack, band.low * slack) && read <= band.high * slack;
}

function valueText(
  { prefix }: SpokenAmount,
  text: string,
  unit: Unit | undefined,
  quantity: Quantity,
): string {
  const symbol = unit ? unit.symbol : quantity.unit ? unitById(quantity.unit).symbol : '';
  const plural = symbol === 'turns' && sizeOf(text) <= 1 ? 'turn' : symbol;
  const shown = plural.startsWith(':') ? `${text}${plural}` : `${text} ${plural}`;
  return `${prefix}${shown}`.trim();
}
