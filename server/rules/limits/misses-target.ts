import { isComparable, statedFor, statedIn } from '../../analysis/limits/limits.ts';
import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Context } from '../../model/snapshot/finding.ts';
import type { Declared } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { surelyAbove, surelyBelow } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import { changedTotals, inputLines, totalsWithStated } from '../lib/changed-totals.ts';
import { boundText, setOn } from '../lib/limit-text.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { signedAmounts } from '../lib/statement-values.ts';
import { NO_PROBLEMS, type Problem, problemsIn, rule } from '../rule.ts';

export const missesTarget = rule({
  code: 'misses-target',
  severity: 'information',
  title: 'A value that misses your target',
  why: 'The section "targets" says where the work should end up. A reading taken under the same conditions, or a total worked out from the settings, that is not there yet is only noted.',
  standing: 'notation',
  good: 'targets\n  idle 800..850 rpm in neutral\nsession 2026-05-02\n  idle 820 rpm in neutral\n',
  bad: 'targets\n  idle 800..850 rpm in neutral\nsession 2026-05-02\n  idle 920 rpm in neutral\n',
  on: ['reading', 'setting'],
  check(entry, context) {
    if (context.before.targets.size === 0) return NO_PROBLEMS;
    if (entry.kind === 'setting') return totalProblems(entry, context);
    return problemsIn(entry.statements, (said) => readingProblems(entry, said, context));
  },
});

function readingProblems({ quantity, kind }: QuantityEntry, said: Statement, { before }: Context): Problem[] {
  const target = statedFor(before.targets, quantity.name, said.place?.text);
  if (!target || !isComparable(target.statement, said)) return [];
  return signedAmounts(said, kind)
    .flatMap(({ interval, unit: written, span }) => {
      const unit = written ?? unitById(quantity.unit ?? 'number');
      const wanted = statedIn(target, unit);
      if (!interval || !wanted) return [];
      const side = surelyAbove(interval, wanted)
        ? 'above'
        : surelyBelow(interval, wanted)
          ? 'below'
          : undefined;
      if (!side) return [];
      const message = `${quantity.name} ${formatValue(interval, unit)} is ${side} your target of ${boundText(wanted, unit)}${setOn(target.by)}.`;
      return [{ span, message, related: [relatedTo(target)] }];
    })
    .slice(0, 1);
}

const totalProblems = (entry: QuantityEntry, context: Context): Problem[] =>
  changedTotals(entry, context, totalsWithStated(context.before.targets)).flatMap((total) => {
    const target = statedFor(context.before.targets, total.name, undefined);
    const wanted = target && statedIn(target, total.unit);
    if (!target || !wanted) return [];
    const { value, unit } = total;
    const side = surelyAbove(value, wanted) ? 'above' : surelyBelow(value, wanted) ? 'below' : undefined;
    if (!side) return [];
    return [
      {
        span: lineSpan(entry.line),
        message: `${total.name} is now ${formatValue(value, unit)}, ${side} your target of ${boundText(wanted, unit)}${setOn(target.by)}.`,
        related: [relatedTo(target), ...inputLines(total, context)],
      },
    ];
  });

const relatedTo = (target: Declared) => ({
  origin: target.by,
  message: `Target for ${target.quantity.name}`,
});
