/** The form of a rule: one row, in a file of its own, that says everything there is to say about one kind of finding. */
import type { Line, Span, Tokens } from '../../grammar/index.ts';
import type { Context, Finding, Fix, Severity } from '../model/findings.ts';
import type { Entry, EntryKind } from '../model/notebook.ts';
import type { Quantity, Standing } from '../trade/quantity.ts';

/** What a rule found on its line; code and severity are the rule's. */
export interface Problem {
  readonly span: Span;
  /** What is odd, what it was compared with, and what was probably meant. */
  readonly message: string;
  readonly related?: Finding['related'];
  /** Only where it is sure what was meant. */
  readonly fixes?: readonly Fix[];
}

/** `notation`: follows from how a notebook is written, not from the trade. */
type RuleStanding = Standing | 'notation';

/** What all lines that are built alike share. */
export type Form = Pick<Line, 'syntax'> & Pick<Tokens, 'kinds'>;

/** A rule on lines of the kinds `Kind`. */
interface RuleOn<Kind extends EntryKind> {
  /** Lower case, words joined by hyphens. Never changed, and never used again for another rule. */
  readonly code: string;
  readonly severity: Severity;
  readonly title: string;
  /** Why it matters, for the rule's page. */
  readonly why: string;
  /** How far the rule may be leaned on; where it uses bands, each names its own in the message. */
  readonly standing: RuleStanding;
  readonly source?: string;
  /** A notebook that does not have the finding. */
  readonly good: string;
  /** A notebook that has it. */
  readonly bad: string;
  /** Codes whose findings on the same columns say no more than this one does; they are left out. */
  readonly outranks?: readonly string[];
  /** It is found on one line, but what it says is that the first related line has no effect. */
  readonly isAboutRelated?: true;
  readonly on: readonly Kind[];
  /** Which words it can be found with; all where it is left out. Asked once for a word, not once for a line. */
  readonly about?: (quantity: Quantity) => boolean;
  /** Which forms of line it can be found in; all where it is left out. Asked once for a form, not once for a line. */
  readonly formed?: (form: Form) => boolean;
  /** Depends on its arguments alone; never throws. */
  check(entry: EntryOf<Kind>, context: Context): readonly Problem[];
}

export type Rule = RuleOn<EntryKind>;

type EntryOf<Kind extends EntryKind> = Of<Entry, Kind>;
type Of<One, Kind> = One extends { readonly kind: infer Own }
  ? [Own & Kind] extends [never]
    ? never
    : One
  : never;

/** A row of the table; gives `check` the type of its entries. */
export const rule = <const Kind extends EntryKind>(row: RuleOn<Kind>): Rule => row;

export const NO_PROBLEMS: readonly Problem[] = [];

/** What is found in each of a few things. Nothing is made where nothing is found, which is nearly always. */
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

/** A fix that puts `text` in the place of the columns. */
export const replaceWith = (span: Span, text: string, title = `Write "${text}"`): Fix => ({
  title,
  edits: [{ span, text }],
});
