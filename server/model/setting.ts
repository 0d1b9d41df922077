/** What a line makes of a setting: a whole value replaces, a change adds up. */
import { add, scale } from '../trade/interval.ts';
import { turnSign } from '../trade/turns.ts';
import { convertDifference, unitById } from '../trade/units.ts';
import { type Carried, type InForce, keyOf } from './carry.ts';
import type { Origin, QuantityEntry, Said } from './notebook.ts';
import type { Amount } from './values.ts';

type Settings = Carried['settings'];

export function set(settings: Settings, entry: QuantityEntry, said: Said, where: Origin): Settings {
  const place = said.place?.text ?? '';
  const change = said.values[0];
  if (change?.form === 'amount' && change.relative)
    return new Map(settings).set(
      keyOf(entry.quantity.name, place),
      changed(settings, entry, said, change, where),
    );
  const before = settings.get(keyOf(entry.quantity.name, place));
  if (before && onlyWords(entry, said))
    return new Map(settings).set(keyOf(entry.quantity.name, place), {
      ...before,
      words: wordsIn(said),
      by: where,
    });
  const after = new Map(settings);
  if (place === '' && entry.quantity.places)
    for (const [key, each] of settings) if (each.quantity.name === entry.quantity.name) after.delete(key);
  return after.set(keyOf(entry.quantity.name, place), whole(entry, said, where));
}

/** `vacuum advance plugged` says where the canister is connected; its curve stays. */
const onlyWords = (entry: QuantityEntry, said: Said): boolean =>
  entry.quantity.form === 'curve' &&
  said.values.length === 0 &&
  said.points.length === 0 &&
  said.words.length > 0;

const wordsIn = (said: Said): readonly string[] => said.words.map((word) => word.text.toLowerCase());

function whole(entry: QuantityEntry, said: Said, where: Origin): InForce {
  return {
    quantity: entry.quantity,
    place: said.place?.text ?? '',
    values: said.values,
    points: said.points,
    words: wordsIn(said),
    text: entry.text,
    by: where,
    base: where,
  };
}

function changed(
  settings: Settings,
  entry: QuantityEntry,
  said: Said,
  change: Amount,
  where: Origin,
): InForce {
  const name = entry.quantity.name;
  const before = settings.get(keyOf(name, said.place?.text)) ?? settings.get(keyOf(name, undefined));
  const from = before?.values[0];
  const next = from?.form === 'amount' && before?.values.length === 1 ? sum(from, change, name) : undefined;
  if (!before || !next)
    return { ...whole(entry, said, where), values: [asChange(change, name)], base: undefined };
  return { ...before, place: said.place?.text ?? '', values: [next], by: where };
}

/** The change as a signed amount: `in 1/4 turn` of a mixture screw is -1/4 turn. */
export function asChange(change: Amount, name: string): Amount {
  if (!change.interval) return change;
  return { ...change, interval: scale(change.interval, signOf(change, name)), relative: 'more' };
}

function signOf({ relative }: Amount, name: string): number {
  if (relative === 'in' || relative === 'out') return turnSign(name, relative);
  return relative === 'less' ? -1 : 1;
}

/** Undefined where the units do not go together. */
function sum(from: Amount, change: Amount, name: string): Amount | undefined {
  const signed = asChange(change, name).interval;
  if (!from.interval || !signed) return undefined;
  const factor = stepFactor(from, change);
  return factor === undefined ? undefined : { ...from, interval: add(from.interval, scale(signed, factor)) };
}

function stepFactor(from: Amount, change: Amount): number | undefined {
  const unit = change.unit ?? from.unit;
  const target = from.unit ?? unit;
  if (!unit || !target) return 1;
  return unit.dimension === target.dimension
    ? convertDifference(1, unitById(unit.id), unitById(target.id))
    : undefined;
}
