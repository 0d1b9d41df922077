import { amountIn } from '../../model/entry/amount.ts';
import type { Amount } from '../../model/entry/value.ts';
import { formatValue } from '../../trade/measure/format.ts';
import type { Interval } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { type Problem, rule } from '../rule.ts';

export const curveNotRising = rule({
  code: 'curve-not-rising',
  severity: 'warning',
  title: 'Points of a curve that do not rise',
  why: 'Points of a curve are written from low to high. A point at or below the one before it is most likely mistyped. So is one with less advance: weights only add as speed rises, and a canister only adds as the depression rises.',
  standing: 'notation',
  good: 'session 2026-05-02\n  mechanical 0 deg @ 900 rpm, 8 deg @ 1500 rpm, 22 deg @ 3200 rpm\n',
  bad: 'session 2026-05-02\n  mechanical 0 deg @ 900 rpm, 8 deg @ 1500 rpm, 22 deg @ 320 rpm\n',
  on: ['setting'],
  about: ({ against }) => against !== undefined,
  check({ quantity, statements: said }) {
    const { against } = quantity;
    if (!against) return [];
    const unit = unitById(against.unit);
    return said.flatMap(({ points }) =>
      points.flatMap((point, i) => {
        const at = amountIn(point.at, against.unit);
        const before = amountIn(points[i - 1]?.at, against.unit);
        if (!at || !before) return [];
        if (at.low > before.high) return fallingPoints(quantity, points[i - 1]?.value, point.value);
        return [
          {
            span: point.at.span,
            message: `${formatValue(at, unit)} is out of order after ${formatValue(before, unit)}. Write points from low to high.`,
          },
        ];
      }),
    );
  },
});

/** A point with less advance than the one before: weights and canisters only add. */
function fallingPoints(
  { name, unit = 'deg', against }: Quantity,
  before: Amount | undefined,
  after: Amount,
): Problem[] {
  if (!ADVANCE.has(name)) return [];
  const [was, is] = [amountIn(before, unit, unit), amountIn(after, unit, unit)];
  if (!was || !is || is.high >= was.low) return [];
  const inUnit = (value: Interval) => formatValue(value, unitById(unit));
  return [
    {
      span: after.span,
      message: `${inUnit(is)} after ${inUnit(was)}: ${name} does not drop as ${against?.unit === 'rpm' ? 'speed' : 'depression'} rises. Is one of them mistyped?`,
    },
  ];
}

const ADVANCE: ReadonlySet<string> = new Set(['mechanical', 'vacuum advance']);
