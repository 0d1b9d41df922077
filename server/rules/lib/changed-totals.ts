/** Timing totals changed by a line, for the rules that judge them. */

import type { NumberFigure } from '../../analysis/figure.ts';
import { TOTAL_NAMES, totalNamed } from '../../analysis/ignition/timing-totals.ts';
import { latestFew } from '../../memo.ts';
import type { Entry } from '../../model/entry/entry.ts';
import type { Context } from '../../model/snapshot/finding.ts';
import type { State } from '../../model/state/state.ts';
import { equal } from '../../trade/measure/interval.ts';
import { statedFor } from './limits.ts';

/** Kinds of entry that can change a total. */
export const TOTALS_CHANGE_ON = ['setting', 'fit', 'revert'] as const;

/** The totals of these names that the line changed; none for a line that cannot affect them. */
export function changedTotals(
  entry: Entry,
  { before, after }: Context,
  names: readonly string[],
): readonly NumberFigure[] {
  if (before.settings === after.settings || names.length === 0) return NONE;
  if (entry.kind === 'setting' && entry.quantity.owner !== 'distributor') return NONE;
  return names.flatMap((name) => {
    const [old, total] = [totalIn(before, name), totalIn(after, name)];
    return total && !(old && equal(old.value, total.value)) ? [total] : [];
  });
}

/** Names of the totals that have a limit or target. */
export const namesIn = (stated: State['limits']): readonly string[] =>
  stated.size === 0 ? NO_NAMES : TOTAL_NAMES.filter((name) => statedFor(stated, name, undefined));

/** The other lines a total is worked out from, for `related`. */
export const inputLines = (total: NumberFigure, { where }: Context) =>
  total.inputs.flatMap(({ name, value, by }) =>
    by && by.ref.line !== where.ref.line ? [{ origin: by, message: `${name}: ${value}` }] : [],
  );

const NONE: readonly NumberFigure[] = [];
/** Totals that depend on readings too. */
const AT_IDLE: ReadonlySet<string> = new Set(['timing at idle']);
const NO_NAMES: readonly string[] = [];

/** Cache of totals by state: three rules judge the same two states in turn, and most lines change neither settings nor totals. */
const totalsIn = latestFew(2, (_: State | State['settings']) => new Map<string, NumberFigure | undefined>());

function totalIn(state: State, name: string): NumberFigure | undefined {
  const totals = totalsIn(AT_IDLE.has(name) ? state : state.settings);
  if (!totals.has(name)) totals.set(name, totalNamed(state, name));
  return totals.get(name);
}
