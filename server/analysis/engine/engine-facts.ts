/** Engine facts that several figures need: number of cylinders, displacement, compression ratio, top speed. */

import type { Statement } from '../../model/entry/entry.ts';
import { keyOf, type State } from '../../model/state/state.ts';
import { type Interval, monotoneEach } from '../../trade/measure/interval.ts';
import {
  type ChamberSizes,
  clearanceVolume,
  displacement,
  staticRatio,
  sweptVolume,
} from '../../trade/sums/compression.ts';
import { neighbours } from '../../trade/sums/cylinders.ts';
import type { Input } from '../figure.ts';
import { factOf, type KnownInput, settingOf } from '../inputs.ts';

interface WorkedOut {
  readonly value: Interval;
  readonly inputs: readonly Input[];
}

/** Number of cylinders (its one reader): a whole number of at least 1; undefined where not written or not such a number. */
export function cylindersOf(state: State): (KnownInput & { readonly count: number }) | undefined {
  const known = factOf(state, 'cylinders', 'number');
  const count = known?.value.low;
  return known && count === known.value.high && Number.isInteger(count) && count >= 1
    ? { ...known, count }
    : undefined;
}

/** The number of cylinders in a bank or on a side; undefined where it is not written. */
export function cylindersAt({ facts }: State, place: string): number | undefined {
  const order = orderOf(facts.get(keyOf('bank', place))?.statement);
  return order.length > 0 ? order.length : undefined;
}

/** A bank and its cylinders, front to rear. */
interface Bank {
  readonly name: string;
  readonly cylinders: readonly number[];
}

/** The firing order; empty where it is not written or is none. */
export const firingOrderOf = (state: State): readonly number[] =>
  orderOf(state.facts.get('firing order|')?.statement);

/** Banks as written; one row of cylinders where the layout is inline; else none. */
export function banksOf(state: State): readonly Bank[] {
  const banks = [...state.facts.values()]
    .filter(({ quantity, statement: said }) => quantity.name === 'bank' && said.place)
    .map(({ statement: said }) => ({ name: said.place?.text ?? '', cylinders: orderOf(said) }))
    .filter(({ cylinders }) => cylinders.length > 0);
  if (banks.length > 0) return banks;
  const count = cylindersOf(state)?.count ?? firingOrderOf(state).length;
  const inline = state.facts.get('layout|')?.text?.toLowerCase() === 'inline';
  return inline && count > 1 && count <= MOST_CYLINDERS
    ? [{ name: '', cylinders: Array.from({ length: count }, (_, i) => i + 1) }]
    : [];
}

/** Pairs of neighbouring cylinders; empty where neither banks nor an inline layout are written. */
export const neighboursIn = (state: State): readonly (readonly [number, number])[] =>
  neighbours(banksOf(state).map(({ cylinders }) => cylinders));

/** More cylinders than any engine tuned from a notebook; keeps a typing slip from making a list of a million. */
export const MOST_CYLINDERS = 48;

function orderOf(said: Statement | undefined): readonly number[] {
  const value = said?.values[0];
  if (value?.form !== 'order') return [];
  const order = value.text.split('-').map(Number);
  return order.every((each) => Number.isInteger(each) && each > 0) ? order : [];
}

/** From bore, stroke and cylinders, in cc. */
export function sweptByAll(state: State): WorkedOut | undefined {
  const bore = factOf(state, 'bore', 'mm');
  const stroke = factOf(state, 'stroke', 'mm');
  const cylinders = cylindersOf(state);
  if (!bore || !stroke || !cylinders) return undefined;
  const value = monotoneEach(
    [bore.value, stroke.value, cylinders.value] as const,
    (b, s, n) => displacement(b, s, n) / 1000,
  );
  return { value, inputs: [bore.input, stroke.input, cylinders.input] };
}

/** As worked out from bore and stroke, else as written; in cc. */
export function displacementOf(state: State): WorkedOut | undefined {
  const written = factOf(state, 'displacement', 'cc');
  return sweptByAll(state) ?? (written && { value: written.value, inputs: [written.input] });
}

/** Static ratio from the volumes, with swept and clearance volume in cc. The gasket bore is taken as the cylinder bore unless written. */
export function ratioFromVolumes(
  state: State,
): (WorkedOut & { readonly swept: Interval; readonly left: Interval }) | undefined {
  const mm = (name: string) => factOf(state, name, 'mm');
  const cc = (name: string) => factOf(state, name, 'cc');
  const [bore, stroke, gasketThickness, deck] = [
    mm('bore'),
    mm('stroke'),
    mm('gasket thickness'),
    mm('deck clearance'),
  ];
  const [chamber, dish] = [cc('chamber volume'), cc('piston volume')];
  if (!bore || !stroke || !chamber || !gasketThickness || !deck || !dish) return undefined;
  const sizes = { bore, stroke, chamber, gasketThickness, deck, dish, gasketBore: mm('gasket bore') ?? bore };
  return {
    value: throughSizes(sizes, (each) => staticRatio(each) ?? Number.NaN),
    swept: throughSizes(sizes, (each) => sweptVolume(each.bore, each.stroke) / 1000),
    left: throughSizes(sizes, clearanceVolume),
    inputs: [...new Set(Object.values(sizes))].map((each) => each.input),
  };
}

type Sizes = Readonly<Record<keyof ChamberSizes, KnownInput>>;

/** Monotone in each of the sizes, so the corners give the extremes. */
function throughSizes(sizes: Sizes, f: (sizes: Required<ChamberSizes>) => number): Interval {
  const names = Object.keys(sizes) as (keyof ChamberSizes)[];
  return monotoneEach(
    names.map((name) => sizes[name].value),
    (...xs) =>
      f(Object.fromEntries(names.map((name, i) => [name, xs[i]])) as unknown as Required<ChamberSizes>),
  );
}

/** Static ratio from the volumes where all are written, else as written. */
export function compressionOf(state: State): WorkedOut | undefined {
  const written = factOf(state, 'compression', 'ratio');
  return ratioFromVolumes(state) ?? (written && { value: written.value, inputs: [written.input] });
}

/** The red line, else the speed limiter's; in rpm. */
export const topSpeedOf = (state: State): KnownInput | undefined =>
  factOf(state, 'red line', 'rpm') ?? settingOf(state, 'rev limit', 'rpm');
