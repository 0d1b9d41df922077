/** Short ways to write a row of the vocabulary, so that the tables read as tables. */

import { type Dimension, unitById } from '../measure/units.ts';
import type { Band, PartKind, PlaceKind, Quantity, QuantityKind, Standing, Traits } from './quantity.ts';

export type Row = Omit<Quantity, 'kind'>;
type Limits = Omit<Band, 'unit'>;

interface Extra {
  /** Other spellings, separated by commas. */
  readonly also?: string;
  readonly band?: Limits;
  readonly bare?: true;
  readonly ofDistributor?: true;
  readonly orIn?: readonly Dimension[];
  readonly places?: readonly PlaceKind[];
  readonly traits?: Traits;
  /** Words it may take, separated by commas. */
  readonly words?: string;
}

/** A row whose value is a number in the unit (an id of units.ts), which also says its dimension. */
export function measured(name: string, unit: string, meaning: string, extra: Extra = {}): Row {
  return { ...common(name, meaning, extra), form: 'number', ...measure(unit, extra) };
}

/** A row whose values are points: `unit` at `against`. */
export function curve(name: string, unit: string, against: string, meaning: string, extra: Extra = {}): Row {
  const other = { dimension: unitById(against).dimension, unit: against };
  return { ...common(name, meaning, extra), form: 'curve', ...measure(unit, extra), against: other };
}

/** A row whose value is words or text. */
export function text(name: string, meaning: string, extra: Omit<Extra, 'band' | 'bare' | 'orIn'> = {}): Row {
  return { ...common(name, meaning, extra), form: 'text' };
}

/** A row that is a list of cylinders. */
export function order(name: string, meaning: string, extra: Omit<Extra, 'band' | 'bare' | 'orIn'> = {}): Row {
  return { ...common(name, meaning, extra), form: 'order' };
}

/**
 * A row for the air: each value is known by its dimension, so they may come in any order; humidity is often
 * written as plain `%`.
 */
export function air(name: string, meaning: string, also: string, traits?: Traits): Row {
  const humidity = usual(0, 100, 'by definition');
  return {
    name,
    aliases: list(also),
    form: 'several',
    ...(traits && { traits }),
    parts: [
      {
        name: 'temperature',
        dimension: 'temperature',
        band: { ...usual(-40, 55, 'where people drive'), unit: 'C' },
      },
      {
        name: 'pressure',
        dimension: 'pressure',
        band: { ...usual(500, 1090, 'from high passes to a deep winter high'), unit: 'hPa' },
      },
      { name: 'humidity', dimension: 'humidity', band: { ...humidity, unit: '%RH' } },
      { name: 'humidity', dimension: 'percent', band: { ...humidity, unit: '%' } },
    ],
    meaning,
  };
}

/** Limits of common practice, used throughout the trade but not published. */
export function usual(low: number, high: number, source: string): Limits {
  return limits(low, high, 'common practice', source);
}

/** Limits out of a publication, which is named. */
export function published(low: number, high: number, source: string): Limits {
  return limits(low, high, 'published', source);
}

/** Limits not yet confirmed by any source. */
export function fromMemory(low: number, high: number, source: string): Limits {
  return limits(low, high, 'from memory', source);
}

/** Rows of a table in which all are of one kind. */
export function ofKind(kind: QuantityKind, rows: readonly Row[]): readonly Quantity[] {
  return rows.map((row) => ({ ...row, kind }));
}

/** Rows of a table in which all belong to one kind of part. */
export function ownedBy(owner: PartKind, rows: readonly Row[]): readonly Row[] {
  return rows.map((row) => ({ ...row, owner }));
}

function common(name: string, meaning: string, extra: Extra) {
  return {
    name,
    meaning,
    aliases: list(extra.also),
    ...(extra.places && { places: extra.places }),
    ...(extra.traits && { traits: extra.traits }),
    ...(extra.words && { words: list(extra.words) }),
  };
}

function measure(unit: string, { band, bare, orIn, ofDistributor }: Extra) {
  return {
    unit,
    dimension: unitById(unit).dimension,
    ...(band && { band: { ...band, unit } }),
    ...(bare && { bare }),
    ...(orIn && { orIn }),
    ...(ofDistributor && { ofDistributor }),
  };
}

function limits(low: number, high: number, standing: Standing, source: string): Limits {
  return { low, high, standing, source };
}

function list(words: string | undefined): readonly string[] {
  return words ? words.split(', ') : [];
}
