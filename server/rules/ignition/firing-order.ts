import { cylindersOf } from '../../analysis/engine/engine-facts.ts';
import { isAmount } from '../../model/entry/amount.ts';
import type { QuantityEntry } from '../../model/entry/entry.ts';
import type { Value } from '../../model/entry/value.ts';
import type { Context } from '../../model/snapshot/finding.ts';
import type { Declared } from '../../model/state/state.ts';
import { keyOf } from '../../model/state/state.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { type Problem, replaceWith, rule } from '../rule.ts';

export const firingOrder = rule({
  code: 'firing-order',
  severity: 'warning',
  title: 'A firing order that does not name each cylinder once',
  why: 'Every cylinder fires once in two turns of the crank, so the firing order names each of them exactly once.',
  standing: 'common practice',
  source: 'follows from the four-stroke cycle',
  good: 'engine\n  cylinders 4\n  firing order 1-3-4-2\n',
  bad: 'engine\n  cylinders 4\n  firing order 1-3-4-3\n',
  outranks: ['too-many-values', 'no-value'],
  on: ['fact'],
  about: ({ name }) => name === 'firing order' || name === 'cylinders',
  check(entry, context) {
    if (entry.quantity.name === 'firing order') return orderProblems(entry, context);
    return entry.quantity.name === 'cylinders' ? countProblems(entry, context) : [];
  },
});

function orderProblems({ statements: said }: QuantityEntry, { before }: Context): Problem[] {
  const values = said.flatMap((each) => each.values);
  const first = values[0];
  const last = values.at(-1);
  if (!first || !last) return [];
  const span = { from: first.span.from, to: last.span.to };
  const engine = cylindersOf(before);
  const order = numbersOf(first);
  if (!order) return [missingHyphens(values, span)];
  const fault = faultOf(order, engine?.count ?? order.length);
  if (!fault) return [];
  const related = engine ? [{ origin: engine.by, message: 'Number of cylinders' }] : [];
  return [{ span, message: fault, related }];
}

/** Problems of a `cylinders` line: it may be written, or changed, below the firing order. */
function countProblems({ line }: QuantityEntry, { before, after }: Context): Problem[] {
  const order: Declared | undefined = before.facts.get(keyOf('firing order', undefined));
  const numbers = order?.statement.values[0] && numbersOf(order.statement.values[0]);
  const engine = cylindersOf(after);
  if (!order || !numbers || !engine || !faultOf(numbers, engine.count)) return [];
  return [
    {
      span: lineSpan(line),
      message: `The firing order above does not fit ${engine.count} cylinders: it has ${numbers.length}.`,
      related: [{ origin: order.by, message: 'Firing order' }],
    },
  ];
}

const numbersOf = (value: Value): readonly number[] | undefined =>
  value.form === 'order' ? value.text.split('-').map(Number) : undefined;

/** `1342` or `1 3 4 2`: the hyphens can be added for sure where each cylinder is one digit. */
function missingHyphens(values: readonly Value[], span: Problem['span']): Problem {
  const figures = values.flatMap((value) =>
    isAmount(value) && value.interval ? [String(value.interval.low)] : [],
  );
  const single = figures.length === 1 ? [...(figures[0] ?? '')] : figures;
  const text = single.join('-');
  const whole = single.every((figure) => /^\d+$/.test(figure)) && !faultOf(single.map(Number), single.length);
  return {
    span,
    message: 'Join the cylinders of a firing order with hyphens, such as 1-3-4-2.',
    fixes: whole ? [replaceWith(span, text)] : [],
  };
}

function faultOf(order: readonly number[], count: number): string | undefined {
  const twice = order.find((cylinder, i) => order.indexOf(cylinder) !== i);
  if (twice !== undefined) return `Cylinder ${twice} appears twice in the firing order.`;
  const beyond = order.find((cylinder) => cylinder < 1 || cylinder > count);
  if (beyond !== undefined)
    return `The firing order names cylinder ${beyond}, but the cylinders are numbered 1 to ${count}.`;
  const all = Array.from({ length: count }, (_, i) => i + 1);
  const missing = all.filter((cylinder) => !order.includes(cylinder));
  return missing.length > 0
    ? `The firing order leaves out cylinder ${missing.join(', ')}, of ${count} in all.`
    : undefined;
}
