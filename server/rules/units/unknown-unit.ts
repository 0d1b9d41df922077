import type { Line } from '../../../grammar/index.ts';
import type { Statement } from '../../model/entry/entry.ts';
import { nearestUnit } from '../../trade/measure/units.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { findQuantity } from '../../trade/vocabulary/vocabulary.ts';
import { QUANTITY_KINDS } from '../lib/kinds.ts';
import { dimensionsOf, ownAmounts, strangeUnit } from '../lib/statement-values.ts';
import { type Problem, problemsIn, replaceWith, rule } from '../rule.ts';

export const unknownUnit = rule({
  code: 'unknown-unit',
  severity: 'warning',
  title: 'A unit that is not known',
  why: 'The word is where the unit should be. Without a known unit the number is taken to be in the usual one.',
  standing: 'notation',
  good: 'session 2026-05-02\n  fuel pressure 5 psi\n',
  bad: 'session 2026-05-02\n  fuel pressure 5 pzi\n',
  outranks: ['misspelt-word', 'missing-unit'],
  on: QUANTITY_KINDS,
  about: (quantity) => dimensionsOf(quantity).length > 0,
  check: ({ quantity, statements: said, line }) =>
    problemsIn(said, (each) => problemsOf(line, each, quantity)),
});

/** The problem of a word in place of a unit. Where the trade leaves the unit out any word may follow, so only one close to a unit is reported. */
function problemsOf(line: Line, said: Statement, quantity: Quantity): Problem[] {
  const amount = ownAmounts(said).find((each) => strangeUnit(line, each, said, quantity));
  const word = amount && strangeUnit(line, amount, said, quantity);
  if (!word || findQuantity([word.text])) return [];
  const near = nearestUnit(word.text);
  const meant = near && dimensionsOf(quantity).includes(near.dimension) ? near : undefined;
  if (!meant && (quantity.bare || quantity.dimension === 'number' || amount.relative)) return [];
  const question = meant ? ` Did you mean ${meant.symbol}?` : '';
  const taken = quantity.unit ? ` The number is read in ${quantity.unit} until then.` : '';
  return [
    {
      span: word.span,
      message: `"${word.text}" is not a known unit.${question}${meant ? '' : taken}`,
      fixes: meant ? [replaceWith(word.span, meant.symbol)] : [],
    },
  ];
}
