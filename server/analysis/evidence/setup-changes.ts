/** Changes on the engine between two moments: settings, parts and facts. The same value written again is no change. */

import { amountIn } from '../../model/entry/amount.ts';
import { statementText } from '../../model/entry/as-written.ts';
import type { Origin } from '../../model/entry/entry.ts';
import { changedKeys } from '../../model/state/immutable.ts';
import { sameSetting, sameValues } from '../../model/state/same-setting.ts';
import { changeText, settingText } from '../../model/state/setting-text.ts';
import type { SettingInForce, State } from '../../model/state/state.ts';
import { type Interval, isBounded, middle, subtract } from '../../trade/measure/interval.ts';
import { type Unit, unitById } from '../../trade/measure/units.ts';
import { workGroupOf } from '../../trade/practice/work-groups.ts';
import type { PartKind } from '../../trade/vocabulary/quantity.ts';

export type Setup = Pick<State, 'settings' | 'fitted' | 'facts'>;

export interface Changed {
  /** Name of the setting, fact or kind of part. */
  readonly name: string;
  readonly place: string;
  /** The kind of part it belongs to, or is; `fact` for what the engine itself is; undefined for a word of the notebook's own. */
  readonly owner: PartKind | 'fact' | undefined;
  /** Value in force; undefined where nothing was written before (or after). Turned into text only when shown. */
  readonly before: SettingOrWords | undefined;
  readonly after: SettingOrWords | undefined;
  /** By how much, where both are one number. */
  readonly amount: { readonly value: Interval; readonly unit: Unit } | undefined;
  /** The line that says what holds after; undefined where nothing does. */
  readonly by: Origin | undefined;
}

/** A setting in force, or words. */
type SettingOrWords = SettingInForce | string;

export const settingOrWordsText = (stood: SettingOrWords): string =>
  typeof stood === 'string' ? stood : settingText(stood);

/** `1 flat more`, in the unit it was written in; undefined where the two cannot be compared. */
export const stepText = ({ before, after }: Changed): string | undefined =>
  typeof before === 'object' && typeof after === 'object' ? changeText(before, after) : undefined;

/** All differences, in the order of their lines. */
export function changesBetween(before: Setup, after: Setup): readonly Changed[] {
  const parts = partChanges(before, after);
  const owners = new Set(parts.map(({ name }) => name as PartKind));
  return [
    ...parts,
    ...settingChanges(before.settings, after.settings, owners),
    ...factChanges(before, after),
  ];
}

/** `changesBetween`, plus each setting of a changed part as if it had been adjusted. */
export function everyChange(before: Setup, after: Setup): readonly Changed[] {
  const parts = partChanges(before, after);
  const owners = new Set(parts.map(({ name }) => name as PartKind));
  const wentWithThePart = ({ before: was, after: is }: Changed): boolean =>
    is === undefined && typeof was === 'object' && owners.has(was.quantity.owner as PartKind);
  const settings = settingChanges(before.settings, after.settings, new Set());
  return [...parts, ...settings.filter((change) => !wentWithThePart(change)), ...factChanges(before, after)];
}

function partChanges({ fitted: before }: Setup, { fitted: after }: Setup): readonly Changed[] {
  if (before === after) return [];
  const kinds = new Set([...before.keys(), ...after.keys()]);
  return [...kinds].flatMap((kind): Changed[] => {
    const [from, to] = [before.get(kind), after.get(kind)];
    if (from?.name === to?.name) return [];
    return [
      {
        name: kind,
        place: '',
        owner: kind,
        before: from?.written,
        after: to?.written,
        amount: undefined,
        by: to?.by,
      },
    ];
  });
}

/** Settings of a changed part belong to that change and are not listed again. */
function settingChanges(
  before: State['settings'],
  after: State['settings'],
  owners: ReadonlySet<PartKind>,
): readonly Changed[] {
  if (before === after) return [];
  const each = [...changedKeys(before, after)].flatMap((key) => {
    const [from, to] = [settingAt(before, key), settingAt(after, key)];
    const owner = (to ?? from)?.quantity.owner;
    if (owner && owners.has(owner)) return [];
    const change = settingChange(from, to);
    return change ? [{ ...change, place: key.slice(change.name.length + 1) }] : [];
  });
  return mergePlaces(each);
}

/** Both screws turned alike are one change: `mixture left and right`. */
function mergePlaces(changes: readonly Changed[]): readonly Changed[] {
  const groups = new Map<string, Changed[]>();
  const [once, repeated] = [new Set<string>(), new Set<string>()];
  for (const { name } of changes) (once.has(name) ? repeated : once).add(name);
  for (const change of changes) {
    const key = repeated.has(change.name) ? `${change.name}|${likeness(change)}` : change.name;
    const group = groups.get(key);
    if (group) group.push(change);
    else groups.set(key, [change]);
  }
  return [...groups.values()].map(asOne);
}

