/**
 * Figure: a value worked out from the notebook, with its working. Hover shows the figures about a word, the terminal
 * shows them all; both read the table in figures.ts.
 */

import type { Origin } from '../model/entry/entry.ts';
import type { Files } from '../model/snapshot/named-files.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import type { State } from '../model/state/state.ts';
import type { Interval } from '../trade/measure/interval.ts';
import type { Unit } from '../trade/measure/units.ts';
import type { Standing } from '../trade/vocabulary/quantity.ts';

export type Topic =
  | 'timing'
  | 'points'
  | 'trials'
  | 'effects'
  | 'cylinders'
  | 'idle and mixture'
  | 'air'
  | 'fuel'
  | 'compression ratio'
  | 'road'
  | 'specs'
  | 'ports'
  | 'reminders'
  | 'history';

export interface Input {
  readonly name: string;
  readonly value: string;
  /** The line it came from; undefined where it follows from other inputs. */
  readonly by: Origin | undefined;
}

export interface Figure {
  readonly topic: Topic;
  readonly name: string;
  /** The result in words, with its unit: `31 deg from 3200 rpm`. */
  readonly text: string;
  /** The result as a number, where it is one. */
  readonly value: Interval | undefined;
  readonly unit: Unit | undefined;
  /** In words: `initial + the most mechanical`. */
  readonly formula: string;
  /** With the numbers in: `9 deg + 22 deg = 31 deg`. */
  readonly working: string;
  readonly inputs: readonly Input[];
  /** How reliable the formula is, and the publication or practice behind it. */
  readonly standing: Standing;
  readonly source: string;
  /** What could hurt somebody who acts on it. */
  readonly caution: string | undefined;
  /** Table under the figure, all cells text; the first row holds the column heads. */
  readonly rows: readonly (readonly string[])[];
  /** Inputs missing from the notebook; such a figure has no text and no value. Absent where it is worked out. */
  readonly lacks?: readonly string[];
  /** Data for a chart, for a figure that is best drawn. */
  readonly plot?: Plot;
}

/** A figure that is worked out and is a number. */
export type NumberFigure = Figure & { readonly value: Interval; readonly unit: Unit };

/** Chart: lines through points, or points alone. */
export interface Plot {
  readonly across: PlotAxis;
  readonly up: PlotAxis;
  readonly series: readonly {
    readonly name: string;
    readonly drawn: 'line' | 'points';
    /** In rising order of `at`; `value` in the unit of `up`. */
    readonly points: readonly { readonly at: number; readonly value: Interval }[];
  }[];
}

export interface PlotAxis {
  readonly name: string;
  readonly unit: Unit;
}

/** Place a figure is worked out for: the state after a line, and the notebook around it. */
export interface FigureContext {
  readonly state: State;
  readonly snapshot: Snapshot;
  /** From zero. */
  readonly line: number;
  /** Files the notebook names, as far as they were read; `logsWanted` says which are needed. */
  readonly files?: Files;
}

/** Row of the table: which words' hovers show its figures, and how they are worked out. */
export interface Working {
  readonly topic: Topic;
  /** Names of the vocabulary (or `trial`, `session`, `port`, `spec`, `recheck`), lower case; or any word at all. */
  readonly about: readonly string[] | 'every word';
  /**
   * Depends on its arguments alone; never throws; empty where the notebook does not say enough. `word` limits the
   * figures to those about that word.
   */
  readonly work: (moment: FigureContext, word?: string) => readonly Figure[];
}

type Needed = 'topic' | 'name' | 'text' | 'formula' | 'working' | 'inputs' | 'standing' | 'source';

/** A figure with empty defaults for what is not given. */
export const figure = (given: Pick<Figure, Needed> & Partial<Figure>): Figure => ({
  value: undefined,
  unit: undefined,
  caution: undefined,
  rows: [],
  ...given,
});
