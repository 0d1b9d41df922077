/** Figures at a moment as rows: each in words and in numbers, with its working and its lines. */

import type { Figure, FigureContext, Plot, Topic } from '../analysis/figure.ts';
import { allFigures } from '../analysis/figures.ts';
import { totalsOf, workedOut } from '../analysis/ignition/timing-totals.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import type { State } from '../model/state/state.ts';
import type { Standing } from '../trade/vocabulary/quantity.ts';
import { type Where, whereOf } from './where.ts';

interface InputRow {
  readonly name: string;
  readonly value: string;
  /** Undefined where it follows from other inputs. */
  readonly where: Where | undefined;
}

export interface FigureRow {
  readonly topic: Topic;
  readonly name: string;
  /** In words, with its unit. */
  readonly value: string;
  /** Ends of the value where it is a number; an end that is open is infinite. */
  readonly low: number | undefined;
  readonly high: number | undefined;
  /** Id of the unit of `low` and `high`. */
  readonly unit: string | undefined;
  readonly formula: string;
  readonly working: string;
  readonly inputs: readonly InputRow[];
  readonly standing: Standing;
  readonly source: string;
  readonly caution: string | undefined;
  /** A table; its first row names the columns. */
  readonly rows: readonly (readonly string[])[];
  readonly plot: PlotRows | undefined;
}

/** What is drawn, as numbers: lines through points, or points alone. */
interface PlotRows {
  readonly across: PlotAxis;
  readonly up: PlotAxis;
  readonly series: readonly {
    readonly name: string;
    readonly drawn: 'line' | 'points';
    readonly points: readonly { readonly at: number; readonly low: number; readonly high: number }[];
  }[];
}

export interface PlotAxis {
  readonly name: string;
  /** Id of the unit of the numbers. */
  readonly unit: string;
}

/** In the order of the table of workings. */
export const figureRows = (moment: FigureContext): readonly FigureRow[] =>
  allFigures(moment).map((figure) => figureRow(moment.snapshot, figure));

/** The timing totals that can be worked out, and what the others lack. */
export interface TotalRows {
  readonly given: readonly FigureRow[];
  readonly lacking: readonly { readonly name: string; readonly lacks: readonly string[] }[];
}

/** In the order in which they are shown; both empty where no setting of the timing is written. */
export function totalRows(snapshot: Snapshot, state: State): TotalRows {
  const totals = totalsOf(state);
  return {
    given: totals.filter(workedOut).map((total) => figureRow(snapshot, total)),
    lacking: totals.flatMap(({ name, lacks }) => (lacks ? [{ name, lacks }] : [])),
  };
}

/** A figure with the line and day of each input, lines from zero. */
function figureRow(snapshot: Snapshot, figure: Figure): FigureRow {
  const { topic, name, text, value, unit, formula, working, inputs, standing, source, caution, rows, plot } =
    figure;
  return {
    topic,
    name,
    value: text,
    low: value?.low,
    high: value?.high,
    unit: unit?.id,
    formula,
    working,
    inputs: inputs.map(({ name, value, by }) => ({ name, value, where: by && whereOf(snapshot, by) })),
    standing,
    source,
    caution,
    rows,
    plot: plot && plotRows(plot),
  };
}

const plotRows = ({ across, up, series }: Plot): PlotRows => ({
  across: { name: across.name, unit: across.unit.id },
  up: { name: up.name, unit: up.unit.id },
  series: series.map(({ name, drawn, points }) => ({
    name,
    drawn,
    points: points.map(({ at, value }) => ({ at, low: value.low, high: value.high })),
  })),
});