const likeness = (change: Changed): string =>
  sizeOf(change)?.toPrecision(9) ??
  [change.before, change.after].map((stood) => stood && settingOrWordsText(stood)).join(' -> ');

/** Without a place it was given for all of them. */
function asOne(group: readonly Changed[]): Changed {
  const first = group[0] as Changed;
  if (group.length === 1) return first;
  const forAll = group.find(({ place }) => place === '');
  const combined = (of: (change: Changed) => SettingOrWords | undefined): SettingOrWords | undefined => {
    const stood = group.flatMap((change) => of(change) ?? []);
    const said = new Set(stood.map(settingOrWordsText));
    // Where all were alike, the setting itself, so that the step is shown in the unit it was written in.
    return said.size <= 1 ? stood[0] : [...said].join(' and ');
  };
  const place = group.map((change) => change.place).join(' and ');
  return (
    forAll ?? {
      ...first,
      place,
      before: combined(({ before }) => before),
      after: combined(({ after }) => after),
    }
  );
}

/**
 * What one piece of work changed: new springs and the curve they make, the points gap and its dwell. Undefined where more
 * than one was done, or none.
 */
export function oneChange(changes: readonly Changed[]): Changed | undefined {
  const [first, ...more] = changes;
  if (!first || more.length === 0) return first;
  const names = changes.map(({ name }) => name);
  const isOneAct = new Set(names.map(workGroupOf)).size === 1 && new Set(names).size === names.length;
  if (!isOneAct) return undefined;
  const combined = (of: (change: Changed) => SettingOrWords | undefined): string | undefined =>
    changes.map((change) => stoodOr(of(change), 'not written')).join(', ');
  const before = combined((change) => change.before);
  return {
    ...first,
    name: names.join(' and '),
    before,
    after: combined(({ after }) => after),
    amount: undefined,
  };
}

const stoodOr = (stood: SettingOrWords | undefined, otherwise: string): string =>
  stood === undefined ? otherwise : settingOrWordsText(stood);

/** Setting in force for a place: its own, or the one given for all. */
const settingAt = (settings: State['settings'], key: string): SettingInForce | undefined =>
  settings.get(key) ?? settings.get(`${key.slice(0, key.indexOf('|'))}|`);

/** The change from one state of a setting to another; undefined where they are the same. */
function settingChange(
  from: SettingInForce | undefined,
  to: SettingInForce | undefined,
): Changed | undefined {
  if (from === to || (from && to && sameSetting(from, to))) return undefined;
  const either = to ?? from;
  if (!either) return undefined;
  return {
    name: either.quantity.name,
    place: either.place,
    owner: either.quantity.owner,
    before: from,
    after: to,
    amount: amountChanged(from, to),
    by: to?.by,
  };
}

/** From an unknown start, the sum of the changes written is the change. */
function amountChanged(from: SettingInForce | undefined, to: SettingInForce | undefined): Changed['amount'] {
  const unit = to?.quantity.unit;
  if (!to || !unit || to.values.length !== 1) return undefined;
  const whole = amountIn(to.values[0], unit);
  if (!whole) return undefined;
  if (!from) return to.base ? undefined : { value: whole, unit: unitById(unit) };
  const start = from.values.length === 1 ? amountIn(from.values[0], unit) : undefined;
  const known = start && (from.base === undefined) === (to.base === undefined);
  return known ? { value: subtract(whole, start), unit: unitById(unit) } : undefined;
}

function factChanges({ facts: before }: Setup, { facts: after }: Setup): readonly Changed[] {
  if (before === after) return [];
  return [...after].flatMap(([key, to]): Changed[] => {
    const from = before.get(key);
    if (!from || from === to) return [];
    const combined = (stated: typeof to) =>
      stated.text ?? statementText(stated.statement, stated.quantity.unit);
    if (
      sameValues(from.statement.values, to.statement.values, to.quantity.unit) &&
      combined(from) === combined(to)
    )
      return [];
    const { quantity, statement: said, by } = to;
    const place = said.place?.text ?? '';
    return [
      {
        name: quantity.name,
        place,
        owner: 'fact',
        before: combined(from),
        after: combined(to),
        amount: undefined,
        by,
      },
    ];
  });
}

/** `2 deg more`: a change's size by its middle, for sorting and sums. */
export const sizeOf = (change: Changed): number | undefined =>
  change.amount && isBounded(change.amount.value) ? middle(change.amount.value) : undefined;
