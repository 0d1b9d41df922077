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

interface Known {
  readonly lastly: Carried['lastly'];
  readonly totals: readonly Derived[];
}

const known = new WeakMap<Carried['settings'], Known>();

/** Several rules ask, and the totals depend on nothing else that is carried. */
function given({ settings, lastly }: Carried): readonly Derived[] {
  const before = known.get(settings);
  if (before?.lastly === lastly) return before.totals;
  const totals = totalsOf({ settings, lastly }).given;
  known.set(settings, { lastly, totals });
  return totals;
}
