/** Forms of a clause that goes through the cylinders: a number for each, only some of them. */
import type { Clause } from '../clauses.ts';
import type { Context, Fact, Form, Meaning } from '../form.ts';
import { fitsOf } from '../resolve.ts';

export const CYLINDERS: readonly Form[] = [
  {
    name: 'a list of readings, one for each cylinder',
    pattern: 'any* amount any* amount any*',
    means: list,
    examples: [
      ['comps 148 151 145 150', 'compression 148 151 145 150 psi', { cylinders: 4, units: 'us' }],
      [
        'compression cold 9,8 / 9,6 / 9,1 / 9,7 bar',
        'compression 9.8 9.6 9.1 9.7 bar cold',
        { cylinders: 4 },
      ],
    ],
  },
  {
    name: 'only these cylinders',
    pattern: 'filler|remark+ amount any amount',
    means: only,
    examples: [
      ['mixture 1 1/2 turns, only 2 and 3', 'mixture #2 1 1/2 turns, #3 1 1/2 turns', { cylinders: 4 }],
    ],
  },
  {
    name: 'a new plug where one was taken out',
    pattern: 'remark filler* change',
    means: newPlug,
    examples: [['plug 4 white, new one in', 'plug #4 white | plug type #4 "new"', { cylinders: 4 }]],
  },
];

function list(clause: Clause, context: Context): Meaning | undefined {
  const numbers = clause.filter(({ kind }) => kind === 'v');
  const { cylinders } = context.habits;
  if (numbers.length < 3 || (cylinders !== undefined && numbers.length !== cylinders)) return undefined;
  const inner = clause.slice(
    clause.findIndex(({ kind }) => kind === 'v'),
    clause.findLastIndex(({ kind }) => kind === 'v'),
  );
  if (inner.some(({ kind }) => !/[v/,fa-]/.test(kind)) || clause.some(({ kind }) => /[twk?o]/.test(kind)))
    return undefined;
  const last = numbers.at(-1)?.amount;
  const names = clause.find(({ kind }) => kind === 'n')?.names ?? context.names;
  if (!last || !names || clause.filter(({ kind }) => kind === 'n').length > 1) return undefined;
  const each = numbers.map(
    ({ amount }) =>
      amount &&
      fitsOf(names, { ...amount, unit: amount.unit ?? last.unit, unitText: last.unitText }, context.habits),
  );
  const first = each[0]?.[0];
  if (!first || each.some((fits) => fits?.length !== 1 || fits[0]?.name !== first.name)) return undefined;
  if (!first.quantity.places?.includes('cylinder') && first.name !== 'depression') return undefined;
  const unit = /\d ?([^\d]*)$/.exec(first.value)?.[1] ?? '';
  const size = (value: string) => value.slice(0, value.length - unit.length).trim();
  const text = `${each.map((fits) => size(fits?.[0]?.value ?? '')).join(' ')} ${unit}`.trim();
  const remark = clause
    .filter(({ kind }) => kind === 'r')
    .map((piece) => piece.text)
    .join(' ');
  const states = clause.filter(({ kind }) => kind === 'g').map((piece) => piece.text);
  const isIdle = first.name === 'depression' && states.length === 0;
  const separate = first.quantity.kind === 'setting';
  const facts: Fact[] = separate
    ? each.map((fits, i) => ({
        name: first.name,
        place: `#${i + 1}`,
        value: fits?.[0]?.value ?? '',
        states,
        remark,
        of: 'now',
        others: [],
      }))
    : [
        {
          name: first.name,
          place: undefined,
          value: text,
          states: isIdle ? ['at idle'] : states,
          remark,
          of: 'now',
          others: [],
        },
      ];
  return { facts, names: [first.name] };
}

/** The fact before it was of these cylinders alone. */
function only(clause: Clause, { facts, habits }: Context): Meaning | undefined {
  const last = facts.at(-1);
  const isOnly = clause[0]?.text === 'only' || clause[0]?.text === 'just';
  const cylinders = clause.filter(({ kind }) => kind === 'v').map(({ amount }) => Number(amount?.low[0]));
  const isCylinder = (each: number) => Number.isInteger(each) && each >= 1 && each <= (habits.cylinders ?? 0);
  if (!last || last.place || !isOnly || !cylinders.every(isCylinder)) return undefined;
  return {
    corrects: true,
    facts: cylinders.map((cylinder) => ({ ...last, place: `#${cylinder}` })),
    names: [last.name],
  };
}

function newPlug(clause: Clause, { facts }: Context): Meaning | undefined {
  const last = facts.at(-1);
  if (last?.name !== 'plug' || !last.place || clause[0]?.text !== 'new' || clause.at(-1)?.text !== 'in')
    return undefined;
  return { facts: [{ ...last, name: 'plug type', value: '"new"' }] };
}
