import { topSpeedOf } from '../../analysis/engine/engine-facts.ts';
import { amountIn, firstAmount } from '../../model/entry/amount.ts';
import type { Statement } from '../../model/entry/entry.ts';
import type { Amount } from '../../model/entry/value.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { surelyAbove } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { ofDay } from '../lib/limit-text.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const revsAboveRedLine = rule({
  code: 'revs-above-red-line',
  severity: 'warning',
  title: 'Engine speed above the red line',
  why: 'The red line of the engine, or the rev limit where no red line is written, is the highest speed it should turn. A reading above it means the engine was over-revved, or is a typing error.',
  standing: 'notation',
  good: 'engine\n  red line 5500\nsession 2026-05-02\n  oil pressure 52 psi @ 5000 rpm\n',
  bad: 'engine\n  red line 5500\nsession 2026-05-02\n  oil pressure 52 psi @ 6200 rpm\n',
  on: ['reading'],
  check({ quantity, statements: said }, { before }) {
    const speeds = said.flatMap((each) => speedsIn(quantity, each));
    const red = speeds.length === 0 ? undefined : topSpeedOf(before);
    if (!red) return NO_PROBLEMS;
    return speeds.flatMap((speed) => {
      const rpm = amountIn(speed, 'rpm');
      if (!rpm || !surelyAbove(rpm, red.value)) return [];
      return [
        {
          span: speed.span,
          message: `${formatValue(rpm, unitById('rpm'))} is above the ${red.input.name}${ofDay(red.by)}, ${red.input.value}. Over-revved, or mistyped?`,
          related: [{ origin: red.by, message: `${red.input.name}` }],
        },
      ];
    });
  },
});

const OF_SPEED: ReadonlySet<string> = new Set(['engine speed']);

function speedsIn({ name }: Quantity, said: Statement): readonly Amount[] {
  const value = OF_SPEED.has(name) ? firstAmount(said.values) : undefined;
  const at = said.conditions.flatMap((condition) => condition.value ?? []);
  return value ? [value, ...at] : at;
}
