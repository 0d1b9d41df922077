/** Checks before a road run that work has made due, and which of them no run has reported yet. */
import { checksDueAfter, type Work } from '../../trade/practice/road-checks.ts';
import type { Origin } from '../entry/entry.ts';
import { without } from './immutable.ts';
import type { State } from './state.ts';

export const NO_WORK: State['checksDueSinceRun'] = new Map();

/** Work on these settings, or on a part that owns settings, makes the checks before a road run due again. */
export function withChecksDue(state: State, work: readonly Work[], where: Origin): State {
  const names = new Set(work.flatMap(checksDueAfter).map((check) => check.name));
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
