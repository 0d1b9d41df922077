/** Timing totals as rows: the value in words and in numbers, its working, and the lines of its inputs. */

import { type Derived, type Lacking, totalsOf } from '../analysis/ignition/timing-totals.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import type { State } from '../model/state/state.ts';
import { formatValue } from '../trade/measure/format.ts';
import { type Where, whereOf } from './where.ts';

export interface TotalRow {
  readonly name: string;
  /** With its unit: `31 deg`. */
  readonly value: string;
  readonly low: number;
  readonly high: number;
  /** Id of the unit of `low` and `high`. */
  readonly unit: string;
  readonly formula: string;
  readonly working: string;
  readonly inputs: readonly InputRow[];
}

export interface InputRow {
  readonly name: string;
  readonly value: string;
  /** Undefined where it follows from other inputs. */
  readonly where: Where | undefined;
}

export interface TotalRows {
  readonly given: readonly TotalRow[];
  readonly lacking: readonly Lacking[];
}

/** The totals with the lines of their inputs, from zero. */
export function totalRows(snapshot: Snapshot, state: State): TotalRows {
  const { given, lacking } = totalsOf(state);
  return { given: given.map((derived) => totalRow(snapshot, derived)), lacking };
}

function totalRow(snapshot: Snapshot, { name, value, unit, formula, working, inputs }: Derived): TotalRow {
  return {
    name,
    value: formatValue(value, unit),
    low: value.low,
    high: value.high,
    unit: unit.id,
    formula,
    working,
    inputs: inputs.map(({ name, value, by }) => ({ name, value, where: by && whereOf(snapshot, by) })),
  };
}
