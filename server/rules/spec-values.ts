/** Values held to the specification they belong to. */
import { amountIn } from '../model/amounts.ts';
import type { Spec } from '../model/carry.ts';
import { valueText } from '../model/describe.ts';
import type { Context } from '../model/findings.ts';
import type { QuantityEntry, Said } from '../model/notebook.ts';
import { specFor } from '../model/specs.ts';
import type { Amount } from '../model/values.ts';
import { type Interval, surelyAbove, surelyBelow } from '../trade/interval.ts';
import type { Quantity } from '../trade/quantity.ts';
import type { Problem } from './rule.ts';
import { amountsOf } from './said.ts';

interface Beside {
  readonly value: Amount;
  readonly past: 'above' | 'below';
  /** The specification in words. */
  readonly wanted: string;
}

/** What a line gives that is surely not as specified, in the words that `say` finds for it. */
export function outsideSpecs(
  { quantity, said }: QuantityEntry,
  { before: { specs } }: Context,
  say: (value: string, past: Beside['past'], spec: Spec) => string,
): readonly Problem[] {
  return said.flatMap((each) => {
    const spec = specFor(specs, quantity, each);
    if (!spec) return [];
    return besideSpec(spec, each, quantity).map(({ value, past, wanted }) => ({
      span: value.span,
      message: `${say(valueText(value, quantity.unit), past, spec)}, ${wanted} (${spec.source ?? 'the notebook does not say from where'}).`,
      related: [{ origin: spec.by, message: 'the specification' }],
    }));
  });
}

/** The values that are surely above or below what is specified; none where the two are of different kinds. A change is no value. */
function besideSpec(spec: Spec, said: Said, quantity: Quantity): readonly Beside[] {
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

/** Inches turned to millimetres and back are the same inches. */
const ROUNDING = 1e-9;

function pastSpec(is: Interval, wanted: Interval): Beside['past'] | undefined {
  const slack = Math.abs(wanted.low) * ROUNDING;
  if (surelyAbove(is, { ...wanted, high: wanted.high + slack })) return 'above';
  return surelyBelow(is, { ...wanted, low: wanted.low - slack }) ? 'below' : undefined;
}
