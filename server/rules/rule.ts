/** The type of a rule: one row, in a file of its own, that holds everything about one kind of finding. */
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

/** A rule for entries of the kinds `Kind`. */
interface RuleOn<Kind extends EntryKind> {
  /** Lower case, words joined by hyphens. Never changed, and never used again for another rule. */
  readonly code: string;
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
  /** Said only of a line of which no other rule says anything. */
  readonly isLastResort?: true;
  readonly on: readonly Kind[];
  /** Quantities it applies to; all if left out. Called once per quantity, not once per line. */
  readonly about?: (quantity: Quantity) => boolean;
  /** Forms of line it applies to; all if left out. Called once per form, not once per line. */
  readonly formed?: (form: Form) => boolean;
  /** The findings of one entry. Depends on its arguments alone; never throws. */
  check(entry: EntryOf<Kind>, context: Context): readonly Problem[];
}

export type Rule = RuleOn<EntryKind>;

type EntryOf<Kind extends EntryKind> = Of<Entry, Kind>;
type Of<One, Kind> = One extends { readonly kind: infer Own }
  ? [Own & Kind] extends [never]
    ? never
    : One
  : never;

/** Declares a rule, so that `check` gets the type of its entries. */
export const rule = <const Kind extends EntryKind>(row: RuleOn<Kind>): Rule => row;

export const NO_PROBLEMS: readonly Problem[] = [];

/** The problems of all items together. Allocates nothing where there are none, which is nearly always. */
export function problemsIn<T>(
  all: readonly T[],
  problemsOf: (each: T) => readonly Problem[],
): readonly Problem[] {
  let found = NO_PROBLEMS;
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
