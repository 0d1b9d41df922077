/** Air of the session in which a jet was last set, so that the next jet can be compared with the change in air. */
import { namesWith } from '../../trade/vocabulary/vocabulary.ts';
import { type JetAir, keyOf, type State } from './state.ts';

const MAIN_JETS = namesWith('mainJet');

/** Computed when a session ends: only then is all its weather known. */
export function jetAirAfter({ settings, session, readings, jetAir: jetDay }: State): JetAir | undefined {
  const date = session?.date;
  const jetSet = MAIN_JETS.some((jet) => settings.get(keyOf(jet, undefined))?.by.date === date);
  if (date === undefined || !jetSet) return jetDay;
  return { date, air: new Map([...readings].filter(([, { quantity }]) => quantity.traits?.weather)) };
}
