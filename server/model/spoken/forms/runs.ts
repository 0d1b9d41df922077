/** Forms of a clause on the road: how long it took from one speed to another, at which speed it hesitates. */
import { type Clause, textOf } from '../clauses.ts';
import type { Context, Form, Meaning } from '../form.ts';
import { sizeOf } from '../numbers.ts';
import { fitsOf } from '../resolve.ts';

export const RUNS: readonly Form[] = [
  {
    name: 'over which speeds, and how long it took',
    pattern: 'name? amount state? filler|change* amount any*',
    means: run,
    examples: [['0-50 17.2', 'run time 17.2 s "0 to 50"']],
  },
  {
    name: 'the speed at which it hesitates or knocks',
    pattern: 'filler* amount filler*',
    means: atSpeed,
    examples: [['flat spot off the line, 1500 or so', 'hesitation "flat spot off the line" @ ~1500 rpm']],
  },
];

/** From one speed to another, then seconds. */
function run(clause: Clause, context: Context): Meaning | undefined {
  const withAt = clause.findIndex(({ kind }) => kind === 'h');
  const [over, time, ...more] = clause
    .slice(0, withAt < 0 ? clause.length : withAt)
    .filter(({ kind }) => kind === 'v');
  const name = clause.find(({ kind }) => kind === 'n')?.names[0];
  if (!over?.amount?.high || !time?.amount || more.length > 0 || (name && name !== 'run time'))
    return undefined;
  const speeds = [over.amount.low[0], over.amount.high[0]].map((each) => sizeOf(each as string));
  const isSpeeds = speeds.every((speed) => speed % 5 === 0 && speed <= 250) && over.amount.link === '..';
  const unit = over.amount.unit;
  const [fit] = fitsOf(['run time'], time.amount, context.habits);
  if (!isSpeeds || !fit || (unit && unit.dimension !== 'road speed') || time.amount.high) return undefined;
  if (clause.some(({ kind }) => /[tw?kqpo]/.test(kind))) return undefined;
  const states = clause.filter(({ kind }) => kind === 'g').map((piece) => piece.text);
  const tail = clause.slice(clause.indexOf(time) + 1).filter(({ kind }) => kind !== 'g');
  const said = tail.length > 0 ? `, ${textOf(tail, context.text)}` : '';
  const remark = `${speeds.join(' to ')}${unit ? ` ${unit.symbol}` : ''}${said}`;
  return {
    facts: [{ name: 'run time', place: undefined, value: fit.value, states, remark, of: 'now', others: [] }],
    names: ['run time'],
  };
}

/** A number alone after what is told in words. */
function atSpeed(clause: Clause, { facts }: Context): Meaning | undefined {
  const amount = clause.find(({ kind }) => kind === 'v')?.amount;
  const isWorded = /^(?:hesitation|knock)$/.test(facts.at(-1)?.name ?? '');
  if (
    !amount ||
    !isWorded ||
    (amount.unit && amount.unit.id !== 'rpm') ||
    sizeOf(amount.low.at(-1) as string) < 400
  )
    return undefined;
  const number = amount.high ? `${amount.low[0]}..${amount.high[0]}` : amount.low.at(-1);
  return { states: [`@ ${amount.prefix}${number} rpm`] };
}
