/** Code action, and the context it depends on. */
import type { LineState } from '../../model/snapshot/page.ts';
import type { Change, Snapshot } from '../../model/snapshot/snapshot.ts';
import type { Diagnostic, Level } from '../diagnostics.ts';
import type { UnitChoice } from '../units.ts';

/** As the protocol names them. */
export type ActionKind = 'quickfix' | 'refactor.rewrite' | 'source.fixAll' | 'source.asRead';

export interface CodeAction {
  readonly title: string;
  readonly kind: ActionKind;
  /** Edits of the present text; none overlap. Empty for an action that only shows something. */
  readonly edits: readonly Change[];
  /** What it is about. */
  readonly found: readonly Diagnostic[];
  /** True where it surely does what was meant. */
  readonly isSure: boolean;
  /** Code of the rule whose page it shows. */
  readonly explains?: string;
}

export interface ActionAround {
  readonly levels: ReadonlyMap<string, Level>;
  readonly units: UnitChoice;
  /** Spaces before a line inside a section. */
  readonly indent: number;
  /** ISO date. */
  readonly today: string;
  /** Kinds, or what kinds begin with; undefined for all. */
  readonly only: readonly string[] | undefined;
  /** The paths by which the notebook would name others of the file name that a path has; the nearest first. */
  readonly elsewhere: (path: string) => readonly string[];
}

/** A line and a column on it. */
export interface Place {
  readonly snapshot: Snapshot;
  readonly reading: LineState;
  readonly line: number;
  readonly column: number;
}

/** Kinds are hierarchical: an editor that requests `refactor` also gets `refactor.rewrite`. */
export const isWanted = ({ only }: ActionAround, kind: ActionKind): boolean =>
  only === undefined ||
  only.some(
    (each) => each === '' || each === kind || kind.startsWith(`${each}.`) || each.startsWith(`${kind}.`),
  );

/** An action that only writes the same in another way. */
export const rewriting = (title: string, edits: readonly Change[]): CodeAction => ({
  title,
  kind: 'refactor.rewrite',
  edits,
  found: [],
  isSure: false,
});
