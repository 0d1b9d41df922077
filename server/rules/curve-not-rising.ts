import { amountIn } from '../model/amounts.ts';
import { formatValue } from '../trade/format.ts';
import { unitById } from '../trade/units.ts';
import { rule } from './rule.ts';

export const curveNotRising = rule({
  code: 'curve-not-rising',
  severity: 'warning',
  title: 'Points of a curve that do not rise in speed',
  why: 'The points of a curve are written from low to high. One that stands lower than, or at, the one before it is most likely mistyped.',
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
        if (!at || !before || at.low > before.high) return [];
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
