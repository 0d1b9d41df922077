import type { Line } from '../../../grammar/index.ts';
import type { Statement } from '../../model/entry/entry.ts';
import type { Amount } from '../../model/entry/value.ts';
import type { Context, Fix } from '../../model/snapshot/finding.ts';
import { ofName } from '../../model/state/immutable.ts';
import { keyOf, type State } from '../../model/state/state.ts';
import { type Dimension, type Unit, unitById } from '../../trade/measure/units.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { QUANTITY_KINDS } from '../lib/kinds.ts';
import { dimensionsOf, ownAmounts, saidIn, strangeUnit } from '../lib/statement-values.ts';
import { type Problem, problemsIn, rule } from '../rule.ts';

export const missingUnit = rule({
  code: 'missing-unit',
  severity: 'warning',
  title: 'A number without its unit',
  why: 'Where more than one unit is in use, a bare number may be read differently next year, or by somebody else. It is taken to be in the usual unit until one is written.',
  standing: 'notation',
  good: 'session 2026-05-02\n  water 180 F\n',
  bad: 'session 2026-05-02\n  water 180\n',
  on: [...QUANTITY_KINDS, 'spec'],
  about: (quantity) => dimensionsOf(quantity).length > 0,
  check(entry, context) {
    const { quantity, line } = entry;
    const said = saidIn(entry);
    const problems = problemsIn(said, (each) => problemsOf(line, each, quantity, context));
    const pressures = problemsIn(said, (each) => pressureProblems(each, quantity));
    return pressures.length > 0 ? [...problems, ...pressures] : problems;
  },
});

function problemsOf(line: Line, said: Statement, quantity: Quantity, { before }: Context): Problem[] {
  const bare = quantity.bare || quantity.dimension === 'number';
  const amount = ownAmounts(said).find((each) => each.taken || (!each.unit && !bare));
  const last = ownAmounts(said).at(-1);
  if (!amount || (last && strangeUnit(line, last, said, quantity))) return [];
  const known = before.settings.has(keyOf(quantity.name, said.place?.text));
  return amount.relative && known
    ? []
    : [problemOf(amount, quantity, lastUnit(before, quantity.name), (last ?? amount).numberSpan.to)];
}

/** Problems of the values after `@` in a curve: a bare speed is in rpm, a bare pressure could be in any unit. */
function pressureProblems({ points }: Statement, { against }: Quantity): Problem[] {
  if (!against || against.dimension === 'rotation') return [];
  const at = points.map((point) => point.at).find((each) => !each.unit && each.interval);
  if (!at) return [];
  return [{ span: at.numberSpan, message: `The unit is missing after @; read as ${against.unit}.` }];
}

function problemOf(
  amount: Amount,
  { name, unit, parts }: Quantity,
  last: Unit | undefined,
  at: number,
): Problem {
  if (amount.taken && amount.unit)
    return takenProblem(amount, amount.unit.symbol, parts ? amount.numberSpan.to : at);
  if (!unit) {
    const named = [...new Set((parts ?? []).map((part) => part.name))].join(', ');
    return {
      span: amount.numberSpan,
      message: `The unit is missing, so this number is not used: the values of ${name} (${named}) are recognised by their units.`,
    };
  }
  const { symbol, dimension } = unitById(unit);
  const other = last && last.id !== unit && last.dimension === dimension ? last.symbol : undefined;
  const sure = other ?? (last || ONE_UNIT.has(dimension) ? symbol : undefined);
  return {
    span: amount.numberSpan,
    message: `The unit is missing; read as ${symbol}${other ? `, but it was last written in ${other}` : ''}.`,
    fixes: sure ? [addUnit(sure, at)] : [],
  };
}

const addUnit = (symbol: string, at: number): Fix => ({
  title: `Add ${symbol}`,
  edits: [{ span: { from: at, to: at }, text: ` ${symbol}` }],
});

/** The unit this quantity was last written in, as far as that is carried. */
function lastUnit(
  { settings, latest: lastly, readings, limits, targets, specs }: State,
  name: string,
): Unit | undefined {
  const of = ({ quantity }: { readonly quantity: Quantity }): boolean => quantity.name === name;
  const values =
    ofName(settings, name, 1)[0]?.values ??
    ofName(readings, name, 1)[0]?.statement.values ??
    lastly.get(name)?.statement.values ??
    (ofName(targets, name, 1)[0] ?? ofName(limits, name, 1)[0])?.statement.values ??
    [...specs.values()].findLast(of)?.values;
  const last = values?.at(-1);
  return last?.form === 'amount' ? last.unit : undefined;
}

/** The problem of a bare number whose size leaves only one unit, sure enough for a fix. */
const takenProblem = ({ numberSpan }: Amount, symbol: string, at: number): Problem => ({
  span: numberSpan,
  message: `The unit is missing; read as ${symbol} because of its size.`,
  fixes: [addUnit(symbol, at)],
});

/** Dimensions for which the trade uses one unit only, so that a fix is sure. */
const ONE_UNIT: ReadonlySet<Dimension> = new Set<Dimension>(['angle', 'voltage', 'percent', 'steps']);
