/** Forms of a clause that says which oil is in, or which fuel. */
import { type Clause, textOf } from '../clauses.ts';
import type { Context, Fact, Form, Meaning } from '../form.ts';

export const OILS: readonly Form[] = [
  {
    name: 'the grade of an oil',
    pattern: 'filler|name|other|remark|change* amount other any*',
    means: grade,
    examples: [['dashpots topped up, 20 grade', 'dashpot oil "20 grade" | note dashpots topped up']],
  },
  {
    name: 'an oil by its two numbers',
    pattern: 'filler|name|other|remark|change|comparison|colon|amount*',
    means: multigrade,
    examples: [
      ['15w40 in the sump', 'oil grade "15w40"'],
      ['oil now 10W-30', 'oil grade "10W-30"'],
    ],
  },
];

const fact = (name: string, value: string): Fact => ({
  name,
  place: undefined,
  value,
  states: [],
  remark: '',
  of: 'now',
  others: [],
});

/** `20 grade`: of the oil that the clause before named, else of the sump. */
function grade(clause: Clause, context: Context): Meaning | undefined {
  const at = clause.findIndex(({ kind }) => kind === 'v');
  const size = clause[at]?.amount;
  const named = clause.find(({ kind }) => kind === 'n')?.names ?? context.names;
  const isOil = !named || named.some((name) => /^(?:oil|dashpot)/.test(name));
  if (
    !size ||
    size.unit ||
    size.high ||
    !/^(?:grade|weight|wt)$/.test(clause[at + 1]?.text ?? '') ||
    !isOil ||
    clause.some(({ kind }) => /[twq?]/.test(kind))
  )
    return undefined;
  const name = named?.includes('dashpot oil') ? 'dashpot oil' : 'oil grade';
  return { facts: [fact(name, `"${size.low[0]} grade"`)], names: [name] };
}

const MULTIGRADE = /^\d{1,2}w-?\d{2}$/;
/** Where oil goes, and what is said of it going there. */
const BESIDE =
  /^(?:in|the|pan|sump|crankcase|new|fresh|changed|oil|engine|motor|to|now|with|change|straight|mineral|of|it|put|poured|filled|refilled|fitted|is|on|has|got|still)$/;

/** Nothing beside it but where the oil is: `15w40 in the gearbox` is no oil of the sump. */
function multigrade(clause: Clause, { text }: Context): Meaning | undefined {
  const oils = clause.filter((piece) => MULTIGRADE.test(piece.text));
  const [oil] = oils;
  const volume = clause.find(({ amount }) => amount?.unit?.dimension === 'volume');
  const isPlain = clause.every((piece) => piece === oil || piece === volume || BESIDE.test(piece.text));
  if (!oil || oils.length > 1 || !isPlain) return undefined;
  const note = volume && textOf([volume], text);
  return {
    facts: [fact('oil grade', `"${textOf([oil], text)}"`)],
    names: ['oil grade'],
    ...(note && { note }),
  };
}
