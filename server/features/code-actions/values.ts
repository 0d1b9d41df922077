/** Actions that rewrite a value: in another unit, or as the value in force instead of a change. */

import type { Entry, QuantityEntry } from '../../model/entry/entry.ts';
import type { Amount, Value } from '../../model/entry/value.ts';
import { touches } from '../../model/snapshot/locate.ts';
import { keyOf } from '../../model/state/state.ts';
import { type Unit, unitById } from '../../trade/measure/units.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { readyLine } from '../completion/setting-line.ts';
import { onLine } from '../ranges.ts';
import { unitsBeside } from '../units.ts';
import { type ActionAround, type CodeAction, type Place, rewriting } from './action.ts';
import { turned } from './convert-units.ts';

/** The value at the cursor in the units that the trade, or the reader, gives it in too. A list is turned as a whole. */
export function otherUnits(place: Place, { units }: ActionAround): readonly CodeAction[] {
  const { entry } = place.reading;
  const list = listsIn(entry).find((each) => each.some(({ span }) => touches(span, place.column)));
  const quantity = 'quantity' in entry ? entry.quantity : undefined;
  const from = list && unitOf(list, quantity?.unit);
  if (!from) return [];
  if (isOfAnotherKind(from, quantity)) return [];
  const { preferred, others } = unitsBeside(from, quantity, units);
  return [...(preferred ? [preferred] : []), ...others].flatMap((to) => {
    const pieces = turned(entry, list, from, to);
    if (!pieces) return [];
    const edits = pieces.map(({ span, text }) => ({ range: onLine(place.line, span), text }));
    return rewriting(`Write as ${pieces.map(({ text }) => text).join(' ')}`, edits);
  });
}

/** Degrees Fahrenheit of timing are no better in Celsius. */
const isOfAnotherKind = ({ dimension }: Unit, quantity: Quantity | undefined): boolean =>
  quantity?.form === 'number' &&
  quantity.dimension !== dimension &&
  quantity.against?.dimension !== dimension &&
  quantity.orIn?.includes(dimension) !== true;

/** Amounts that share their unit belong together. */
function listsIn(entry: Entry): readonly (readonly Amount[])[] {
  if (!('statements' in entry))
    return 'values' in entry ? entry.values.filter(isAmount).map((each) => [each]) : [];
  return entry.statements.flatMap(({ values, points, conditions }) => [
    values.filter(isAmount),
    points.map(({ value }) => value),
    points.map(({ at }) => at),
    ...conditions.flatMap(({ value }) => (value ? [[value]] : [])),
  ]);
}

const isAmount = (value: Value): value is Amount => value.form === 'amount';

/** The one unit of all; undefined where they have none or several. */
function unitOf(amounts: readonly Amount[], assumed: string | undefined): Unit | undefined {
  const units = new Set(
    amounts.map(({ unit }) => unit ?? (assumed === undefined ? undefined : unitById(assumed))),
  );
  const [unit] = units;
  return units.size === 1 ? unit : undefined;
}

/** `+2 deg` as the value it comes to, where what it was added to is known. */
export function madeAbsolute({ reading, line, column }: Place): readonly CodeAction[] {
  const { entry, after, where } = reading;
  if (entry.kind !== 'setting') return [];
  const said = entry.statements.find(({ span }) => touches(span, column)) ?? entry.statements[0];
  const value = said?.values[0];
  const setting = after.settings.get(keyOf(entry.quantity.name, said?.place?.text));
  if (!value || !isChange(value) || said.values.length > 1 || setting?.by.ref !== where.ref) return [];
  if (!said.place && countOf(entry, after.settings) > 1) return [];
  const ready = setting.words.length === 0 ? readyLine(after, setting) : undefined;
  if (!ready) return [];
  return [
    rewriting(`Write the result: ${ready.value}`, [{ range: onLine(line, value.span), text: ready.value }]),
  ];
}

const isChange = (value: Value): boolean => isAmount(value) && value.relative !== undefined;

/** A change without a place is made in all places, a value without one replaces them. */
const countOf = ({ quantity }: QuantityEntry, settings: Place['reading']['after']['settings']): number =>
  [...settings.values()].filter((each) => each.quantity.name === quantity.name).length;
