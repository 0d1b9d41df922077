import type { Said } from '../model/notebook.ts';
import type { Amount } from '../model/values.ts';
import type { Quantity } from '../trade/quantity.ts';
import { type Dimension, unitById } from '../trade/units.ts';
import { QUANTITY_KINDS } from './kinds.ts';
import { type Problem, rule } from './rule.ts';
import { dimensionsOf, ownAmounts, saidIn } from './said.ts';

export const wrongUnit = rule({
  code: 'wrong-unit',
  severity: 'warning',
  title: 'A unit of the wrong kind',
  why: 'Degrees of an angle are no degrees of heat, and a pressure is no torque. A value in a unit of another kind cannot be compared with anything, so the totals leave it out.',
  standing: 'notation',
  good: 'session 2026-05-02\n  water 180 F\n',
  bad: 'session 2026-05-02\n  water 180 psi\n',
  on: [...QUANTITY_KINDS, 'spec'],
  check(entry) {
    const allowed = dimensionsOf(entry.quantity);
    if (allowed.length === 0) return [];
    return saidIn(entry).flatMap((said) => problemsOf(entry.quantity, said, allowed));
  },
});

function problemsOf(quantity: Quantity, said: Said, allowed: readonly Dimension[]): Problem[] {
  const wrong = ownAmounts(said).filter((amount) => isWrong(amount, allowed));
  const found = wrong
    .filter(saysItsUnit)
    .slice(0, 1)
    .map((amount) => problemOf(amount, quantity.name, wanted(quantity), allowed));
  const { against } = quantity;
  const at =
    against && said.points.map((point) => point.at).find((amount) => isWrong(amount, [against.dimension]));
  if (!against || !at) return found;
  const unit = unitById(against.unit).symbol;
  return [...found, problemOf(at, `${quantity.name} after @`, unit, [against.dimension])];
}

const isWrong = ({ unit, interval }: Amount, allowed: readonly Dimension[]): boolean =>
  interval !== undefined && unit !== undefined && !allowed.includes(unit.dimension);

/** In a list the unit is written once, for all. */
const saysItsUnit = ({ unitSpan }: Amount): boolean => unitSpan.from < unitSpan.to;

function problemOf(amount: Amount, name: string, wanted: string, allowed: readonly Dimension[]): Problem {
  const { symbol, dimension } = amount.unit as NonNullable<Amount['unit']>;
  return {
    span: saysItsUnit(amount) ? amount.unitSpan : amount.span,
    message: `${symbol || 'A bare number'} is ${article(dimension)}; ${name} is ${article(allowed[0] ?? dimension)}, in ${wanted}.`,
  };
}

function wanted({ unit, parts, orIn }: Quantity): string {
  if (parts) return parts.map((part) => `${part.name} (${part.band?.unit ?? part.dimension})`).join(', ');
  const symbol = unit ? unitById(unit).symbol || 'a bare number' : 'its unit';
  return orIn ? `${symbol} or a ${orIn.join(' or a ')}` : symbol;
}

const article = (dimension: Dimension): string => `${/^[aeiou]/.test(dimension) ? 'an' : 'a'} ${dimension}`;
