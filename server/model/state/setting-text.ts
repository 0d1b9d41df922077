/** A setting in force in words, as the notation itself would write it. */

import { differenceText, pointText, valueText } from '../entry/as-written.ts';
import type { Value } from '../entry/value.ts';
import type { SettingInForce } from './state.ts';

/** A setting in force, with any doubt about it: `1 1/4 turns`, `0 deg @ 900 rpm, 22 deg @ 3200 rpm`, `+2 deg from an unknown start`. */
export function settingText(setting: SettingInForce): string {
  const text = valuesText(setting);
  return setting.doubt ? `${text} (in doubt: moved since, nobody knows how far)` : text;
}

function valuesText(setting: SettingInForce): string {
  if (setting.text !== undefined) return setting.text;
  const values = [
    ...setting.points.map((point) => pointText(point, setting.quantity.unit)),
    ...setting.values.map((value) => valueText(value, setting.quantity.unit)),
  ];
  const said = [values.join(setting.points.length > 0 ? ', ' : ' '), setting.words.join(' ')]
    .filter((text) => text !== '')
    .join(', ');
  return setting.base ? said : `${said} from an unknown start`;
}

/** `2 deg more`, `unchanged`; undefined where the two cannot be compared. */
export function changeText(before: SettingInForce, after: SettingInForce): string | undefined {
  return differenceText(only(before), only(after), after.quantity.unit);
}

const only = (setting: SettingInForce): Value | undefined =>
  setting.base && !setting.doubt && setting.values.length === 1 ? setting.values[0] : undefined;
