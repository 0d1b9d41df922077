/**
 * Syntax tree of a line. A tree holds the numbers of tokens, never their text, so all lines built alike share one tree.
 * What is missing is undefined; what no rule could place is kept in `stray`.
 */

/** Neighbouring tokens of a line: from the first to the one before `to`. Empty when both are the same. */
export type Run = readonly [from: number, to: number];

export interface AmountSyntax {
  readonly form: 'amount';
  /** `~`, a bound, a sign, `in` or `out`. */
  readonly prefix: number | undefined;
  /** The minus of the number behind `~` or a bound. */
  readonly lowSign: number | undefined;
  readonly low: number | undefined;
  /** `..` or `±`. */
  readonly link: number | undefined;
  /** The sign of the second number. */
  readonly highSign: number | undefined;
  readonly high: number | undefined;
  /** `"` or `in` straight after the number. */
  readonly inch: number | undefined;
  /** Words directly after: the unit first, then any others. */
  readonly tail: Run;
  readonly run: Run;
}

/** A value of one token. */
export interface PlainSyntax {
  readonly form: 'text' | 'date' | 'clock' | 'ratio' | 'order';
  readonly token: number;
  readonly tail: Run;
  readonly run: Run;
}

export type ValueSyntax = AmountSyntax | PlainSyntax;

/** `@ 2500 rpm`, `at idle`, `in drive hot`. */
export interface ConditionSyntax {
  readonly mark: number;
  readonly value: ValueSyntax | undefined;
  readonly words: Run;
  readonly run: Run;
}

/** Group: what is between two commas. */
export interface GroupSyntax {
  readonly words: Run;
  readonly values: readonly ValueSyntax[];
  readonly conditions: readonly ConditionSyntax[];
  readonly run: Run;
}

export type LineSyntax = (
  | { readonly kind: 'blank' }
  | { readonly kind: 'conflict'; readonly mark: number }
  | { readonly kind: 'notebook'; readonly title: number | undefined }
  | { readonly kind: 'section'; readonly word: number }
  | {
      readonly kind: 'session';
      readonly date: number | undefined;
      readonly clock: number | undefined;
      readonly title: number | undefined;
    }
  | { readonly kind: 'entry'; readonly head: Run; readonly groups: readonly GroupSyntax[] }
  | { readonly kind: 'row'; readonly groups: readonly GroupSyntax[] }
  | { readonly kind: 'note'; readonly text: number | undefined }
  | {
      readonly kind: 'item';
      readonly word: number;
      readonly id: Run;
      readonly text: number | undefined;
      readonly flags: readonly number[];
    }
  | { readonly kind: 'fit'; readonly word: number; readonly part: Run; readonly text: number | undefined }
  | { readonly kind: 'check'; readonly words: Run; readonly text: number | undefined }
  | { readonly kind: 'file'; readonly word: number; readonly path: number | undefined }
  | { readonly kind: 'keep'; readonly text: number | undefined }
  | { readonly kind: 'revert'; readonly date: number | undefined }
  | {
      readonly kind: 'trial';
      readonly knob: Run;
      readonly arrow: number | undefined;
      readonly response: Run;
      /** `@ 3000 rpm`, `in drive`: the conditions of every row. */
      readonly under: Run;
    }
  | { readonly kind: 'want'; readonly groups: readonly GroupSyntax[] }
  | {
      readonly kind: 'recheck';
      readonly name: Run;
      readonly after: number | undefined;
      readonly groups: readonly GroupSyntax[];
    }
) & {
  /** `09:30` or `+20 min`, before all else. */
  readonly time: Run;
  /** The first token that no rule could place, to the end of the line. */
  readonly stray: Run;
};

export type LineKind = LineSyntax['kind'];
