import { limitIn, pastLimit, statedFor } from '../../analysis/limits/limits.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { changedTotals, inputLines, namesIn, TOTALS_CHANGE_ON } from '../lib/changed-totals.ts';
import { boundText, setOn } from '../lib/limit-text.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { rule } from '../rule.ts';

export const totalOverLimit = rule({
  code: 'total-over-limit',
  severity: 'warning',
  title: 'Total timing past your own limit',
  why: 'Too much advance makes an engine knock under load, which breaks pistons. The total is worked out from the settings in force after this line and compared with the limit in the notebook.',
  standing: 'notation',
  good: 'limits\n  total <= 34 deg\nsession 2026-05-02\n  mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm\n  initial 9 deg\n',
  bad: 'limits\n  total <= 34 deg\nsession 2026-05-02\n  mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm\n  initial 14 deg\n',
  outranks: ['total-over-usual', 'misses-target'],
  on: TOTALS_CHANGE_ON,
  check(entry, context) {
    const { limits } = context.before;
    return changedTotals(entry, context, namesIn(limits)).flatMap((total) => {
      const limit = statedFor(limits, total.name, undefined);
      const allowed = limit && limitIn(limit, total.unit);
      const past = allowed && pastLimit(total.value, allowed);
      if (!limit || !allowed || !past) return [];
      const value = formatValue(total.value, total.unit);
      return [
        {
          span: lineSpan(entry.line),
          message: `${total.name} is now ${value}, ${past} your limit of ${boundText(allowed, total.unit)}${setOn(limit.by)}: ${total.working}.`,
          related: [{ origin: limit.by, message: `Limit on ${total.name}` }, ...inputLines(total, context)],
        },
      ];
    });
  },
});
