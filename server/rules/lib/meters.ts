/** Odometer and hour meter, which only ever count up. */
import { amountIn } from '../../model/entry/amount.ts';
import { valueText } from '../../model/entry/as-written.ts';
import type { QuantityEntry } from '../../model/entry/entry.ts';
import type { Context } from '../../model/snapshot/finding.ts';
import { surelyBelow } from '../../trade/measure/interval.ts';
import type { Problem } from '../rule.ts';
import { ofDay } from './limit-text.ts';
import { amountsOf } from './statement-values.ts';

/** Problems of a meter reading that is surely less than the last one. */
export function backwards(
  { quantity, statements: said }: QuantityEntry,
  { before }: Context,
  unit: string,
): readonly Problem[] {
  const last = before.latest.get(quantity.name);
  const [then] = last ? amountsOf(last.statement.values) : [];
  const [value] = said[0] ? amountsOf(said[0].values) : [];
  const [was, is] = [then, value].map((each) => amountIn(each, unit, quantity.unit ?? unit));
  if (!last || !then || !value || !was || !is || !surelyBelow(is, was)) return [];
  return [
    {
      span: value.span,
      message: `${quantity.name} ${valueText(value, quantity.unit)} is less than the last reading${ofDay(last.by)}, ${valueText(then, quantity.unit)}. Mistyped, or a new meter? With a new meter, write the reminders again so that they count from it.`,
      related: [{ origin: last.by, message: 'Last reading' }],
    },
  ];
}
