/** Whether the engine is blown, and how hard. */
import type { State } from '../model/state/state.ts';
import { factText, type KnownInput, readingOf, settingOf } from './inputs.ts';

/** Boost in psi: as read in this session, else the wastegate setting. */
export const boostOf = (state: State): KnownInput | undefined =>
  readingOf(state, 'boost', 'psi') ?? settingOf(state, 'wastegate', 'psi');

/** Whether the engine is boosted: the notebook says so, or gives a blower setting or a boost reading. */
export function isBoosted(state: State): boolean {
  const aspiration = factText(state, 'aspiration') ?? '';
  if (/natural/.test(aspiration)) return false;
  return (
    /charged|blown|turbo|blower/.test(aspiration) ||
    boostOf(state) !== undefined ||
    state.fitted.has('blower') ||
    [...state.settings.values()].some((setting) => setting.quantity.owner === 'blower')
  );
}
