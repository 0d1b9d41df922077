/** Values outside the usual band of their quantity, and the mistake that would explain each. */

import { latestFew } from '../../memo.ts';
import type { Origin, QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Amount } from '../../model/entry/value.ts';
import type { Context } from '../../model/snapshot/finding.ts';
import { keyOf } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { contains, type Interval, middle, range } from '../../trade/measure/interval.ts';
import { convertInterval, type Unit, unitById } from '../../trade/measure/units.ts';
import type { Band, Quantity } from '../../trade/vocabulary/quantity.ts';
import { signedAmounts } from './statement-values.ts';

export interface Outside {
  readonly quantity: Quantity;
  readonly amount: Amount;
  /** The value in the unit it was written in, with relative changes added up. */
  readonly value: Interval;
  readonly unit: Unit;
  readonly band: Band;
  /** The mistake that would explain it; undefined where none or more than one would. */
  readonly slip: Slip | undefined;
}

export type Slip =
  | { readonly kind: 'unit'; readonly unit: Unit }
  | { readonly kind: 'ten times'; readonly value: number };

/** Whether the quantity has a band. */
export const isBanded = ({ band, parts }: Quantity): boolean => band !== undefined || parts !== undefined;

/** The values of a line that are wholly outside their bands. */
export const valuesOutsideBand = (entry: QuantityEntry, context: Context): readonly Outside[] =>
  outsideOn(context.where, entry, context);

const NOTHING: readonly Outside[] = [];
/** Four rules judge the same line in turn. Keyed by origin, as holding the context would keep the whole notebook in memory. */
const outsideOn = latestFew(1, (_: Origin, entry: QuantityEntry, context: Context): readonly Outside[] => {
  const { quantity } = entry;
  const found: Outside[] = [];
  for (const said of entry.statements) {
    if (isColdOne(quantity, said)) continue;
    for (const amount of signedAmounts(said, entry.kind)) {
      const outside = judge(entry, said, amount, context);
      if (outside) found.push(outside);
    }
  }
  return found.length > 0 ? found : NOTHING;
});

/** Whether a temperature was taken on a cold engine, which is as cold as the day. */
const isColdOne = (quantity: Quantity, said: Statement): boolean =>
  quantity.dimension === 'temperature' && said.qualifiers.includes('cold');

function judge(
  entry: QuantityEntry,
  said: Statement,
  amount: Amount,
  { after }: Context,
): Outside | undefined {
  const { quantity } = entry;
  const whole = amount.relative ? sumOf(after.settings.get(keyOf(quantity.name, said.place?.text))) : amount;
  const unit = whole?.unit ?? unitById(quantity.unit ?? 'number');
  const band = bandFor(quantity, unit);
  if (!whole?.interval || !band || isInside(whole.interval, unit, band)) return undefined;
  return { quantity, amount, value: whole.interval, unit, band, slip: slipOf(amount, unit, band) };
}

/** The value after a relative change, where its start is known. */
function sumOf(setting: { readonly values: readonly unknown[]; readonly base: unknown } | undefined) {
  return setting?.base ? (setting.values[0] as Amount | undefined) : undefined;
}

const bandFor = ({ band, parts }: Quantity, { dimension }: Unit): Band | undefined => {
  const found = band ?? parts?.find((part) => part.dimension === dimension)?.band;
  return found && unitById(found.unit).dimension === dimension ? found : undefined;
};

function isInside(value: Interval, unit: Unit, band: Band): boolean {
  const { low, high } = convertInterval(value, unit, unitById(band.unit));
  const slack = 1e-9 * Math.max(Math.abs(band.low), Math.abs(band.high));
  return high >= band.low - slack && low <= band.high + slack;
}

function slipOf(amount: Amount, unit: Unit, band: Band): Slip | undefined {
  if (amount.relative || !amount.interval) return undefined;
  const value = amount.interval;
  if (unit.dimension !== 'temperature' && isJustOutside(value, bandIn(unit, band))) return undefined;
  const units = (OFTEN_MIXED.get(unit.id) ?? [])
    .map(unitById)
    .filter((other) => isInside(value, other, band));
  const usual = unitById(band.unit);
  const only = isInside(value, usual, band) ? usual : units.length === 1 ? units[0] : undefined;
  const ten = tenthOrTenfold(value, bandIn(unit, band));
  if (only && (ten === undefined || unit.dimension === 'temperature')) return { kind: 'unit', unit: only };
  return ten !== undefined && units.length === 0 ? { kind: 'ten times', value: ten } : undefined;
}

/** Whether a value is so near the band that the engine itself may be odd and another unit explains nothing. Common practice, no source. */
const isJustOutside = ({ low, high }: Interval, band: Interval): boolean =>
  low <= 1.1 * band.high && high >= band.low / 1.1;

/** Factor outside the band from which a misplaced zero explains a value better than an odd engine. Common practice, no source. */
const FAR_OUT = 2.5;

function tenthOrTenfold(value: Interval, band: Interval): number | undefined {
  const n = middle(value);
  const isFar = n > 0 && (n > FAR_OUT * band.high || FAR_OUT * n < band.low);
  if (!isFar || value.low !== value.high) return undefined;
  return [10, 0.1]
    .map((factor) => Number((n * factor).toPrecision(12)))
    .find((other) => contains(band, other));
}

/** Units found side by side on instruments, in drawers and in manuals, so often mixed up. */
const OFTEN_MIXED: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    F: ['C'],
    C: ['F'],
    in: ['mm', 'thou'],
    mm: ['in', 'thou'],
    thou: ['in', 'mm'],
    psi: ['bar', 'kPa'],
    bar: ['psi', 'kPa'],
    kPa: ['psi', 'bar', 'inHg'],
    inHg: ['kPa', 'mmHg', 'hPa'],
    hPa: ['inHg', 'mmHg', 'kPa'],
    kg: ['lb'],
    cc: ['L', 'cu-in'],
    L: ['cc', 'cu-in'],
  }),
);

/** A band in another unit of its dimension; throws for any other unit. */
export const bandIn = (unit: Unit, { low, high, unit: own }: Band): Interval =>
  convertInterval(range(low, high), unitById(own), unit);

/** `400..1800 rpm (common practice, no source: big slow engines 450 to ...)`. */
export function bandText(band: Band, unit: Unit = unitById(band.unit)): string {
  return `${formatValue(bandIn(unit, band), unit)} (${standingText(band)})`;
}

/** How reliable a band is, and what it is based on. */
export function standingText({ standing, source }: Pick<Band, 'standing' | 'source'>): string {
  if (source === 'this notebook') return 'from this notebook';
  if (standing === 'published') return `published: ${source}`;
  return standing === 'from memory'
    ? `from memory, no source: ${source}`
    : `common practice, no source: ${source}`;
}
