/** Whether the engine is blown, and how hard. */
import type { State } from '../model/state/state.ts';
import { factText, type KnownInput, readingOf, settingOf } from './inputs.ts';

/** The boost read in this session, else what the wastegate opens at; in psi. */
export const boostOf = (state: State): KnownInput | undefined =>
  readingOf(state, 'boost', 'psi') ?? settingOf(state, 'wastegate', 'psi');

/** Said so, or with a blower's settings, or with a boost read. */
export function isBoosted(state: State): boolean {
  const told = factText(state, 'aspiration') ?? '';
  if (/natural/.test(told)) return false;
  return (
    /charged|blown|turbo|blower/.test(told) ||
    boostOf(state) !== undefined ||
    state.fitted.has('blower') ||
    [...state.settings.values()].some((setting) => setting.quantity.owner === 'blower')
  );
}
