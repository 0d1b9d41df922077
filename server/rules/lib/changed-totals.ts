/** Timing totals changed by a line, for the rules that judge them. */

import type { NumberFigure } from '../../analysis/figure.ts';
import { TOTAL_NAMES, totalNamed } from '../../analysis/ignition/timing-totals.ts';
import { statedFor } from '../../analysis/limits/limits.ts';
import type { Entry } from '../../model/entry/entry.ts';
import type { Context } from '../../model/snapshot/finding.ts';
import type { State } from '../../model/state/state.ts';
import { equal } from '../../trade/measure/interval.ts';

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
    const [old, total] = [totalNamed(before, name), totalNamed(after, name)];
    return total && !(old && equal(old.value, total.value)) ? [total] : [];
  });
}

/** Names of the totals that have a limit or target. */
export const totalsWithStated = (stated: State['limits']): readonly string[] =>
  stated.size === 0 ? NO_NAMES : TOTAL_NAMES.filter((name) => statedFor(stated, name, undefined));

/** The other lines a total is worked out from, for `related`. */
export const inputLines = (total: NumberFigure, { where }: Context) =>
  total.inputs.flatMap(({ name, value, by }) =>
    by && by.ref.line !== where.ref.line ? [{ origin: by, message: `${name}: ${value}` }] : [],
  );

const NONE: readonly NumberFigure[] = [];
const NO_NAMES: readonly string[] = [];
