/** Values that are not as specified: a setting or reading, and a fastener's torque. */
import { amountIn } from '../../model/entry/amount.ts';
import { valueText } from '../../model/entry/as-written.ts';
import type { Statement } from '../../model/entry/entry.ts';
import { specName } from '../../model/entry/spec-names.ts';
import type { Amount } from '../../model/entry/value.ts';
import { specFor } from '../../model/state/spec-for.ts';
import type { Spec } from '../../model/state/state.ts';
import { type Interval, surelyAbove, surelyBelow } from '../../trade/measure/interval.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { amountsOf } from '../lib/statement-values.ts';
import { family, NO_PROBLEMS, type ProblemOf, problemsIn } from '../rule.ts';

export const valuesOutsideSpec = family({
  rules: [
    {
      code: 'outside-spec',
      severity: 'information',
      title: 'A value that differs from the specification',
      why: 'The section "specs" holds what the maker specifies. A tuner may choose another value on purpose; this finds the one that was not. The maker\'s own figure overrules both.',
      standing: 'notation',
      good: 'specs\n  plug gap 0.024..0.026 in\nsession 2026-05-02\n  plug gap 0.025 in\n',
      bad: 'specs\n  plug gap 0.024..0.026 in\nsession 2026-05-02\n  plug gap 0.035 in\n',
    },
    {
      code: 'torque-outside-spec',
      severity: 'warning',
      title: 'A fastener not tightened as specified',
      why: "Over its torque a fastener may be stretched; under it, it may come loose. The maker's figure decides; replace a bolt that was stretched, do not loosen it and use it again.",
      standing: 'notation',
      good: 'specs\n  head bolts torque 58..62 lb-ft source "manual, table 4"\nsession 2026-05-02\n  head bolts torque 60 lb-ft\n',
      bad: 'specs\n  head bolts torque 58..62 lb-ft source "manual, table 4"\nsession 2026-05-02\n  head bolts torque 72 lb-ft\n',
    },
  ],
  on: ['setting', 'reading'],
  check({ quantity, statements }, { before: { specs } }) {
    if (specs.size === 0) return NO_PROBLEMS;
    return problemsIn(statements, (statement) => {
      const spec = specFor(specs, quantity, statement);
      return spec
        ? valuesPastSpec(spec, statement, quantity).map((past) => problemOf(past, spec, quantity))
        : NO_PROBLEMS;
    });
  },
});

interface PastSpec {
  readonly value: Amount;
  readonly past: 'above' | 'below';
  /** The specified value as text. */
  readonly wanted: string;
}

function problemOf(
  { value, past, wanted }: PastSpec,
  spec: Spec,
  { name, unit, dimension }: Quantity,
): ProblemOf<'outside-spec' | 'torque-outside-spec'> {
  const is = valueText(value, unit);
  const isTorque = dimension === 'torque';
  const odd = isTorque
    ? `${is} is ${past} the ${specName(spec)} specified`
    : `${name} ${is} is ${past} the specified ${specName(spec)}`;
  return {
    code: isTorque ? 'torque-outside-spec' : 'outside-spec',
    span: value.span,
    message: `${odd}, ${wanted} (${spec.source ?? 'source not written'}).`,
    related: [{ origin: spec.by, message: 'Specification' }],
  };
}

/** Values surely above or below the specification; none where the dimensions differ. Relative changes are skipped. */
function valuesPastSpec(spec: Spec, said: Statement, quantity: Quantity): readonly PastSpec[] {
  const unit = spec.quantity.unit;
  const [only] = spec.values;
  const wanted = unit && spec.values.length === 1 ? amountIn(only, unit, unit) : undefined;
  if (!unit || !only || !wanted) return [];
  return amountsOf(said.values).flatMap((value) => {
    const is = value.relative ? undefined : amountIn(value, unit, quantity.unit ?? unit);
    const past = is && pastSpec(is, wanted);
    return past ? [{ value, past, wanted: valueText(only, unit) }] : [];
  });
}

/** Relative slack, so that inches converted to millimetres and back are still equal. */
const ROUNDING = 1e-9;

function pastSpec(is: Interval, wanted: Interval): PastSpec['past'] | undefined {
  const slack = Math.abs(wanted.low) * ROUNDING;
  if (surelyAbove(is, { ...wanted, high: wanted.high + slack })) return 'above';
  return surelyBelow(is, { ...wanted, low: wanted.low - slack }) ? 'below' : undefined;
}
