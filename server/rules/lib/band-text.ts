/** The usual range of a value in the unit at hand, and as text for a message. */

import { formatValue } from '../../trade/measure/format.ts';
import { type Interval, range } from '../../trade/measure/interval.ts';
import { convertInterval, type Unit, unitById } from '../../trade/measure/units.ts';
import type { Band } from '../../trade/vocabulary/quantity.ts';

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
