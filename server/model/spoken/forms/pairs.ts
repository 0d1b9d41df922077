/** Forms of a clause that gives two numbers for two places: front and rear, inlet and exhaust, primary and secondary. */
import type { Clause } from '../clauses.ts';
import type { Context, Fact, Form, Meaning } from '../form.ts';
import { type Fit, fitsOf } from '../resolve.ts';

export const PAIRS: readonly Form[] = [
  {
    name: 'two numbers for a pair of places',
    pattern: 'filler|name|colon|change|comparison* amount slash|and amount any*',
    means: pair,
    examples: [
      [
        '5/5 on the meter',
        'carburettor balance front carb 5, rear carb 5',
        { places: ['front carb', 'rear carb'] },
      ],
    ],
  },
];

/** The two places that a pair is given for: those of the notebook, or those the word itself has. */
function pair(clause: Clause, context: Context): Meaning | undefined {
  const numbers = clause.filter(({ kind }) => kind === 'v');
  const [one, other, ...more] = numbers;
  if (!one?.amount || !other?.amount || more.length > 0) return undefined;
  const names = clause.find(({ kind }) => kind === 'n')?.names ?? context.names;
  if (
    !names ||
    clause.some(({ kind, text }) => /[twqkpo?]/.test(kind) && !/^(?:again|still|now)$/.test(text))
  )
    return undefined;
  const unit = other.amount.unit ?? one.amount.unit;
  const unitText = other.amount.unitText || one.amount.unitText;
  const [first, second] = [one, other].map(
    ({ amount }) =>
      amount &&
      fitsOf(names, { ...amount, unit, unitText }, context.habits).find((fit) => pairOf(fit, context)),
  );
  const places = first && pairOf(first, context);
  if (!first || !second || first.name !== second.name || !places) return undefined;
  const states = clause.filter(({ kind }) => kind === 'g').map((piece) => piece.text);
  const remark = clause
    .filter(({ kind }) => kind === 'r')
    .map((piece) => piece.text)
    .join(' ');
  const facts = [first, second].map(
    (fit, i): Fact => ({
      name: fit.name,
      place: places[i],
      value: fit.value,
      states,
      remark,
      of: 'now',
      others: [],
    }),
  );
  return { facts, names: [first.name] };
}

function pairOf(
  { quantity }: Fit,
  { habits: { places = [] } }: Context,
): readonly [string, string] | undefined {
  if (quantity.places?.includes('valve')) return ['inlet', 'exhaust'];
  const [one, other, ...more] = places;
  const areCarbs = places.every((place) => place.endsWith(' carb'));
  // Jets of one carburettor are those of its barrels, whatever sides its screws have.
  if (quantity.name === 'main jet' && (places.length === 0 || !areCarbs)) return ['primary', 'secondary'];
  if (one && other && more.length === 0 && quantity.places?.includes('carburettor')) return [one, other];
  return undefined;
}
