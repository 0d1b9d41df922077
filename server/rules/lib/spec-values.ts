/** Values compared with their specification. */
import { amountIn } from '../../model/entry/amount.ts';
import { valueText } from '../../model/entry/as-written.ts';
import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import type { Amount } from '../../model/entry/value.ts';
import type { Context } from '../../model/snapshot/finding.ts';
import { specFor } from '../../model/state/spec-for.ts';
import type { Spec } from '../../model/state/state.ts';
import { type Interval, surelyAbove, surelyBelow } from '../../trade/measure/interval.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import type { Problem } from '../rule.ts';
import { amountsOf } from './statement-values.ts';

interface Beside {
  readonly value: Amount;
  readonly past: 'above' | 'below';
  /** The specified value as text. */
  readonly wanted: string;
}

/** Problems of the values that are surely not as specified; `say` words each finding. */
export function outsideSpecs(
  { quantity, statements: said }: QuantityEntry,
  { before: { specs } }: Context,
  say: (value: string, past: Beside['past'], spec: Spec) => string,
): readonly Problem[] {
  return said.flatMap((each) => {
    const spec = specFor(specs, quantity, each);
    if (!spec) return [];
    return besideSpec(spec, each, quantity).map(({ value, past, wanted }) => ({
      span: value.span,
      message: `${say(valueText(value, quantity.unit), past, spec)}, ${wanted} (${spec.source ?? 'source not written'}).`,
      related: [{ origin: spec.by, message: 'Specification' }],
    }));
  });
}

/** Values surely above or below the specification; none where the dimensions differ. Relative changes are skipped. */
function besideSpec(spec: Spec, said: Statement, quantity: Quantity): readonly Beside[] {
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

function pastSpec(is: Interval, wanted: Interval): Beside['past'] | undefined {
  const slack = Math.abs(wanted.low) * ROUNDING;
  if (surelyAbove(is, { ...wanted, high: wanted.high + slack })) return 'above';
  return surelyBelow(is, { ...wanted, low: wanted.low - slack }) ? 'below' : undefined;
}
