import { statedIn } from '../../analysis/limits/limits.ts';
import { valuesInForceFor } from '../../analysis/limits/values-in-force.ts';
import { keyOf } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { surelyAbove, surelyBelow } from '../../trade/measure/interval.ts';
import { rule } from '../rule.ts';

export const targetNotMetYet = rule({
  code: 'target-not-met-yet',
  severity: 'information',
  title: 'A target not met yet',
  why: 'A target holds from its line on. How far off the present settings are is reported once, here, as the starting point.',
  standing: 'notation',
  good: 'session 2026-05-02\n  mechanical 0 deg @ 900 rpm, 22 deg @ 2800 rpm\ntargets\n  all in 2600..3000 rpm\n',
  bad: 'session 2026-05-02\n  mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm\ntargets\n  all in 2600..3000 rpm\n',
  on: ['target'],
  check: (entry, { before, after }) =>
    entry.statements.flatMap((said) => {
      const target = after.targets.get(keyOf(entry.quantity.name, said.place?.text));
      const missed = valuesInForceFor({ quantity: entry.quantity, statement: said }, before).flatMap(
        (standing) => {
          const wanted = target && statedIn(target, standing.unit);
          if (!wanted) return [];
          if (surelyAbove(standing.value, wanted)) return [{ ...standing, side: 'above' }];
          return surelyBelow(standing.value, wanted) ? [{ ...standing, side: 'below' }] : [];
        },
      );
      return missed.slice(0, 1).map(({ name, value, unit, side, working, related }) => ({
        span: said.span,
        message: `${name} is now ${formatValue(value, unit)}, ${side} this target${working}.`,
        related,
      }));
    }),
});
