/** Settings and totals in force where a limit or target is written. Readings are left out: each is one moment and over. */

import { isAmount, speedOf } from '../../model/entry/amount.ts';
import type { Statement } from '../../model/entry/entry.ts';
import type { Amount } from '../../model/entry/value.ts';
import type { Finding } from '../../model/snapshot/finding.ts';
import { ofName } from '../../model/state/immutable.ts';
import { type Declared, keyOf, type SettingInForce, type State } from '../../model/state/state.ts';
import { type Interval, middle } from '../../trade/measure/interval.ts';
import { type Unit, unitById } from '../../trade/measure/units.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { totalAtSpeed, totalNamed } from '../ignition/timing-totals.ts';

interface ValueInForce {
  /** Name of the setting or total, with its place. */
  readonly name: string;
  readonly value: Interval;
  readonly unit: Unit;
  /** How a total is worked out, printed after the value; empty for a setting. */
  readonly working: string;
  readonly related: Finding['related'];
}

/** The settings and totals in force that a limit or target applies to. One with conditions applies to totals alone. */
export function valuesInForceFor(
  { quantity, statement: said }: Pick<Declared, 'quantity' | 'statement'>,
  state: State,
): readonly ValueInForce[] {
  const total = totalFor(quantity, said, state);
  if (total) return [total];
  if (said.qualifiers.length > 0 || said.conditions.length > 0) return NOTHING;
  return settingsMeant(quantity, said, state).flatMap(valuesOfSetting);
}

const NOTHING: readonly ValueInForce[] = [];

function totalFor({ name }: Quantity, said: Statement, state: State): ValueInForce | undefined {
  const speed = speedOf(said);
  const atSpeed = name === 'total' && speed ? totalAtSpeed(state, middle(speed)) : undefined;
  const total = speed ? atSpeed : totalNamed(state, name);
  if (!total) return undefined;
  const related = total.inputs.flatMap(({ name, value, by }) =>
    by ? [{ origin: by, message: `${name}: ${value}` }] : [],
  );
  return { name, value: total.value, unit: total.unit, working: `: ${total.working}`, related };
}

/** The setting of the place, else of the whole engine; without a place, the settings of all places. */
function settingsMeant(
  { name }: Quantity,
  { place }: Statement,
  { settings }: State,
): readonly SettingInForce[] {
  if (!place) return ofName(settings, name);
  const found = settings.get(keyOf(name, place.text)) ?? settings.get(keyOf(name, undefined));
  return found ? [found] : [];
}

function valuesOfSetting(setting: SettingInForce): readonly ValueInForce[] {
  const { quantity, place, values, points, by, base } = setting;
  if (!base) return NOTHING;
  const name = [quantity.name, place].filter(Boolean).join(' ');
  const amounts: readonly Amount[] = [...values.filter(isAmount), ...points.map((point) => point.value)];
  return amounts.flatMap(({ interval: value, unit }) =>
    value
      ? [
          {
            name,
            value,
            unit: unit ?? unitById(quantity.unit ?? 'number'),
            working: '',
            related: [{ origin: by, message: `${name} set here` }],
          },
        ]
      : [],
  );
}
