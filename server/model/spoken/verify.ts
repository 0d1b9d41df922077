/** Whatever a form gives is read by the ordinary reader, and holds only where that accounts for every word and number of it. */
import { parseLine } from '../../../grammar/index.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import type { Entry, SectionKind } from '../entry/entry.ts';
import { unaccounted } from '../entry/every-word-counts.ts';
import type { NameScope } from '../entry/name-lookup.ts';
import { readEntry } from '../entry/read-entry.ts';
import type { Value } from '../entry/value.ts';

/** True where each line is read whole, one after the other, each in the section that the ones before have begun. */
export function holds(lines: readonly string[], scope: NameScope): boolean {
  let section: SectionKind | undefined = scope.section;
  return lines.every((text) => {
    const entry = readEntry(parseLine(text), { ...scope, section });
    if (entry.kind === 'section') section = entry.section;
    return isWhole(entry, section);
  });
}

const isWhole = (entry: Entry, section: SectionKind | undefined): boolean =>
  entry.kind !== 'unknown' &&
  entry.kind !== 'row' &&
  unaccounted(entry, section).length === 0 &&
  !(entry.kind === 'session' && entry.date === undefined) &&
  isPossible(entry);

/** No value is several times out of its band, where the number could be read at all. */
function isPossible(entry: Entry): boolean {
  if (!('statements' in entry)) return true;
  const { band } = entry.quantity;
  if (!band) return true;
  return entry.statements.every(({ values }) => values.every((value) => isNear(value, band)));
}

function isNear(
  value: Value,
  band: { readonly low: number; readonly high: number; readonly unit: string },
): boolean {
  if (value.form !== 'amount' || !value.interval || value.relative) return true;
  const limit = unitById(band.unit);
  if (value.unit && value.unit.dimension !== limit.dimension) return true;
  const read = value.unit ? convertInterval(value.interval, value.unit, limit) : value.interval;
  const most = Number.isFinite(read.high) ? read.high : read.low;
  return most <= band.high * 2 && most >= Math.min(band.low / 2, band.low * 2);
}
