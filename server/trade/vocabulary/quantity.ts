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

/**
 * How a word behaves, beyond its kind, form and unit. Rules, figures and the carried state go by these and keep no lists of
 * words of their own; each is left out where it does not apply.
 */
export interface Traits {
  /** Of the air outside, which no setting changes. */
  readonly weather?: true;
  /** A meter that only counts up; the unit it is compared in. */
  readonly meter?: 'km' | 'h';
  /** Read only while the vehicle moves, so the engine is warm. */
  readonly underWay?: true;
  /** No setting changes it. Nor do weather and meters, without this. */
  readonly notAResponse?: true;
  /** Temperature of something the running engine warms, and of what. */
  readonly warmthOf?: 'water' | 'oil' | 'head' | 'gearbox';
  /** Not measured on a cold engine. */
  readonly needsWarmEngine?: true;
  /** Temperature of the exhaust: low where a cylinder does not fire. */
  readonly exhaust?: true;
  /** A jet of the main circuit, whose fuel follows the air's own signal. */
  readonly mainJet?: true;
  /** Spark timing as read at the engine. */
  readonly sparkTiming?: true;
  /** Its latest reading counts in later sessions, as that of a meter does. Give it to few: each one ties later pages to earlier ones. */
  readonly outlastsSession?: true;
  /** Often measured as found and then set: both values belong on the page. */
  readonly measuredFirst?: true;
  /** Timing totals it goes into or is compared with, in the order in which they are shown. */
  readonly totals?: readonly string[];
  /** Name of the setting that is changed to move this reading. Common practice, no source. */
  readonly adjustedBy?: string;
  /** Name of the setting, or kind of part, that the same work moves: two words for it are one cause. Common practice, no source. */
  readonly goesWith?: string;
  /** The parts whose settings can move this reading; any part can where left out. Common practice, no source. */
  readonly movedBy?: readonly PartKind[];
  /** Speed of an engine that runs, or something that happens at one. */
  readonly runningSpeed?: true;
  /** Something the engine does or does not do, so that `no` before it says that it does not. */
  readonly symptom?: true;
  /** Described in the writer's own words beside the few it knows. */
  readonly inOwnWords?: true;
  /** Takes several numbers though it has no cylinders. */
  readonly list?: true;
  /** Units that the trade leaves out and understands, whichever system it uses, the likeliest first. Common practice, no source. */
  readonly unitsLeftOut?: readonly string[];
  /** Name of the check (`ROAD_CHECKS`) that work on it makes due before the next road run. */
  readonly roadCheck?: string;
}

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
  readonly traits?: Traits;
  /** One plain line, for somebody new to it. */
  readonly meaning: string;
}

/** A value and its place on a curve: `at` in the curve's `against` unit, `value` in its own. */
export interface CurvePoint {
  readonly at: number;
  readonly value: Interval;
}

/** A quantity that settings may have an effect on. Torque is none, whatever it is called. */
export const isResponse = ({ kind, form, dimension, traits }: Quantity): boolean =>
  kind === 'reading' &&
  form === 'number' &&
  dimension !== 'torque' &&
  !(traits?.weather || traits?.meter || traits?.notAResponse);

/** Whether the vehicle moves while it is read. */
export const isUnderWay = ({ traits }: Quantity): boolean => traits?.underWay ?? false;
