/** Settings and parts changed since the last reading. With more than one, the next reading cannot be attributed. */

import type { Origin, QuantityEntry } from '../entry/entry.ts';
import { sameSetting } from './same-setting.ts';
import { keyOf, type PendingChange, type SettingInForce, type State } from './state.ts';

/** Most changes carried, more than are ever reported, so that a long list of settings does not grow the state. */
const MOST = 12;

/** A setting written for the first time is no change: it may have been so all along. */
export function withChange(
  turned: readonly PendingChange[],
  entry: QuantityEntry,
  before: State['settings'],
  after: State['settings'],
  by: Origin,
): readonly PendingChange[] {
  const { name } = entry.quantity;
  const changed = entry.statements.some(({ place, values }) => {
    const [from, to] = [standing(before, name, place?.text), standing(after, name, place?.text)];
    const turned = values[0]?.form === 'amount' && values[0].relative !== undefined;
    return turned || (from !== undefined && to !== undefined && !sameSetting(from, to));
  });
  return changed ? addChange(turned, name, by) : turned;
}

export const addChange = (
  turned: readonly PendingChange[],
  name: string,
  by: Origin,
): readonly PendingChange[] =>
  turned.length >= MOST || turned.some((each) => each.name === name) ? turned : [...turned, { name, by }];

const standing = (
  settings: State['settings'],
  name: string,
  place: string | undefined,
): SettingInForce | undefined => settings.get(keyOf(name, place)) ?? settings.get(keyOf(name, undefined));
