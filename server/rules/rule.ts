/** Rules and the checks that apply them: a file holds one check, and the rule or the family of rules it answers for. */
import type { Line, Span, Tokens } from '../../grammar/index.ts';
import type { Entry, EntryKind } from '../model/entry/entry.ts';
import type { Context, Finding, Fix, Severity } from '../model/snapshot/finding.ts';
import type { Quantity, Standing } from '../trade/vocabulary/quantity.ts';

/** A finding before its rule adds code and severity. */
export interface Problem {
  readonly span: Span;
  /** What is odd, what it was compared with, what was probably meant. */
  readonly message: string;
  readonly related?: Finding['related'];
  /** Only where it is sure what was meant. */
  readonly fixes?: readonly Fix[];
}

/** `notation`: follows from how a notebook is written, not from the trade. */
type RuleStanding = Standing | 'notation';

/** The form of a line: what all lines of the same build share. */
export type Form = Pick<Line, 'syntax'> & Pick<Tokens, 'kinds'>;

/** One kind of finding: what its page, its settings and the proof of it say. */
export interface Rule<Code extends string = string> {
  /** Lower case, words joined by hyphens. Never changed, and never used again for another rule. */
  readonly code: Code;
  readonly severity: Severity;
  readonly title: string;
  /** Why it matters, for the rule's page. */
  readonly why: string;
  /** How reliable the rule is; where it uses bands, each message names that of its own band. */
  readonly standing: RuleStanding;
  readonly source?: string;
  /** A notebook that does not have the finding. */
  readonly good: string;
  /** A notebook that has it. */
  readonly bad: string;
  /** Codes whose findings on the same columns add nothing to this one; they are left out. */
  readonly outranks?: readonly string[];
  /** Reported on the first related line, which is shown faded as having no effect. */
  readonly isAboutRelated?: true;
}

/** A problem of one rule of a family. */
export interface ProblemOf<Code extends string> extends Problem {
  readonly code: Code;
}

/** A check of entries of the kinds `Kind`. */
interface CheckOn<Kind extends EntryKind, Found extends Problem> {
  readonly on: readonly Kind[];
  /** Quantities it applies to; all if left out. Called once per quantity, not once per line. */
  readonly about?: (quantity: Quantity) => boolean;
  /** Forms of line it applies to; all if left out. Called once per form, not once per line. */
  readonly formed?: (form: Form) => boolean;
  /** The findings of one entry. Depends on its arguments alone; never throws. */
  check(entry: EntryOf<Kind>, context: Context): readonly Found[];
}

interface FamilyOn<Kind extends EntryKind, Code extends string>
  extends CheckOn<Kind, ProblemOf<NoInfer<Code>>> {
  readonly rules: readonly Rule<Code>[];
}

/** The rules that one check finds; never none. A problem without a code is of the first. */
export interface RuleFamily extends CheckOn<EntryKind, Problem & { readonly code?: string }> {
  readonly rules: readonly Rule[];
}

type EntryOf<Kind extends EntryKind> = Of<Entry, Kind>;
type Of<One, Kind> = One extends { readonly kind: infer Own }
  ? [Own & Kind] extends [never]
    ? never
    : One
  : never;

/** Declares a rule with a check of its own, so that `check` gets the type of its entries. */
export const rule = <const Kind extends EntryKind>(row: Rule & CheckOn<Kind, Problem>): RuleFamily => ({
  ...row,
  rules: [row],
});

/** Declares rules that one check finds, so that `check` may give their codes and no others. */
export const family = <const Kind extends EntryKind, const Code extends string>(
  rows: FamilyOn<Kind, Code>,
): RuleFamily => rows;

export const NO_PROBLEMS: readonly never[] = [];

/** The problems of all items together. Allocates nothing where there are none, which is nearly always. */
export function problemsIn<T, P extends Problem>(
  all: readonly T[],
  problemsOf: (each: T) => readonly P[],
): readonly P[] {
  let found: readonly P[] = NO_PROBLEMS;
  for (const each of all) {
    const more = problemsOf(each);
    if (more.length > 0) found = found.length > 0 ? [...found, ...more] : more;
  }
  return found;
}

/** A fix that replaces the columns with `text`. */
export const replaceWith = (span: Span, text: string, title = `Write "${text}"`): Fix => ({
  title,
  edits: [{ span, text }],
});
