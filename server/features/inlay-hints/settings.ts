/** Inlay hint: difference of a setting from its value before. */

import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import { changeText, settingText } from '../../model/state/setting-text.ts';
import { keyOf, type SettingInForce, type State } from '../../model/state/state.ts';
import type { Remark } from './hint.ts';

/** One remark for the line, whatever number of places it is about. */
export function settingChanges(entry: QuantityEntry, before: State, after: State): readonly Remark[] {
  if (entry.kind !== 'setting') return [];
  const { name } = entry.quantity;
  const remarks = entry.statements.flatMap((said) => {
    const now = after.settings.get(keyOf(name, said.place?.text));
    const was = standing(before, name, said.place?.text);
    const text = now && changeOf(said, was, now);
    return text === undefined ? [] : [{ text: placed(entry, said, text), was }];
  });
  if (remarks.length === 0) return [];
  const earlier = remarks.flatMap(({ was }) => (was ? [earlierText(was)] : []));
  return [{ kind: 'change', text: remarks.map(({ text }) => text).join(', '), about: earlier.join('\n') }];
}

const standing = ({ settings }: State, name: string, place: string | undefined): SettingInForce | undefined =>
  settings.get(keyOf(name, place)) ?? settings.get(keyOf(name, undefined));

/** What a change comes to, or by how much a whole value differs; undefined where that is unknown or zero. */
function changeOf(
  { values }: Statement,
  was: SettingInForce | undefined,
  now: SettingInForce,
): string | undefined {
  const [value] = values;
  if (value?.form === 'amount' && value.relative) return now.base ? `= ${settingText(now)}` : undefined;
  const change = was && changeText(was, now);
  return change === 'unchanged' ? undefined : change;
}

const placed = ({ statements: said }: QuantityEntry, { place }: Statement, text: string): string =>
  said.length > 1 && place ? `${place.text} ${text}` : text;

const earlierText = ({ by, ...setting }: SettingInForce): string =>
  [`before: ${settingText({ ...setting, by })}`, by.date && `of ${by.date}`].filter(Boolean).join(' ');
