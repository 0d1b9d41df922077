/** Timing totals past the limit in the notebook, or above the usual where the notebook has no limit. */
import type { NumberFigure } from '../../analysis/figure.ts';
import { limitIn, pastLimit, statedFor } from '../../analysis/limits/limits.ts';
import type { Entry } from '../../model/entry/entry.ts';
import type { Context } from '../../model/snapshot/finding.ts';
import type { Declared } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { convertInterval, unitById } from '../../trade/measure/units.ts';
import type { Band } from '../../trade/vocabulary/quantity.ts';
import { VOCABULARY } from '../../trade/vocabulary/vocabulary.ts';
import { standingText } from '../lib/band-text.ts';
import { changedTotals, inputLines, TOTALS_CHANGE_ON, totalsWithStated } from '../lib/changed-totals.ts';
import { boundText, setOn } from '../lib/limit-text.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { family, NO_PROBLEMS, type ProblemOf, problemsIn } from '../rule.ts';

export const totalsOverLimit = family({
  rules: [
    {
      code: 'total-over-limit',
      severity: 'warning',
      title: 'Total timing past your own limit',
      why: 'Too much advance makes an engine knock under load, which breaks pistons. The total is worked out from the settings in force after this line and compared with the limit in the notebook.',
      standing: 'notation',
      good: 'limits\n  total <= 34 deg\nsession 2026-05-02\n  mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm\n  initial 9 deg\n',
      bad: 'limits\n  total <= 34 deg\nsession 2026-05-02\n  mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm\n  initial 14 deg\n',
      outranks: ['total-over-usual', 'misses-target'],
    },
    {
      code: 'total-over-usual',
      severity: 'warning',
      title: 'Total timing above the usual',
      why: 'Street engines without a blower rarely take more, and under boost they take less: about 1 deg less for each psi (common practice, no source). A limit in the notebook replaces this rule.',
      standing: 'published',
      source: 'TM 10-3930-623-12 par. 4-21',
      good: 'session 2026-05-02\n  mechanical 0 deg @ 900 rpm, 26 deg @ 3200 rpm\n  initial 9 deg\n',
      bad: 'session 2026-05-02\n  mechanical 0 deg @ 900 rpm, 34 deg @ 3200 rpm\n  initial 16 deg\n',
    },
  ],
  on: TOTALS_CHANGE_ON,
  check(entry, context) {
    const { limits } = context.before;
    const names = limits.size === 0 ? WITH_BAND : [...new Set([...totalsWithStated(limits), ...WITH_BAND])];
    return problemsIn(changedTotals(entry, context, names), (total): readonly ProblemOf<Code>[] => {
      const limit = statedFor(limits, total.name, undefined);
      return limit ? overLimit(total, limit, entry, context) : overUsual(total, entry, context);
    });
  },
});

type Code = 'total-over-limit' | 'total-over-usual';

function overLimit(
  total: NumberFigure,
  limit: Declared,
  { line }: Entry,
  context: Context,
): readonly ProblemOf<'total-over-limit'>[] {
  const allowed = limitIn(limit, total.unit);
  const past = allowed && pastLimit(total.value, allowed);
  if (!past) return NO_PROBLEMS;
  const value = formatValue(total.value, total.unit);
  return [
    {
      code: 'total-over-limit',
      span: lineSpan(line),
      message: `${total.name} is now ${value}, ${past} your limit of ${boundText(allowed, total.unit)}${setOn(limit.by)}: ${total.working}.`,
      related: [{ origin: limit.by, message: `Limit on ${total.name}` }, ...inputLines(total, context)],
    },
  ];
}

function overUsual(
  total: NumberFigure,
  { line }: Entry,
  context: Context,
): readonly ProblemOf<'total-over-usual'>[] {
  const band = BANDS.get(total.name);
  if (!band || convertInterval(total.value, total.unit, unitById(band.unit)).low <= band.high)
    return NO_PROBLEMS;
  const value = formatValue(total.value, total.unit);
  return [
    {
      code: 'total-over-usual',
      span: lineSpan(line),
      message: `${total.name} is now ${value}, over the usual ${band.high} ${band.unit}: ${total.working} (${standingText(band)}).`,
      related: inputLines(total, context),
    },
  ];
}

const BANDS: ReadonlyMap<string, Band> = new Map(
  VOCABULARY.flatMap(({ name, band }) =>
    band && ['total', 'cruise total'].includes(name) ? [[name, band] as const] : [],
  ),
);

const WITH_BAND: readonly string[] = [...BANDS.keys()];
