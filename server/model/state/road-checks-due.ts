/** Checks before a road run that work has made due, and which of them no run has reported yet. */
import { checksDueAfter } from '../../trade/practice/road-checks.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import type { Origin } from '../entry/entry.ts';
import { without } from './immutable.ts';
import type { State } from './state.ts';

export const NO_WORK: State['checksDueSinceRun'] = new Map();

/** A speed or a timed run is only read under way. */
export const isUnderWay = ({ name }: Pick<Quantity, 'name'>): boolean => ON_THE_MOVE.includes(name);

export const ON_THE_MOVE: readonly string[] = ['speed', 'run time'];

/** Work on these settings, or on a part that owns settings, makes the checks before a road run due again. */
export function withChecksDue(
  state: State,
  work: readonly Pick<Quantity, 'name' | 'owner'>[],
  where: Origin,
): State {
  const names = new Set(
    work.flatMap(({ name, owner }) => checksDueAfter(name, owner)).map((check) => check.name),
  );
  if (names.size === 0) return state;
  const due = new Map(state.checksDue);
  const dueSinceRun = new Map(state.checksDueSinceRun);
  for (const name of names) {
    due.set(name, where);
    dueSinceRun.set(name, where);
  }
  return {
    ...state,
    checksDue: due,
    checksDueSinceRun: dueSinceRun,
    checks: without(state.checks, (name) => names.has(name)),
  };
}
