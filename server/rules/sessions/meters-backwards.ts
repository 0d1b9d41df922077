/** Odometer and hour meter, which only ever count up. */
import { amountIn } from '../../model/entry/amount.ts';
import { valueText } from '../../model/entry/as-written.ts';
import { surelyBelow } from '../../trade/measure/interval.ts';
import { ofDay } from '../lib/limit-text.ts';
import { amountsOf } from '../lib/statement-values.ts';
import { family, NO_PROBLEMS } from '../rule.ts';

export const metersBackwards = family({
  rules: [
    {
      code: 'odometer-backwards',
      severity: 'warning',
      title: 'An odometer that runs backwards',
      why: 'An odometer only counts up: a lower figure than last time is a typing error, or the meter was changed. Reminders count by it.',
      standing: 'notation',
      good: 'session 2026-05-02\n  odometer 1200 mi\nsession 2026-05-09\n  odometer 1320 mi\n',
      bad: 'session 2026-05-02\n  odometer 1200 mi\nsession 2026-05-09\n  odometer 1020 mi\n',
    },
    {
      code: 'hours-backwards',
      severity: 'warning',
      title: 'An hour meter that runs backwards',
      why: 'An hour meter only counts up: fewer hours than last time are a typing error, or the meter was changed. Reminders count by it.',
      standing: 'notation',
      good: 'session 2026-05-02\n  hours 1200 h\nsession 2026-05-09\n  hours 1320 h\n',
      bad: 'session 2026-05-02\n  hours 1200 h\nsession 2026-05-09\n  hours 1020 h\n',
    },
  ],
  on: ['reading'],
  about: ({ traits }) => traits?.meter !== undefined,
  check({ quantity, statements: [statement] }, { before }) {
    const unit = quantity.traits?.meter;
    const last = before.latest.get(quantity.name);
    const [then] = last ? amountsOf(last.statement.values) : [];
    const [value] = statement ? amountsOf(statement.values) : [];
    if (!unit || !last || !then || !value) return NO_PROBLEMS;
    const [was, is] = [amountIn(then, unit, quantity.unit), amountIn(value, unit, quantity.unit)];
    if (!was || !is || !surelyBelow(is, was)) return NO_PROBLEMS;
    return [
      {
        code: unit === 'km' ? 'odometer-backwards' : 'hours-backwards',
        span: value.span,
        message: `${quantity.name} ${valueText(value, quantity.unit)} is less than the last reading${ofDay(last.by)}, ${valueText(then, quantity.unit)}. Mistyped, or a new meter? With a new meter, write the reminders again so that they count from it.`,
        related: [{ origin: last.by, message: 'Last reading' }],
      },
    ];
  },
});
