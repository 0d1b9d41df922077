/** Applies a line to a setting: a whole value replaces, a change is added. */
import { add, type Interval, scale } from '../../trade/measure/interval.ts';
import { convertDifference, unitById } from '../../trade/measure/units.ts';
import { turnSign } from '../../trade/sums/turns.ts';
import { amountIn } from '../entry/amount.ts';
import type { Origin, QuantityEntry, Statement } from '../entry/entry.ts';
import type { Amount } from '../entry/value.ts';
import { ofName, put, withoutKey } from './immutable.ts';
import { keyOf, type SettingInForce, type State } from './state.ts';

type Settings = State['settings'];

/** Settings after a statement about one place, or none. */
export function applySetting(
  settings: Settings,
  entry: QuantityEntry,
  said: Statement,
  where: Origin,
): Settings {
  if (saysNothing(entry, said)) return settings;
  const place = said.place?.text ?? '';
  const change = said.values[0];
  if (change?.form === 'amount' && change.relative)
    return placesMeant(settings, entry.quantity.name, place).reduce(
      (after, each) =>
        put(
          after,
          keyOf(entry.quantity.name, each),
          changed(settings, entry, { said, place: each }, change, where),
        ),
      settings,
    );
  const before = settings.get(keyOf(entry.quantity.name, place));
  if (before && onlyWords(entry, said))
    return put(settings, keyOf(entry.quantity.name, place), { ...before, words: wordsIn(said), by: where });
  const { name, places } = entry.quantity;
  let after = settings;
  if (place === '' && places)
    for (const each of ofName(settings, name)) after = withoutKey(after, keyOf(name, each.place));
  return put(after, keyOf(name, place), whole(entry, said, where));
}

/** The settings after some were moved by an unknown amount: each stays in force, in doubt, until its whole value is given. */
export const inDoubt = (
  settings: Settings,
  moved: readonly { readonly name: string; readonly place?: string }[],
  where: Origin,
): Settings =>
  moved
    .flatMap(({ name, place }) =>
      ofName(settings, name).filter((setting) => place === undefined || setting.place === place),
    )
    .reduce(
      (after, setting) =>
        put(after, keyOf(setting.quantity.name, setting.place), { ...setting, doubt: where }),
      settings,
    );

/** `initial` alone, `choke linkage ok`: the value in force stays. */
const saysNothing = ({ quantity, text }: QuantityEntry, { values, points, words }: Statement): boolean =>
  text === undefined &&
  values.length + points.length === 0 &&
  !words.some((word) => quantity.words?.includes(word.text.toLowerCase()));

/** A change without a place is made everywhere: `mixture in 1/4 turn` after `mixture left 1 turn, right 1 1/4 turns`. */
function placesMeant(settings: Settings, name: string, place: string): readonly string[] {
  if (place !== '') return [place];
  const written = ofName(settings, name);
  return written.length > 0 ? written.map((each) => each.place) : [place];
}

/** `vacuum advance plugged` says where the canister is connected; its curve stays. */
const onlyWords = (entry: QuantityEntry, said: Statement): boolean =>
  entry.quantity.form === 'curve' &&
  said.values.length === 0 &&
  said.points.length === 0 &&
  said.words.length > 0;

const wordsIn = (said: Statement): readonly string[] => said.words.map((word) => word.text.toLowerCase());

function whole(entry: QuantityEntry, said: Statement, where: Origin): SettingInForce {
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
  { said, place }: { readonly said: Statement; readonly place: string },
  change: Amount,
  where: Origin,
): SettingInForce {
  const name = entry.quantity.name;
  const before = settings.get(keyOf(name, place)) ?? settings.get(keyOf(name, undefined));
  const from = before?.values[0];
  const next = from?.form === 'amount' && before?.values.length === 1 ? sum(from, change, name) : undefined;
  if (!before || !next)
    return { ...whole(entry, said, where), values: [asChange(change, name)], base: undefined };
  return { ...before, place, values: [next], by: where };
}

/** The change as a signed amount: `in 1/4 turn` of a mixture screw is -1/4 turn. */
function asChange(change: Amount, name: string): Amount {
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

/** A setting's single value in a unit; undefined for a list, a mere change, or none. */
export function settingIn(setting: SettingInForce | undefined, unit: string): Interval | undefined {
  if (!setting?.base || setting.values.length !== 1) return undefined;
  return amountIn(setting.values[0], unit, setting.quantity.unit ?? unit);
}
