/** Which timing readings were taken with the vacuum advance off. */
import type { Statement } from '../../model/entry/entry.ts';
import type { State } from '../../model/state/state.ts';
import { timingOf } from '../ignition/timing-settings.ts';

/** Whether a timing was read with the vacuum off. `total` is, unless written otherwise; any other timing only where it is written. */
export function isWithoutVacuum(name: string, said: Statement, before: State): boolean {
  const plugged = said.qualifiers.includes('plugged') || timingOf(before).source?.value === 'plugged';
  return name === 'total' ? !said.qualifiers.includes('connected') : plugged;
}
