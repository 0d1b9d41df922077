/** The rules: one table, and what checks a line by it. */
import type { Span } from '../../grammar/index.ts';
import type { Check, Finding } from '../model/findings.ts';
import type { Entry, EntryKind } from '../model/notebook.ts';
import { open, type Shared, type Snapshot } from '../model/snapshot.ts';
import { EVERY_KIND } from './kinds.ts';
import { meantIn } from './meant-unknown.ts';
import type { Problem, Rule } from './rule.ts';
import { RULES } from './table.ts';

export { RULES };

/** Reads a whole text and checks it. Any text has an answer; nothing throws. `shared` answers for the notebooks it uses. */
export const openNotebook = (text: string, shared?: Shared): Snapshot => open(text, checkLine, shared);

/** All findings of one line in the order of their columns, but those that its comment says are meant. */
export const checkLine: Check = (entry, context) => {
  const rules = RULES_ON.get(entry.kind) as readonly Rule[];
  const found: Finding[] = [];
  for (const rule of rules) {
    for (const problem of rule.check(entry, context)) found.push(findingOf(rule, problem));
  }
  return found.length === 0 ? NOTHING_FOUND : judged(found, entry);
};

/** The rule of a code; undefined for any other text. */
export const ruleOf = (code: string): Rule | undefined => BY_CODE.get(code);

const NOTHING_FOUND: readonly Finding[] = [];
const BY_CODE: ReadonlyMap<string, Rule> = new Map(RULES.map((rule) => [rule.code, rule]));
const RULES_ON: ReadonlyMap<EntryKind, readonly Rule[]> = new Map(
  EVERY_KIND.map((kind) => [kind, RULES.filter((rule) => rule.on.includes(kind))]),
);

const findingOf = ({ code, severity }: Rule, problem: Problem): Finding => ({
  code,
  severity,
  span: problem.span,
  message: problem.message,
  related: problem.related ?? [],
  fixes: problem.fixes ?? [],
});

function judged(found: readonly Finding[], { line }: Entry): readonly Finding[] {
  const meant = new Set(meantIn(line).map(({ code }) => code));
  return found
    .filter((finding) => !meant.has(finding.code) && !found.some((other) => outranks(other, finding)))
    .sort((a, b) => a.span.from - b.span.from);
}

const outranks = (other: Finding, finding: Finding): boolean =>
  (BY_CODE.get(other.code)?.outranks?.includes(finding.code) ?? false) && overlap(other.span, finding.span);

const overlap = (a: Span, b: Span): boolean => a.from <= b.to && b.from <= a.to;
