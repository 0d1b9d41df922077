import { isComparable, limitIn, pastLimit, statedFor } from '../../analysis/limits/limits.ts';
import { isAmount } from '../../model/entry/amount.ts';
import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Amount } from '../../model/entry/value.ts';
import type { Context } from '../../model/snapshot/finding.ts';
import { type Declared, keyOf } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { unitById } from '../../trade/measure/units.ts';
import { boundText, setOn } from '../lib/limit-text.ts';
import { signedAmounts } from '../lib/statement-values.ts';
import { NO_PROBLEMS, type Problem, problemsIn, rule } from '../rule.ts';

export const overLimit = rule({
  code: 'over-limit',
  severity: 'warning',
  title: 'A value past your own limit',
  why: 'The section "limits" says how far things may go on this engine. A limit holds from its line on, for settings and readings alike.',
  standing: 'notation',
  good: 'limits\n  water <= 195 F\nsession 2026-05-02\n  water 190 F\n',
  bad: 'limits\n  water <= 195 F\nsession 2026-05-02\n  water 204 F\n',
  on: ['setting', 'reading'],
  check(entry, context) {
    if (context.before.limits.size === 0) return NO_PROBLEMS;
    return problemsIn(entry.statements, (said) => problemsOf(entry, said, context));
  },
});

function problemsOf(
  { quantity, kind }: QuantityEntry,
  said: Statement,
  { before, after }: Context,
): Problem[] {
  const limit = statedFor(before.limits, quantity.name, said.place?.text);
  if (!limit || !isComparable(limit.statement, said)) return [];
  const inForce = after.settings.get(keyOf(quantity.name, said.place?.text));
  return signedAmounts(said, kind)
    .flatMap((amount) => {
      const whole = amount.relative ? inForce?.base && inForce.values.find(isAmount) : amount;
      return whole ? problemOf(limit, amount, whole) : [];
    })
    .slice(0, 1);
}

function problemOf(limit: Declared, amount: Amount, whole: Amount): Problem[] {
  const { name, unit: usual } = limit.quantity;
  const unit = whole.unit ?? unitById(usual ?? 'number');
  const allowed = limitIn(limit, unit);
  const past = whole.interval && allowed && pastLimit(whole.interval, allowed);
  if (!past || !whole.interval) return [];
  const value = formatValue(whole.interval, unit);
  return [
    {
      span: amount.span,
      message: `${name} ${value} is ${past} your limit of ${boundText(allowed, unit)}${setOn(limit.by)}.`,
      related: [{ origin: limit.by, message: `Limit on ${name}` }],
    },
  ];
}
