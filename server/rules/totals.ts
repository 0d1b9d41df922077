/** What a line makes of the timing totals, for rules that judge them. */
import type { Carried } from '../model/carry.ts';
import { type Derived, totalsOf } from '../model/derive.ts';
import type { Context } from '../model/findings.ts';
import type { Entry } from '../model/notebook.ts';
import { equal } from '../trade/interval.ts';

/** The entries after which a total may be another one. */
export const TOTALS_CHANGE_ON = ['setting', 'fit', 'revert'] as const;

/** The totals that are not what they were before the line; nothing for a line that has no part in them. */
export function changedTotals(entry: Entry, { before, after }: Context): readonly Derived[] {
  if (before.settings === after.settings) return NONE;
  if (entry.kind === 'setting' && entry.quantity.owner !== 'distributor') return NONE;
  const then = given(before);
  return given(after).filter((total) => {
    const old = then.find((each) => each.name === total.name);
    return !old || !equal(old.value, total.value);
  });
}

/** The other lines a total rests on, for `related`. */
export const inputLines = (total: Derived, { where }: Context) =>
  total.inputs.flatMap(({ name, value, by }) =>
    by && by.ref.line !== where.ref.line ? [{ origin: by, message: `${name}: ${value}` }] : [],
  );

const NONE: readonly Derived[] = [];
const known = new WeakMap<Carried, readonly Derived[]>();

/** Several rules ask, and what is carried from one line is carried to the next. */
function given(carried: Carried): readonly Derived[] {
  let totals = known.get(carried);
  if (!totals) {
    totals = totalsOf(carried).given;
    known.set(carried, totals);
  }
  return totals;
}
