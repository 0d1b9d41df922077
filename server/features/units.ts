/** A value in the other units the trade uses for it, the user's own first. */
import { valueText } from '../model/entry/as-written.ts';
import { type Amount, asWhole } from '../model/entry/value.ts';
import { monotone, scale } from '../trade/measure/interval.ts';
import {
  convertDifference,
  convertInterval,
  type Dimension,
  type Unit,
  unitById,
} from '../trade/measure/units.ts';
import type { Quantity } from '../trade/vocabulary/quantity.ts';

export type UnitTopic =
  | 'temperature'
  | 'pressure'
  | 'depression'
  | 'length'
  | 'torque'
  | 'roadSpeed'
  | 'distance';

/** The unit the user prefers to see first; a topic that is not in it is shown as written. */
export type UnitChoice = ReadonlyMap<UnitTopic, Unit>;

interface OtherUnits {
  /** In the reader's unit; undefined where none was chosen or it is written in that unit. */
  readonly preferred: string | undefined;
  /** At most two. */
  readonly others: readonly string[];
}

const MOST_OTHERS = 2;

/** Pressures are read on three kinds of gauge; heights and tanks have units of their own. */
type Kind = Dimension | 'depression' | 'air pressure' | 'height' | 'tank';

/** Which units go beside each other. Common practice, no source. */
const BESIDE: Partial<Readonly<Record<Kind, readonly string[]>>> = {
  temperature: ['C', 'F'],
  pressure: ['psi', 'bar'],
  depression: ['inHg', 'kPa'],
  'air pressure': ['hPa', 'inHg'],
  length: ['in', 'mm'],
  height: ['ft', 'm'],
  distance: ['mi', 'km'],
  area: ['in2', 'cm2'],
  volume: ['cc', 'cu-in'],
  tank: ['gal', 'L'],
  mass: ['lb', 'kg'],
  force: ['lbf', 'N'],
  'spring rate': ['lb/in', 'N/mm'],
  torque: ['lb-ft', 'Nm'],
  power: ['hp', 'kW'],
  'road speed': ['mph', 'km/h'],
  'air flow': ['cfm', 'L/min'],
  'fuel flow': ['gph', 'L/h'],
  'fuel economy': ['mpg', 'imp-mpg', 'km/L'],
};

const TOPICS: Partial<Readonly<Record<Kind, UnitTopic>>> = {
  temperature: 'temperature',
  pressure: 'pressure',
  'air pressure': 'pressure',
  depression: 'depression',
  length: 'length',
  torque: 'torque',
  'road speed': 'roadSpeed',
  distance: 'distance',
};

/**
 * Amounts of one dimension, of one quantity; a bare number is taken to be in the quantity's own unit. Only of a
 * setting is a signed one a change: five degrees less are nine others, five degrees of frost are not.
 */
export function inOtherUnits(amounts: readonly Amount[], quantity: Quantity, choice: UnitChoice): OtherUnits {
  const [first] = amounts;
  const whole = (amount: Amount) => (quantity.kind === 'setting' ? amount : (asWhole(amount) ?? amount));
  const unit = first && unitOf(first, quantity);
  if (!unit || amounts.some((amount) => unitOf(amount, quantity) !== unit))
    return { preferred: undefined, others: [] };
  const { preferred, others } = unitsBeside(unit, quantity, choice);
  const inUnit = (to: Unit) => together(amounts.map((amount) => converted(whole(amount), unit, to)));
  return { preferred: preferred && inUnit(preferred), others: others.map(inUnit) };
}

/** The units that a value in `unit` is also given in: the reader's own, if it is another, and at most two more. */
export function unitsBeside(
  unit: Unit,
  quantity: Quantity | undefined,
  choice: UnitChoice,
): { readonly preferred: Unit | undefined; readonly others: readonly Unit[] } {
  const kind = kindOf(unit, quantity);
  const topic = TOPICS[kind];
  const chosen = topic && choice.get(topic);
  const preferred = chosen?.dimension === unit.dimension && chosen !== unit ? chosen : undefined;
  const beside = (BESIDE[kind] ?? []).map(unitById);
  const others = beside.filter((other) => other !== unit && other !== preferred).slice(0, MOST_OTHERS);
  return { preferred, others };
}

/** Volume units used for tanks, never for a bore or a chamber. */
const OTHER_KIND: ReadonlyMap<string, Kind> = new Map(
  Object.entries({
    ft: 'height',
    m: 'height',
    L: 'tank',
    gal: 'tank',
    'imp-gal': 'tank',
    qt: 'tank',
  }),
);

function kindOf({ id, dimension }: Unit, quantity: Quantity | undefined): Kind {
  const other = OTHER_KIND.get(id);
  if (other) return other;
  if (dimension !== 'pressure' || !quantity) return dimension;
  if (quantity.form === 'several') return 'air pressure';
  return quantity.unit === 'inHg' || quantity.against?.unit === 'inHg' ? 'depression' : 'pressure';
}

/** `388 401 F`: one unit at the end, as a list is written. */
function together(texts: readonly string[]): string {
  const unit = / \D+$/.exec(texts.at(-1) ?? '')?.[0] ?? '';
  return texts
    .map((text, i) =>
      i < texts.length - 1 && unit && text.endsWith(unit) ? text.slice(0, -unit.length) : text,
    )
    .join(' ');
}

function unitOf(amount: Amount, quantity: Quantity): Unit | undefined {
  if (!amount.interval) return undefined;
  return amount.unit ?? (quantity.unit === undefined ? undefined : unitById(quantity.unit));
}

function converted(amount: Amount, from: Unit, to: Unit): string {
  const { interval, relative } = amount;
  if (!interval) return valueText(amount, undefined);
  const result = relative
    ? scale(interval, convertDifference(1, from, to))
    : convertInterval(interval, from, to);
  return valueText({ ...amount, interval: monotone(result, (n) => asRead(n, to)), unit: to }, undefined);
}

/** As finely as it is read or set at the bench, places after the point. Common practice, no source. */
const PLACES: ReadonlyMap<string, number> = new Map(
  Object.entries({
    in: 3,
    mm: 2,
    cm: 3,
    m: 0,
    ft: 0,
    mi: 0,
    km: 0,
    bar: 2,
    psi: 1,
    kPa: 1,
    inHg: 2,
    hPa: 0,
    cc: 1,
    'cu-in': 2,
    L: 1,
    gal: 1,
    lb: 0,
    kg: 0,
    'lb-ft': 1,
    Nm: 1,
    mph: 1,
    'km/h': 1,
  }),
);

/** A value too small for that keeps two figures of its own. */
function asRead(n: number, { id }: Unit): number {
  const places = PLACES.get(id);
  if (places === undefined || !Number.isFinite(n) || n === 0) return n;
  const own = 1 - Math.floor(Math.log10(Math.abs(n)));
  return Number(n.toFixed(Math.min(12, Math.max(places, own))));
}
