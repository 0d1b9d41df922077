/** The table of rules, and the check of a line against it. */

import type { Line, LineSyntax, Span } from '../../grammar/index.ts';
import { once } from '../memo.ts';
import type { Entry, EntryKind, SpokenEntry } from '../model/entry/entry.ts';
import type { Check, Context, Finding, Fix } from '../model/snapshot/finding.ts';
import type { Shared } from '../model/snapshot/look-up.ts';
import { saidOn } from '../model/snapshot/page.ts';
import { open, type Snapshot } from '../model/snapshot/snapshot.ts';
import { capital } from '../trade/measure/format.ts';
import type { Quantity } from '../trade/vocabulary/quantity.ts';
import { EVERY_KIND } from './lib/kinds.ts';
import { lineSpan } from './lib/line-syntax.ts';
import { writtenAs } from './lib/written-as.ts';
import type { Problem, ProblemOf, Rule, RuleFamily } from './rule.ts';
import { meantIn } from './silencing.ts';
import { FAMILIES } from './table.ts';

/** All rules, in the order in which the pages list them. */
export const RULES: readonly Rule[] = FAMILIES.flatMap(({ rules }) => rules);

/** Reads and checks a whole text. Accepts any text; never throws. `shared` looks up the notebooks it uses. */
export const openNotebook = (text: string, shared?: Shared): Snapshot => open(text, checkLine, shared);

/** All findings of one line in the order of their columns, except those its comment silences. */
export const checkLine: Check = (entry, context) => {
  const own = foundIn(entry, context);
  const found = entry.kind === 'spoken' ? [...own, ...foundInSpoken(entry, context)] : own;
  return found.length === 0 ? NOTHING_FOUND : withoutOutranked(found, entry);
};

function foundIn(entry: Entry, context: Context): readonly Finding[] {
  let found: Finding[] | undefined;
  for (const family of familiesFor(entry)) {
    for (const problem of family.check(entry, context)) {
      found ??= [];
      found.push(findingOf(family, problem, entry.line));
    }
  }
  return found ?? NOTHING_FOUND;
}

/** Of what a line of plain speech means: told on the line as it was written, and mended by writing it out. */
function foundInSpoken(entry: SpokenEntry, context: Context): readonly Finding[] {
  const span = lineSpan(entry.line);
  return saidOn({ ...context, entry }).flatMap((said, i) =>
    withoutOutranked(foundIn(said.entry, said), said.entry).map((finding) => ({
      ...finding,
      span,
      fixes: finding.fixes.map((fix) => ({
        title: fix.title,
        edits: [writtenAs(entry.line, entry.as.with(i, edited(entry.as[i] as string, fix)))],
      })),
    })),
  );
}

const edited = (text: string, { edits }: Fix): string =>
  [...edits]
    .sort((a, b) => b.span.from - a.span.from)
    .reduce((all, { span, text: put }) => all.slice(0, span.from) + put + all.slice(span.to), text);

/** The rule of a code; undefined for any other text. */
export const ruleOf = (code: string): Rule | undefined => BY_CODE.get(code);

const NOTHING_FOUND: readonly Finding[] = [];
const BY_CODE: ReadonlyMap<string, Rule> = new Map(RULES.map((rule) => [rule.code, rule]));
const FAMILIES_ON: ReadonlyMap<EntryKind, readonly RuleFamily[]> = new Map(
  ([...EVERY_KIND, 'conflict', 'spoken', 'asked'] as const).map((kind) => [
    kind,
    FAMILIES.filter((family) => family.on.includes(kind)),
  ]),
);

/** Stands for the quantity of an entry that has none. */
const NO_QUANTITY = {};

/** The families that can apply to a line of this form and quantity: a few of the hundred. */
const familiesFor = (entry: Entry): readonly RuleFamily[] =>
  familiesOfKind(entry)(('quantity' in entry && entry.quantity) || NO_QUANTITY, entry);

/** By the kind of an entry, with a comment and without, then by its quantity: own words come and go and must not be kept alive. */
const familiesOfForm = once((_: LineSyntax) => new Map<string, ReturnType<typeof familiesByQuantity>>());

const familiesByQuantity = () =>
  once((quantity: Quantity | typeof NO_QUANTITY, entry: Entry) =>
    selectFamilies(entry, quantity === NO_QUANTITY ? undefined : (quantity as Quantity)),
  );

function familiesOfKind({ kind, line }: Entry): ReturnType<typeof familiesByQuantity> {
  const byKind = familiesOfForm(line.syntax);
  const key = line.comment === undefined ? kind : `${kind};`;
  const known = byKind.get(key);
  if (known) return known;
  const families = familiesByQuantity();
  byKind.set(key, families);
  return families;
}

function selectFamilies({ kind, line }: Entry, quantity: Quantity | undefined): readonly RuleFamily[] {
  const form = { syntax: line.syntax, kinds: line.tokens.kinds };
  return (FAMILIES_ON.get(kind) ?? []).filter(
    ({ about, formed }) => (!about || !quantity || about(quantity)) && (!formed || formed(form)),
  );
}

function findingOf({ rules }: RuleFamily, problem: Problem | ProblemOf<string>, line: Line): Finding {
  const { code, severity } = ('code' in problem ? BY_CODE.get(problem.code) : rules[0]) as Rule;
  return {
    code,
    severity,
    span: problem.span,
    message: capital(problem.message),
    related: problem.related?.map(({ origin, message }) => ({ origin, message: capital(message) })) ?? [],
    fixes: problem.fixes?.filter((fix) => isReadApart(fix, line)) ?? [],
  };
}

/** A word that is put in right before others would be read as one word with them: `3/8 bar-0`. */
const isReadApart = ({ edits }: Fix, { text }: Line): boolean =>
  edits.every(
    ({ span, text: put }) =>
      span.from < span.to ||
      !/\p{L}$/u.test(put) ||
      !/^[-'’·*/.&]?[\p{L}\p{N}_°%]/u.test(text.slice(span.to, span.to + 3)),
  );

function withoutOutranked(found: readonly Finding[], { line }: Entry): readonly Finding[] {
  const meant = new Set(meantIn(line).map(({ code }) => code));
  return found
    .filter(
      (finding) =>
        !meant.has(finding.code) &&
        !found.some((other) => outranks(other, finding)) &&
        (found.length === 1 || !isLastResort(finding)),
    )
    .sort((a, b) => a.span.from - b.span.from);
}

const isLastResort = ({ code }: Finding): boolean => BY_CODE.get(code)?.isLastResort ?? false;

const outranks = (other: Finding, finding: Finding): boolean =>
  (BY_CODE.get(other.code)?.outranks?.includes(finding.code) ?? false) && overlap(other.span, finding.span);

const overlap = (a: Span, b: Span): boolean => a.from <= b.to && b.from <= a.to;
