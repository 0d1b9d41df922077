/** Applies a `use` line: what it takes from another notebook. */

import type { Origin } from '../entry/entry.ts';
import { putAll } from './immutable.ts';
import type { State } from './state.ts';

/**
 * A shared page gives its specs, limits and words; where both say something, the later line holds. They count as written
 * by the line that uses the page: references of another notebook mean nothing in this one.
 */
export function withUsedNotebook(state: State, shared: State, where: Origin): State {
  const saidHere = <T extends { readonly by: Origin }>(map: ReadonlyMap<string, T>) =>
    [...map].map(([key, value]) => [key, { ...value, by: where }] as const);
  return {
    ...state,
    specs: putAll(state.specs, saidHere(shared.specs)),
    limits: putAll(state.limits, saidHere(shared.limits)),
    words: putAll(state.words, shared.words),
  };
}
