/** A clause that no form fits: a remark beside the facts, a heading of what follows, or a setting that moved uncounted. */
import { findQuantity } from '../../trade/vocabulary/vocabulary.ts';
import type { Piece } from './classify.ts';
import type { Clause } from './clauses.ts';
import type { Context, Meaning } from './form.ts';

/** A clause without a number that is to be done, or complains, is none. */
export function remarkOf(clause: Clause, context: Context): Meaning | undefined {
  const { text, names } = context;
  const [first] = clause;
  const last = clause.at(-1);
  if (!first || !last) return undefined;
  const named = clause.filter(({ kind }) => kind === 'n');
  const subject = named.length === 1 ? (named[0] as Piece).names : undefined;
  const isSwitched = clause.at(-1)?.text === 'on' && clause.length > 1;
  if (subject && !isSwitched && clause.every(({ kind }) => /[nfp:g]/.test(kind)))
    return { names: subject, isHeading: true };
  if (clause.some(({ kind }) => /[tw?"]/.test(kind)) && !isGoneWeak(clause)) return undefined;
  const counted = clause.findIndex(({ kind }) => kind === 'v');
  if (
    counted >= 0 &&
    !(clause[counted + 1]?.kind === 'x' && !clause[counted]?.amount?.unit && named.length === 0)
  )
    return undefined;
  if (clause.every(({ kind }) => kind === 'f')) return { ...(names && { names }) };
  if (
    clause.every(({ kind }) => kind === 'q' || kind === 'f') &&
    clause.some(({ text: word }) => PRINTED.has(word))
  )
    return undefined;
  const note = text.slice(first.from, last.to);
  if (clause.every(({ kind }) => /[rf]/.test(kind)) && context.facts.length > 0) return { remark: note };
  const moved = clause.some(
    ({ kind, text: word }) => (kind === 'c' && !(AWAY.has(word) && !subject)) || kind === 'k',
  );
  const states = clause.filter(({ kind }) => kind === 'g').map((piece) => piece.text);
  if (!moved)
    return {
      note,
      ...(subject && { names: subject }),
      ...(states.length > 0 && context.facts.length > 0 ? { states } : {}),
    };
  const about = subject ?? names;
  const quantity = about && findQuantity((about[0] as string).split(' '))?.quantity;
  const held = states.length > 0 && context.facts.length > 0 ? { states } : {};
  if (quantity?.kind === 'reading') return { note, ...held, ...(subject && { names: subject }) };
  if (!quantity || !subject)
    return about === undefined && clause.every(({ kind }) => kind !== 'k') && context.facts.length > 0
      ? { note }
      : undefined;
  return { note, names: subject, doubt: { name: quantity.name } };
}

/** Of where something is rather than how it was changed, in a clause that names nothing. */
const AWAY = new Set(['in', 'out', 'up', 'down', 'back', 'over']);

/** What follows these is printed somewhere, and nobody read it. */
const PRINTED = new Set([
  'book',
  'spec',
  'manual',
  'handbook',
  'stock',
  'standard',
  'factory',
  'should',
  'supposed',
]);

/** How it ran, before what was done about it. */
const isGoneWeak = (clause: Clause): boolean =>
  clause.every(({ kind, text }) => kind !== 't' || text === 'gone');
