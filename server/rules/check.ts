/** The table of rules, and the check of a line against it. */

import type { Line, LineSyntax, Span } from '../../grammar/index.ts';
import { once } from '../memo.ts';
import type { Entry, EntryKind } from '../model/entry/entry.ts';
import type { Check, Finding, Fix } from '../model/snapshot/finding.ts';
import type { Shared } from '../model/snapshot/read-pages.ts';
import { open, type Snapshot } from '../model/snapshot/snapshot.ts';
import { capital } from '../trade/measure/format.ts';
import type { Quantity } from '../trade/vocabulary/quantity.ts';
import { EVERY_KIND } from './lib/kinds.ts';
import { meantIn } from './notation/meant-unknown.ts';
import type { Problem, Rule } from './rule.ts';
import { RULES } from './table.ts';

export { RULES };

/** Reads and checks a whole text. Accepts any text; never throws. `shared` looks up the notebooks it uses. */
export const openNotebook = (text: string, shared?: Shared): Snapshot => open(text, checkLine, shared);

/** All findings of one line in the order of their columns, except those its comment silences. */
export const checkLine: Check = (entry, context) => {
  const found: Finding[] = [];
  for (const rule of rulesFor(entry)) {
    for (const problem of rule.check(entry, context)) found.push(findingOf(rule, problem, entry.line));
  }
  return found.length === 0 ? NOTHING_FOUND : judged(found, entry);
};

/** The rule of a code; undefined for any other text. */
export const ruleOf = (code: string): Rule | undefined => BY_CODE.get(code);

const NOTHING_FOUND: readonly Finding[] = [];
const BY_CODE: ReadonlyMap<string, Rule> = new Map(RULES.map((rule) => [rule.code, rule]));
const RULES_ON: ReadonlyMap<EntryKind, readonly Rule[]> = new Map(
  ([...EVERY_KIND, 'conflict'] as const).map((kind) => [
    kind,
    RULES.filter((rule) => rule.on.includes(kind)),
  ]),
);

/** Stands for the quantity of an entry that has none. */
const NO_QUANTITY = {};

/** The rules that can apply to a line of this form and quantity: a few of the hundred. */
const rulesFor = (entry: Entry): readonly Rule[] =>
  rulesOfKind(entry)(('quantity' in entry && entry.quantity) || NO_QUANTITY, entry);

/** By the kind of an entry, with a comment and without, then by its quantity: own words come and go and must not be kept alive. */
const rulesOfForm = once((_: LineSyntax) => new Map<string, ReturnType<typeof rulesByQuantity>>());

const rulesByQuantity = () =>
  once((quantity: Quantity | typeof NO_QUANTITY, entry: Entry) =>
    selected(entry, quantity === NO_QUANTITY ? undefined : (quantity as Quantity)),
  );

function rulesOfKind({ kind, line }: Entry): ReturnType<typeof rulesByQuantity> {
  const byKind = rulesOfForm(line.syntax);
  const key = line.comment === undefined ? kind : `${kind};`;
  const known = byKind.get(key);
  if (known) return known;
  const rules = rulesByQuantity();
  byKind.set(key, rules);
  return rules;
}

function selected({ kind, line }: Entry, quantity: Quantity | undefined): readonly Rule[] {
  const form = { syntax: line.syntax, kinds: line.tokens.kinds };
  return (RULES_ON.get(kind) ?? []).filter(
    ({ about, formed }) => (!about || !quantity || about(quantity)) && (!formed || formed(form)),
  );
}

const findingOf = ({ code, severity }: Rule, problem: Problem, line: Line): Finding => ({
  code,
  severity,
  span: problem.span,
  message: capital(problem.message),
  related: problem.related?.map(({ origin, message }) => ({ origin, message: capital(message) })) ?? [],
  fixes: problem.fixes?.filter((fix) => isReadApart(fix, line)) ?? [],
});

/** A word that is put in right before others would be read as one word with them: `3/8 bar-0`. */
const isReadApart = ({ edits }: Fix, { text }: Line): boolean =>
  edits.every(
    ({ span, text: put }) =>
      span.from < span.to ||
      !/\p{L}$/u.test(put) ||
      !/^[-'’·*/.&]?[\p{L}\p{N}_°%]/u.test(text.slice(span.to, span.to + 3)),
  );

function judged(found: readonly Finding[], { line }: Entry): readonly Finding[] {
  const meant = new Set(meantIn(line).map(({ code }) => code));
  return found
    .filter((finding) => !meant.has(finding.code) && !found.some((other) => outranks(other, finding)))
    .sort((a, b) => a.span.from - b.span.from);
}

const outranks = (other: Finding, finding: Finding): boolean =>
  (BY_CODE.get(other.code)?.outranks?.includes(finding.code) ?? false) && overlap(other.span, finding.span);

const overlap = (a: Span, b: Span): boolean => a.from <= b.to && b.from <= a.to;
