/**
 * A figure: something worked out from what the notebook says, with its working. Hover shows the figures about a word,
 * the terminal shows them all; both read the one table in figures.ts.
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
  | 'squeeze'
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
  /** How far the formula may be leaned on, and the publication or practice. */
  readonly standing: Standing;
  readonly source: string;
  /** What could hurt somebody who acts on it. */
  readonly caution: string | undefined;
  /** A table under the figure, all cells text; its first row names the columns. */
  readonly rows: readonly (readonly string[])[];
  /** What the notebook must say before it can be worked out; such a figure has no text and no value. Absent where it is worked out. */
  readonly lacks?: readonly string[];
  /** The same as numbers, for a figure that is seen best drawn. */
  readonly plot?: Plot;
}

/** A figure that is worked out and is a number. */
export type NumberFigure = Figure & { readonly value: Interval; readonly unit: Unit };

/** What is drawn: lines through points, or points alone. */
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

/** Where in the notebook a figure is asked for: the state after a line, and the notebook around it. */
export interface FigureContext {
  readonly state: State;
  readonly snapshot: Snapshot;
  /** From zero. */
  readonly line: number;
  /** Files the notebook names, as far as they were read; see `logsWanted` for which are asked for. */
  readonly files?: Files;
}

/** One row of the table: which words' hovers show its figures, and how they are worked out. */
export interface Working {
  readonly topic: Topic;
  /** Names of the vocabulary (or `trial`, `session`, `port`, `spec`, `recheck`), lower case; or any word at all. */
  readonly about: readonly string[] | 'every word';
  /**
   * Depends on its arguments alone; never throws; empty where the notebook does not say enough. `word` is what is asked
   * about, where it is one word: a row about many words then tells what belongs to this one.
   */
  readonly work: (moment: FigureContext, word?: string) => readonly Figure[];
}

type Needed = 'topic' | 'name' | 'text' | 'formula' | 'working' | 'inputs' | 'standing' | 'source';

/** A figure of which only what it has is written. */
export const figure = (given: Pick<Figure, Needed> & Partial<Figure>): Figure => ({
  value: undefined,
  unit: undefined,
  caution: undefined,
  rows: [],
  ...given,
});
