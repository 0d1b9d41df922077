/** Whether the engine is blown, and how hard. */
import type { Carried } from '../model/state/state.ts';
import { factText, type Known, readingOf, settingOf } from './inputs.ts';

/** The boost read in this session, else what the wastegate opens at; in psi. */
export const boostOf = (carried: Carried): Known | undefined =>
  readingOf(carried, 'boost', 'psi') ?? settingOf(carried, 'wastegate', 'psi');

/** Said so, or with a blower's settings, or with a boost read. */
export function isBoosted(carried: Carried): boolean {
  const told = factText(carried, 'aspiration') ?? '';
  if (/natural/.test(told)) return false;
  return (
    /charged|blown|turbo|blower/.test(told) ||
    boostOf(carried) !== undefined ||
    carried.fitted.has('blower') ||
    [...carried.settings.values()].some((setting) => setting.quantity.owner === 'blower')
  );
}
