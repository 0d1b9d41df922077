/** The looks before a road run that work has made due, and which of them no run has told of yet. */
import { checksDueAfter } from '../../trade/practice/road-checks.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import type { Origin } from '../entry/entry.ts';
import { without } from './immutable.ts';
import type { Carried } from './state.ts';

export const NO_WORK: Carried['dueSinceRun'] = new Map();

/** A speed or a timed run is only read under way. */
export const isMoving = ({ name }: Pick<Quantity, 'name'>): boolean => ON_THE_MOVE.includes(name);

export const ON_THE_MOVE: readonly string[] = ['speed', 'run time'];

/** Work on these settings, or on a part that owns settings, makes the looks before a road run due again. */
export function withDue(
  state: Carried,
  work: readonly Pick<Quantity, 'name' | 'owner'>[],
  where: Origin,
): Carried {
  const names = new Set(
    work.flatMap(({ name, owner }) => checksDueAfter(name, owner)).map((check) => check.name),
  );
  if (names.size === 0) return state;
  const due = new Map(state.due);
  const dueSinceRun = new Map(state.dueSinceRun);
  for (const name of names) {
    due.set(name, where);
    dueSinceRun.set(name, where);
  }
  return { ...state, due, dueSinceRun, checks: without(state.checks, (name) => names.has(name)) };
}
