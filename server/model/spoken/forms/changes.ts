/** What a setting is after a change, or how far it was changed: one more, a quarter in, from 8 to 10. */
import type { Frame } from '../frames.ts';
import { sizeOf } from '../numbers.ts';
import type { Fit } from '../resolve.ts';
import type { SpokenAmount } from '../spoken-amount.ts';
import { directionOf } from '../subjects.ts';

/** `from 8 to 10` of a setting is where it is now; without `from` it may be a range too. Of a reading, nobody can say. */
export function stepOf(
  { amount, changes }: Frame,
  { quantity, value, name }: Fit,
): { readonly value: string; readonly others: readonly string[] } | 'unclear' | undefined {
  if (!amount.isStep) return undefined;
  if (!amount.high) return quantity.kind === 'setting' ? { value, others: [] } : 'unclear';
  if (quantity.kind !== 'setting') return amount.isStep === 'from' ? 'unclear' : undefined;
  const now = value.replace(/^[^.]*?\.\.(?=[\d.])|^\S*?\.\.(?=[\d.])/, '');
  const isMoved = amount.isStep === 'from' || changes.length > 0;
  return { value: now, others: isMoved ? [] : [`${name} ${value}`] };
}

/** The value, or how far it was changed; undefined where a change cannot be counted. */
export function changed(
  { changes, isWhole, changeAfter, amount, remark, nameText }: Frame,
  fit: Fit,
): string | undefined {
  if (changes.length === 0 || isWhole) return fit.value;
  if (changes.every((word) => word === 'changed' || word === 'adjusted' || word === 'reset'))
    return fit.value;
  if (isUsedUp(fit, changes)) return fit.value;
  const direction = directionOf(fit, changes, nameText);
  if (fit.quantity.kind !== 'setting') return undefined;
  if (!direction || amount.high || amount.prefix) return undefined;
  const size = sizeOf(amount.low[0] as string);
  // `1 3/4 turns out` is where a screw stands, `1/8 out` how far it went.
  const isScrew = changeAfter && fit.quantity.dimension === 'turns' && fit.name !== 'idle screw';
  if (isScrew && !/\bmore\b/.test(remark))
    return screwAt(size, amount.unit?.id === 'flat', fit.value, direction);
  if (isFar(fit, amount)) return undefined;
  return `${direction}${fit.value}`;
}

/** A few flats, or half a turn at most, are how far it went; a whole turn and more is where it is; between them it may be either. */
function screwAt(size: number, inFlats: boolean, value: string, direction: string): string | undefined {
  const [moved, stands] = inFlats ? [4, 8] : [0.5, 0.75];
  if (size <= moved) return `${direction}${value}`;
  return size >= stands ? value : undefined;
}

/** No change goes over a great part of what a setting can be; of a float, up and down may mean either. */
const isFar = ({ quantity, name }: Fit, { low, unit }: SpokenAmount): boolean => {
  if (name.startsWith('float')) return true;
  const { band } = quantity;
  if (!band || (unit && unit.id !== quantity.unit)) return false;
  const share = quantity.dimension === 'number' ? 10 : 3;
  return sizeOf(low[0] as string) > (band.high - band.low) / share;
};

/** `planes in 6 secs`, `put 18 gal in`. */
const isUsedUp = ({ quantity }: Fit, changes: readonly string[]): boolean =>
  (quantity.dimension === 'time' || quantity.name === 'fuel used' || quantity.name === 'oil used') &&
  changes.every((word) => /^(?:in|up|added|took)$/.test(word));
