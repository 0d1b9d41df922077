import type { Line } from '../../grammar/index.ts';
import { keyOf } from '../model/carry.ts';
import type { Context } from '../model/findings.ts';
import type { Said } from '../model/notebook.ts';
import type { Amount } from '../model/values.ts';
import type { Quantity } from '../trade/quantity.ts';
import { type Dimension, unitById } from '../trade/units.ts';
import { QUANTITY_KINDS } from './kinds.ts';
import { type Problem, problemsIn, rule } from './rule.ts';
import { dimensionsOf, ownAmounts, saidIn, strangeUnit } from './said.ts';

export const missingUnit = rule({
  code: 'missing-unit',
  severity: 'warning',
  title: 'A number without its unit',
  why: 'Where the trade uses more than one unit, a bare number may be read another way next year, or by somebody else. It is taken to be in the usual unit until one is written.',
  standing: 'notation',
  good: 'session 2026-05-02\n  water 180 F\n',
  bad: 'session 2026-05-02\n  water 180\n',
  on: [...QUANTITY_KINDS, 'spec'],
  about: (quantity) => !quantity.bare && quantity.dimension !== 'number' && dimensionsOf(quantity).length > 0,
  check(entry, context) {
    const { quantity, line } = entry;
    const said = saidIn(entry);
    const problems = problemsIn(said, (each) => problemsOf(line, each, quantity, context));
    const pressures = problemsIn(said, (each) => pressureProblems(each, quantity));
    return pressures.length > 0 ? [...problems, ...pressures] : problems;
  },
});

function problemsOf(line: Line, said: Said, quantity: Quantity, { before }: Context): Problem[] {
  const amount = ownAmounts(said).find((each) => !each.unit);
  const last = ownAmounts(said).at(-1);
  if (!amount || (last && strangeUnit(line, last, said, quantity))) return [];
  const known = before.settings.has(keyOf(quantity.name, said.place?.text));
  return amount.relative && known ? [] : [problemOf(amount, quantity)];
}

/** What follows `@` in a curve: a bare speed is in rpm, a bare pressure may be in anything. */
function pressureProblems({ points }: Said, { against }: Quantity): Problem[] {
  if (!against || against.dimension === 'rotation') return [];
  const at = points.map((point) => point.at).find((each) => !each.unit && each.interval);
  if (!at) return [];
  return [{ span: at.numberSpan, message: `The unit is missing after @; taken as ${against.unit}.` }];
}

function problemOf(amount: Amount, { name, unit, parts }: Quantity): Problem {
  if (!unit) {
    const named = (parts ?? []).map((part) => part.name).join(', ');
    return {
      span: amount.numberSpan,
      message: `The unit is missing: ${name} (${named}) is told apart by units, so this number is not used.`,
    };
  }
  const { symbol, dimension } = unitById(unit);
  const at = amount.numberSpan.to;
  return {
    span: amount.numberSpan,
    message: `The unit is missing; taken as ${symbol}.`,
    fixes: ONE_UNIT.has(dimension)
      ? [{ title: `Add ${symbol}`, edits: [{ span: { from: at, to: at }, text: ` ${symbol}` }] }]
      : [],
  };
}

/** Kinds that the trade gives in one unit only, so that it is sure which was meant. */
const ONE_UNIT: ReadonlySet<Dimension> = new Set<Dimension>(['angle', 'voltage', 'percent', 'steps']);
