import { valueText } from '../../model/entry/as-written.ts';
import type { Statement } from '../../model/entry/entry.ts';
import type { Amount } from '../../model/entry/value.ts';
import { type Dimension, unitById } from '../../trade/measure/units.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { QUANTITY_KINDS } from '../lib/kinds.ts';
import { dimensionsOf, ownAmounts, saidIn } from '../lib/statement-values.ts';
import { type Problem, problemsIn, replaceWith, rule } from '../rule.ts';

export const wrongUnit = rule({
  code: 'wrong-unit',
  severity: 'warning',
  title: 'A unit of the wrong kind',
  why: 'Degrees of angle are not degrees of temperature, and a pressure is not a torque. A value in the wrong kind of unit cannot be compared with anything, so the totals leave it out. A torque after a word that is described in words, such as head, is kept as part of the description.',
  standing: 'notation',
  good: 'session 2026-05-02\n  water 180 F\n',
  bad: 'session 2026-05-02\n  water 180 psi\n',
  on: [...QUANTITY_KINDS, 'spec'],
  about: (quantity) => quantity.form === 'text' || dimensionsOf(quantity).length > 0,
  check(entry) {
    if (entry.quantity.form === 'text')
      return problemsIn(saidIn(entry), (said) => torqueAmongWords(entry.quantity, said));
    const allowed = dimensionsOf(entry.quantity);
    return problemsIn(saidIn(entry), (said) => problemsOf(entry.quantity, said, allowed));
  },
});

function problemsOf(quantity: Quantity, said: Statement, allowed: readonly Dimension[]): Problem[] {
  const wrong = ownAmounts(said).filter((amount) => isWrong(amount, allowed));
  const value = wrong.find(saysItsUnit) ?? wrong[0];
  const { against } = quantity;
  const ats = against ? said.points.map((point) => point.at) : [];
  const at = against && ats.find((amount) => isWrong(amount, [against.dimension]));
  return [
    ...(value ? [problemOf(value, `${quantity.name} is ${wantedText(quantity)}`, allowed)] : []),
    ...(at ? [problemOf(at, `after @ goes ${measure(against.unit)}`, [against.dimension])] : []),
  ];
}

/** `head bolts 60 lb-ft` where no spec has that name: the line describes the head. Other units may describe a thing; a torque does not. */
function torqueAmongWords({ name }: Quantity, said: Statement): Problem[] {
  const torque = ownAmounts(said).find(({ unit }) => unit?.dimension === 'torque');
  if (!torque) return [];
  const words = said.words.filter(({ span }) => span.to <= torque.span.from).map(({ text }) => text);
  const written = [name, ...words.filter((word) => word !== 'torque')].join(' ');
  return [
    {
      span: saysItsUnit(torque) ? torque.unitSpan : torque.span,
      message: `"${torque.unit?.symbol}" is a torque, but ${name} is described in words, and no spec is called "${written}". Name it under "specs", such as "${written} torque ${valueText(torque, undefined)}".`,
    },
  ];
}

const isWrong = ({ unit, interval }: Amount, allowed: readonly Dimension[]): boolean =>
  interval !== undefined && unit !== undefined && !allowed.includes(unit.dimension);

/** Whether the value has its own unit: in a list the unit is written once, for all. */
const saysItsUnit = ({ unitSpan }: Amount): boolean => unitSpan.from < unitSpan.to;

function problemOf(amount: Amount, rightly: string, allowed: readonly Dimension[]): Problem {
  const { id, symbol, dimension } = amount.unit as NonNullable<Amount['unit']>;
  const span = saysItsUnit(amount) ? amount.unitSpan : amount.span;
  const meant = SAID_FOR.get(id)
    ?.map(unitById)
    .find((unit) => allowed.includes(unit.dimension));
  const question = meant ? ` Did you mean ${meant.symbol}?` : '';
  return {
    span,
    message: `${symbol ? `"${symbol}"` : 'A bare number'} is ${article(dimension)}; ${rightly}.${question}`,
    fixes: meant && saysItsUnit(amount) ? [replaceWith(span, meant.symbol)] : [],
  };
}

/** Shorthand used at the bench, and the units it may mean. */
const SAID_FOR: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    lb: ['psi', 'lb-ft'],
    lbf: ['psi', 'lb-ft'],
    in: ['inHg'],
    mm: ['mmHg'],
    kg: ['kgf/cm2', 'kgf-m'],
    ft: ['lb-ft'],
  }),
);

/** `a pressure, in psi`; `a bare number, a length or a fuel flow`. */
function wantedText({ unit, parts, orIn, dimension }: Quantity): string {
  if (parts) {
    const units = new Map(
      parts.toReversed().map(({ name, band, dimension }) => [name, band?.unit ?? dimension]),
    );
    return `given as ${[...units]
      .reverse()
      .map(([name, unit]) => `${name} (${unit})`)
      .join(', ')}`;
  }
  const first = unit ? measure(unit) : article(dimension ?? 'number');
  return orIn ? `${first}, or ${orIn.map(article).join(' or ')}` : first;
}

function measure(unit: string): string {
  const { symbol, dimension } = unitById(unit);
  return symbol === '' ? 'a bare number' : `${article(dimension)}, in ${symbol}`;
}

const article = (dimension: Dimension): string => `${/^[aeiou]/.test(dimension) ? 'an' : 'a'} ${dimension}`;
