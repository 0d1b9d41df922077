/**
 * Quantity: the form of a vocabulary row. The rows themselves are in the tables beside this file.
 */
import type { Interval } from '../measure/interval.ts';
import type { Dimension } from '../measure/units.ts';

/** How reliable a limit or a formula is: published, common practice without a source, or from memory. */
export type Standing = 'published' | 'common practice' | 'from memory';

/** The kinds of part that own settings: fit another and its settings are unknown until they are written. */
export type PartKind =
  | 'carburettor'
  | 'distributor'
  | 'plugs'
  | 'fuel system'
  | 'blower'
  | 'valve gear'
  | 'engine'
  | 'manifold'
  | 'flywheel'
  | 'gearbox'
  | 'propeller'
  | 'tyres'
  | 'running gear'
  | 'vehicle';

/** A range a value is expected in, in `unit`, with how reliable that range is. */
export interface Band {
  readonly low: number;
  readonly high: number;
  /** Canonical id of a unit in units.ts. */
  readonly unit: string;
  readonly standing: Standing;
  /** The publication, or what the practice is. */
  readonly source: string;
}

/**
 * - `setting`: holds until changed. - `reading`: a moment. - `fact`: of the engine or vehicle, written in that section.
 */
export type QuantityKind = 'setting' | 'reading' | 'fact';

/**
 * - `number`: one value, or one per cylinder or place. - `curve`: points `value @ at` joined by commas.
 * - `text`: quoted text or words. - `several`: values of different dimensions on one line (the weather).
 * - `order`: cylinder numbers joined by hyphens.
 */
export type ValueForm = 'number' | 'curve' | 'text' | 'several' | 'order';

export type PlaceKind = 'cylinder' | 'side' | 'barrel' | 'carburettor' | 'valve' | 'bank';

/** One row of the vocabulary. */
export interface Quantity {
  /** Lower case, words separated by one space. */
  readonly name: string;
  /** Other spellings in use, lower case; hyphen and space count as the same. */
  readonly aliases: readonly string[];
  readonly kind: QuantityKind;
  readonly form: ValueForm;
  /** Undefined for text. For `several`, the dimensions it may mix are in `parts`. */
  readonly dimension?: Dimension;
  /** For form `several`: what each dimension on the line is called. */
  readonly parts?: readonly { readonly name: string; readonly dimension: Dimension; readonly band?: Band }[];
  /** Canonical id of the unit the trade uses most; what a bare number is taken to be when `bare` is true. */
  readonly unit?: string;
  /** Other dimensions the trade also gives it in: a jet by its number or by its bore. They are taken as written. */
  readonly orIn?: readonly Dimension[];
  /** True where the trade writes the number without its unit and means `unit`. */
  readonly bare?: boolean;
  /** True where its degrees are the distributor's own, whether that is written or not. */
  readonly ofDistributor?: boolean;
  /** For a curve: the dimension and usual unit of the value after `@`. */
  readonly against?: { readonly dimension: Dimension; readonly unit: string };
  /** The part whose removal takes this setting away. */
  readonly owner?: PartKind;
  readonly section?: 'engine' | 'vehicle';
  /** What kinds of place it may be given for. */
  readonly places?: readonly PlaceKind[];
  /** Words it may take in place of a number or beside it: `manifold`, `ported`, `plugged`. */
  readonly words?: readonly string[];
  readonly band?: Band;
  /** One plain line, for somebody new to it. */
  readonly meaning: string;
}

/** A value and its place on a curve: `at` in the curve's `against` unit, `value` in its own. */
export interface CurvePoint {
  readonly at: number;
  readonly value: Interval;
}

/** Readings that no setting affects: the day's air, the meters, torques. */
const NO_RESPONSE: ReadonlySet<string> = new Set([
  'weather',
  'air temperature',
  'barometer',
  'humidity',
  'altitude',
  'odometer',
  'hours',
  'fuel used',
  'oil used',
]);

/** A quantity that settings may have an effect on. */
export const isResponse = (quantity: Quantity): boolean =>
  quantity.kind === 'reading' &&
  quantity.form === 'number' &&
  quantity.dimension !== 'torque' &&
  !NO_RESPONSE.has(quantity.name);
