import { statedFor } from '../../analysis/limits/limits.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import type { Band } from '../../trade/vocabulary/quantity.ts';
import { VOCABULARY } from '../../trade/vocabulary/vocabulary.ts';
import { changedTotals, inputLines, TOTALS_CHANGE_ON } from '../lib/changed-totals.ts';
import { standingText } from '../lib/expected-range.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { rule } from '../rule.ts';

export const totalOverUsual = rule({
  code: 'total-over-usual',
  severity: 'warning',
  title: 'Total timing above the usual',
  why: 'Street engines without a blower rarely take more, and under boost they take less: about 1 deg less for each psi (common practice, no source). A limit in the notebook replaces this rule.',
  standing: 'published',
  source: 'TM 10-3930-623-12 par. 4-21',
  good: 'session 2026-05-02\n  mechanical 0 deg @ 900 rpm, 26 deg @ 3200 rpm\n  initial 9 deg\n',
  bad: 'session 2026-05-02\n  mechanical 0 deg @ 900 rpm, 34 deg @ 3200 rpm\n  initial 16 deg\n',
  on: TOTALS_CHANGE_ON,
  check: (entry, context) =>
    changedTotals(entry, context, [...BANDS.keys()]).flatMap((total) => {
      const band = BANDS.get(total.name);
      if (!band || statedFor(context.before.limits, total.name, undefined)) return [];
      if (convertInterval(total.value, total.unit, unitById(band.unit)).low <= band.high) return [];
      const value = formatValue(total.value, total.unit);
      return [
        {
          span: lineSpan(entry.line),
          message: `${total.name} is now ${value}, over the usual ${band.high} ${band.unit}: ${total.working} (${standingText(band)}).`,
          related: inputLines(total, context),
        },
      ];
    }),
});

const BANDS: ReadonlyMap<string, Band> = new Map(
  VOCABULARY.flatMap(({ name, band }) =>
    band && ['total', 'cruise total'].includes(name) ? [[name, band] as const] : [],
  ),
);
