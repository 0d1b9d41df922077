import { cylindersOf } from '../../analysis/engine/engine-facts.ts';
import { amountIn } from '../../model/entry/amount.ts';
import type { Amount } from '../../model/entry/value.ts';
import { formatNumber } from '../../trade/measure/format.ts';
import { unitById } from '../../trade/measure/units.ts';
import { dwellAvailable } from '../../trade/sums/points.ts';
import { ownAmounts } from '../lib/statement-values.ts';
import { type Problem, rule } from '../rule.ts';

export const dwellTooLong = rule({
  code: 'dwell-too-long',
  severity: 'warning',
  title: 'More dwell than there is between two sparks',
  why: 'From one spark to the next the distributor turns 360 degrees divided by the number of cylinders, and the points must also open in that time. More dwell than that is impossible.',
  standing: 'common practice',
  source: 'geometry: 360 degrees over the number of cylinders',
  good: 'engine\n  cylinders 8\nsession 2026-05-02\n  dwell 30 deg\n',
  bad: 'engine\n  cylinders 8\nsession 2026-05-02\n  dwell 50 deg\n',
  outranks: ['outside-band', 'ten-times'],
  on: ['setting'],
  about: ({ name }) => name === 'dwell',
  check(entry, { before }) {
    const engine = cylindersOf(before);
    return entry.statements.flatMap(ownAmounts).flatMap((amount) => {
      const most = engine && dwellAvailable(engine.count);
      const problem = amount.unit?.dimension === 'percent' ? overAll(amount) : overMost(amount, most);
      const related = engine ? [{ origin: engine.by, message: 'Number of cylinders' }] : [];
      return problem.map((each) => ({ ...each, related }));
    });
  },
});

function overAll(amount: Amount): Problem[] {
  const share = amountIn(amount, '%');
  return share && share.low >= 100
    ? [{ span: amount.span, message: 'Dwell of 100 % or more would mean the points never open.' }]
    : [];
}

/** A dwell meter reads degrees of the distributor, whether or not the unit is written. */
function overMost(amount: Amount, most: number | undefined): Problem[] {
  if (most === undefined || !amount.interval || amount.relative) return [];
  if (amount.unit && amount.unit.dimension !== 'angle') return [];
  if (amount.interval.low < most) return [];
  const text = formatNumber(most, unitById('deg'));
  return [
    {
      span: amount.span,
      message: `Dwell ${formatNumber(amount.interval.low, undefined)} deg leaves no room for the points to open: the distributor turns only ${text} deg from spark to spark. Is the dwell or the number of cylinders wrong? (geometry: 360 / cylinders)`,
    },
  ];
}
