/** Sizes that can really be had: drills, jets at hand, whole steps. */

import type { State } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { exact } from '../../trade/measure/interval.ts';
import { convert, unitById } from '../../trade/measure/units.ts';
import { type DrillKind, nearestDrill, nearestStep } from '../../trade/sums/drills.ts';
import { jetSizes } from '../inputs.ts';
import type { ReadTrial } from './trial.ts';

interface RealSize {
  /** Name as written: `#7 drill`, `118`. */
  readonly name: string;
  /** In the knob's unit. */
  readonly size: number;
}

/** Sizes nearest the wanted value (in the knob's unit), nearest first; none for a knob that takes any setting. */
export function realSizes(wanted: number, trial: ReadTrial, state: State): readonly RealSize[] {
  const sizes = isJet(trial) ? jets(wanted, trial, state) : [];
  if (sizes.length === 0 && isDrilled(trial)) sizes.push(...drills(wanted, trial));
  if (trial.knob.unit.dimension === 'steps') sizes.push(realSizeNamed(Math.round(wanted), trial));
  const sorted = sizes.toSorted((a, b) => Math.abs(a.size - wanted) - Math.abs(b.size - wanted));
  return sorted.filter((each, i) => i === 0 || Math.abs(each.size - wanted) <= NEAR * Math.abs(wanted));
}

/** Share beyond which a kind's nearest size is too far off to mention. */
const NEAR = 0.05;

const KINDS: readonly DrillKind[] = ['number', 'letter', '64ths', 'metric'];
const DRILLED = /\b(?:holes?|drill|drilling|bores?|jets?|bleeds?|restrict\w*|orifice|bush\w*|passages?)\b/;

const isJet = ({ knob }: ReadTrial): boolean => knob.quantity?.orIn?.includes('fuel flow') ?? false;

/** Whether the knob is drilled: gaps, float levels and the like are lengths that are set. */
const isDrilled = ({ knob }: ReadTrial): boolean =>
  knob.unit.dimension === 'length' &&
  (knob.quantity === undefined || isBore(knob.name) || (knob.quantity.orIn?.includes('length') ?? false));

const isBore = (name: string): boolean => DRILLED.test(name);

function drills(wanted: number, { knob }: ReadTrial): RealSize[] {
  const inch = unitById('in');
  return KINDS.flatMap((kind) => nearestDrill(convert(wanted, knob.unit, inch), [kind]) ?? []).map(
    ({ drill }) => ({
      name: drill.kind === 'number' || drill.kind === 'letter' ? `${drill.name} drill` : drill.name,
      size: convert(drill.inches, inch, knob.unit),
    }),
  );
}

const JETS_SHOWN = 3;

/** The notebook's own list; without one, steps as large as the smallest between two that were tried. */
function jets(wanted: number, trial: ReadTrial, state: State): RealSize[] {
  const list = jetSizes(state, trial.knob.unit);
  const nearest = list.toSorted((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted)).slice(0, JETS_SHOWN);
  if (nearest.length > 0) return nearest.map((size) => realSizeNamed(size, trial));
  const tried = [...new Set(trial.rows.map((row) => row.knob))].toSorted((a, b) => a - b);
  const steps = tried.slice(1).map((size, i) => size - (tried[i] as number));
  const from = tried[0];
  if (from === undefined || steps.length === 0 || trial.knob.unit.dimension === 'length') return [];
  return [realSizeNamed(nearestStep(wanted, Math.min(...steps), from), trial)];
}

const realSizeNamed = (size: number, { knob }: ReadTrial): RealSize => ({
  name: formatValue(exact(size), knob.unit),
  size,
});
