/** Forms of a clause that says how tight something is: a torque names itself by its unit. */
import { type Clause, textOf } from '../clauses.ts';
import type { Context, Form, Meaning } from '../form.ts';

export const FASTENERS: readonly Form[] = [
  {
    name: 'what was tightened, and how far',
    pattern: 'any+ amount any*',
    means: torque,
    examples: [
      ['manifold nuts 25 lb ft', 'torque 25 lb-ft "manifold nuts"'],
      ['flywheel bolts pulled up to 60 Nm', 'torque 60 N·m "flywheel bolts"'],
    ],
  },
];

/** `pulled up to` is how it was done, and no part of its name. */
const TIGHTENED = new Set(
  'pulled nipped done torqued tightened taken cranked wound up down to at all set now are is were with'.split(
    ' ',
  ),
);

/** The pieces that name it. */
function whatIn(before: Clause): Clause {
  const last = before.findLastIndex(({ text, kind }) => !TIGHTENED.has(text) && /[a-z]/.test(kind));
  return before.slice(0, last + 1);
}

function torque(clause: Clause, { text, scope }: Context): Meaning | undefined {
  const at = clause.findIndex(({ kind }) => kind === 'v');
  const amount = clause[at]?.amount;
  const others = clause.filter((_, i) => i !== at);
  if (amount?.unit?.dimension !== 'torque' || amount.high || amount.low.length > 1) return undefined;
  if (others.some(({ kind, text: word }) => /[twqvok?"]/.test(kind) && word !== 'in') || scope.specs.size > 0)
    return undefined;
  const named = whatIn(clause.slice(0, at));
  const what = named.length > 0 ? textOf(named, text) : '';
  const rest = clause.slice(at + 1);
  const said = [what, rest.length > 0 ? textOf(rest, text) : ''].filter(Boolean).join(', ');
  if (what === '') return undefined;
  const value = `${amount.prefix}${amount.low[0]} ${amount.unit.symbol}`;
  return {
    facts: [
      {
        name: 'torque',
        place: undefined,
        value,
        states: [],
        remark: said.replaceAll('"', ''),
        of: 'now',
        others: [],
      },
    ],
  };
}
