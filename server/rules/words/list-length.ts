import { cylindersAt, cylindersOf } from '../../analysis/engine/engine-facts.ts';
import type { Statement } from '../../model/entry/entry.ts';
import type { Context } from '../../model/snapshot/finding.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { amountsOf } from '../lib/statement-values.ts';
import { type Problem, problemsIn, rule } from '../rule.ts';

export const listLength = rule({
  code: 'list-length',
  severity: 'warning',
  title: 'A list of the wrong length for the cylinders',
  why: 'A list is in the order of the cylinders, so one value too few or too many puts the others on the wrong cylinders. For one cylinder alone, write its number, such as #3.',
  standing: 'notation',
  good: 'engine\n  cylinders 4\nsession 2026-05-02\n  tube 388 401 384 410 F\n',
  bad: 'engine\n  cylinders 4\nsession 2026-05-02\n  tube 388 401 384 F\n',
  on: ['setting', 'reading'],
  // A list of jets or screws may be of any length: one carburettor per cylinder is rare.
  about: ({ places = [] }) => places.includes('cylinder') && !places.includes('carburettor'),
  check({ quantity, statements: said }, context) {
    return problemsIn(said, (each) => problemsOf(quantity, each, context));
  },
});

function problemsOf(quantity: Quantity, said: Statement, { before }: Context): Problem[] {
  const values = amountsOf(said.values);
  const first = values[0];
  const last = values.at(-1);
  const engine = cylindersOf(before);
  if (!engine || !first || !last || values.length < 2 || said.place?.cylinder !== undefined) return [];
  const count = said.place ? placeCount(quantity, said.place.text, engine.count, before) : engine.count;
  if (count === undefined || fits(values.length, count, quantity)) return [];
  return [
    {
      span: { from: first.span.from, to: last.span.to },
      message: `${values.length} values for ${count} cylinders. Give one per cylinder, in order.`,
      related: [{ origin: engine.by, message: 'Number of cylinders' }],
    },
  ];
}

function placeCount(
  { places = [] }: Quantity,
  place: string,
  all: number,
  before: Context['before'],
): number | undefined {
  return cylindersAt(before, place) ?? (places.includes('valve') ? all : undefined);
}

/** An engine may have several valves for each cylinder. */
const fits = (length: number, count: number, { places = [] }: Quantity): boolean =>
  length === count || (places.includes('valve') && length % count === 0);
