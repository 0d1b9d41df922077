import { amountIn } from '../model/amounts.ts';
import type { Amount } from '../model/values.ts';
import { formatValue } from '../trade/format.ts';
import type { Interval } from '../trade/interval.ts';
import type { Quantity } from '../trade/quantity.ts';
import { unitById } from '../trade/units.ts';
import { type Problem, rule } from './rule.ts';

export const curveNotRising = rule({
  code: 'curve-not-rising',
  severity: 'warning',
  title: 'Points of a curve that do not rise',
  why: 'The points of a curve are written from low to high. One that stands lower than, or at, the one before it is most likely mistyped; so is one that gives less, for weights add as the speed rises and a canister as the depression does.',
  standing: 'notation',
  good: 'session 2026-05-02\n  mechanical 0 deg @ 900 rpm, 8 deg @ 1500 rpm, 22 deg @ 3200 rpm\n',
  bad: 'session 2026-05-02\n  mechanical 0 deg @ 900 rpm, 8 deg @ 1500 rpm, 22 deg @ 320 rpm\n',
  on: ['setting'],
  about: ({ against }) => against !== undefined,
  check({ quantity, said }) {
    const { against } = quantity;
    if (!against) return [];
    const unit = unitById(against.unit);
    return said.flatMap(({ points }) =>
      points.flatMap((point, i) => {
        const at = amountIn(point.at, against.unit);
        const before = amountIn(points[i - 1]?.at, against.unit);
        if (!at || !before) return [];
        if (at.low > before.high) return falling(quantity, points[i - 1]?.value, point.value);
        return [
          {
            span: point.at.span,
            message: `${formatValue(at, unit)} does not come after ${formatValue(before, unit)}: points are written from low to high.`,
          },
        ];
      }),
    );
  },
});

/** Weights and canisters take nothing away on the way up. */
function falling({ name, unit = 'deg' }: Quantity, before: Amount | undefined, after: Amount): Problem[] {
  if (!ADVANCE.has(name)) return [];
  const [was, is] = [amountIn(before, unit, unit), amountIn(after, unit, unit)];
  if (!was || !is || is.high >= was.low) return [];
  const told = (value: Interval) => formatValue(value, unitById(unit));
  return [
    {
      span: after.span,
      message: `${told(is)} comes after ${told(was)}: ${name} does not fall on the way up.`,
    },
  ];
}

const ADVANCE: ReadonlySet<string> = new Set(['mechanical', 'vacuum advance']);
