/** What a form is: a row with a pattern over the kinds of a clause's pieces, and what it means. */
import type { NameScope } from '../entry/name-lookup.ts';
import type { Piece } from './classify.ts';
import type { Clause } from './clauses.ts';
import type { Habits } from './habits.ts';
import type { SpokenAmount } from './spoken-amount.ts';

/** Something a line says of one place. */
export interface Fact {
  readonly name: string;
  readonly place: string | undefined;
  /** With unit and sign, or text in quotes, as the notation writes it. */
  readonly value: string;
  readonly states: readonly string[];
  readonly remark: string;
  /** Put right by the number after it, or said of earlier times. */
  readonly of: 'now' | 'before' | 'book';
  /** Words of change lead to it: `back to 850`. */
  readonly isMoved?: boolean;
  /** Other ways to read it; more than one reading is asked. */
  readonly others: readonly string[];
}

export interface Context {
  readonly text: string;
  readonly scope: NameScope;
  readonly habits: Habits;
  /** What the clauses before it said. */
  readonly facts: readonly Fact[];
  /** What the clauses before it were about. */
  readonly names: readonly string[] | undefined;
  /** What the clauses before that were about, the latest first. */
  readonly earlier: readonly (readonly string[])[];
  readonly place: string | undefined;
  /** The unit last said. */
  readonly unit: SpokenAmount['unit'];
  /** The subject comes from an earlier line: whatever is read is offered, never counted. */
  readonly isCarried: boolean;
}

/** What a clause gives: facts, whole lines, or only a remark. */
export interface Meaning {
  readonly facts?: readonly Fact[];
  readonly lines?: readonly string[];
  readonly note?: string;
  /** What the next clause may be about. */
  readonly names?: readonly string[];
  readonly place?: string;
  readonly unit?: SpokenAmount['unit'];
  /** Conditions of what the clause before said. */
  readonly states?: readonly string[];
  /** It only names what the next clauses are about. */
  readonly isHeading?: true;
  /** Belongs to the fact before it. */
  readonly remark?: string;
  /** The number before it is put right. */
  readonly corrects?: boolean;
  /** A setting that moved by an unknown amount. */
  readonly doubt?: { readonly name: string; readonly place?: string };
}

export interface Form {
  readonly name: string;
  /** Kinds by name, parted by blanks: `name place? amount`; `?`, `*`, `+` as in a pattern, `a|b` either. */
  readonly pattern: string;
  readonly means: (clause: Clause, context: Context) => Meaning | undefined;
  readonly examples: readonly (readonly [text: string, lines: string, habits?: Habits])[];
}

const KINDS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    name: 'n',
    amount: 'v',
    place: 'p',
    state: 'g',
    remark: 'r',
    change: 'c',
    comparison: 'q',
    trouble: 't',
    want: 'w',
    vague: 'k',
    time: 'm',
    no: 'o',
    and: 'a',
    filler: 'f',
    other: 'x',
    with: 'h',
    slash: '/',
    equals: '=',
    question: '\\?',
    colon: ':',
    ditto: '"',
    arrow: '>',
    comma: ',',
    plus: '[+]',
    any: '.',
  }),
);

const compiled = new Map<string, RegExp>();

/** Whole clauses only. Each kind is one character and no part repeats a repetition, so the time is that of the clause's length. */
export function matches(pattern: string, clause: readonly Piece[]): boolean {
  let known = compiled.get(pattern);
  if (!known) {
    known = new RegExp(`^${pattern.split(' ').map(element).join('')}$`, 's');
    compiled.set(pattern, known);
  }
  return known.test(clause.map(({ kind }) => kind).join(''));
}

function element(text: string): string {
  const [, names, often] = /^([a-z|]+)([?*+]?)$/.exec(text) as unknown as [string, string, string];
  const kinds = names.split('|').map((name) => KINDS.get(name));
  return kinds.length === 1 ? `${kinds[0]}${often}` : `[${kinds.join('')}]${often}`;
}
