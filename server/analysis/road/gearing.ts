/** Gearing: engine speed against road speed, from tyre, final drive and gears. */

import { amountIn } from '../../model/entry/amount.ts';
import type { Statement } from '../../model/entry/entry.ts';
import type { Declared, State } from '../../model/state/state.ts';
import { exact, type Interval, middle, monotoneEach, multiply } from '../../trade/measure/interval.ts';
import { gearIndex, gearName, OVERDRIVE } from '../../trade/sums/gears.ts';
import { parseTyreSize, roadSpeed, tyreDiameter } from '../../trade/sums/road.ts';

export interface Gear {
  /** `third`, `overdrive`; `direct` where no gear ratios are written, for the gearbox straight through. */
  readonly name: string;
  /** Engine turns per wheel turn. */
  readonly overall: Interval;
}

export interface Gearing {
  readonly tyre: Tyre;
  readonly finalDrive: Interval;
  /** First to top; at least one. */
  readonly gears: readonly Gear[];
  /** The facts it is worked out from. */
  readonly facts: readonly Declared[];
}

export interface Tyre {
  readonly metres: Interval;
  /** `unloaded`: the design diameter of the size on its wall, which rolls a few per cent less. */
  readonly kind: 'rolling' | 'unloaded';
  readonly fact: Declared;
}

/** Undefined where tyre or final drive is not written or cannot be read. */
export function gearingOf(state: State): Gearing | undefined {
  const tyre = tyreOf(state);
  const final = state.facts.get('final drive|');
  const finalDrive = final && amountIn(final.statement.values[0], 'ratio', 'ratio');
  if (!tyre || !finalDrive || !(finalDrive.low > 0)) return undefined;
  const { gears, facts } = gearsOf(state, finalDrive);
  return { tyre, finalDrive, gears, facts: [tyre.fact, final, ...facts] };
}

/** The rolling diameter where it is written, else the design diameter of the size. */
function tyreOf({ facts }: State): Tyre | undefined {
  const rolling = facts.get('tyre diameter|');
  const metres = rolling && amountIn(rolling.statement.values[0], 'm', rolling.quantity.unit);
  if (rolling && metres && metres.low > 0) return { metres, kind: 'rolling', fact: rolling };
  const written = [...facts.values()].find(({ quantity }) => quantity.name === 'tyre');
  const size = written?.text === undefined ? undefined : parseTyreSize(written.text);
  return written && size
    ? { metres: exact(tyreDiameter(size) / 1000), kind: 'unloaded', fact: written }
    : undefined;
}

function gearsOf({ facts }: State, finalDrive: Interval): Pick<Gearing, 'gears' | 'facts'> {
  const written = facts.get('gear ratios|');
  const ratios = written?.statement.values.map((value) => amountIn(value, 'ratio', 'ratio')) ?? [];
  const known = ratios.filter((ratio) => ratio !== undefined && ratio.low > 0) as readonly Interval[];
  if (!written || known.length === 0 || known.length !== ratios.length)
    return { gears: [{ name: 'direct', overall: finalDrive }], facts: [] };
  const gears = known.map((ratio, i) => ({ name: gearName(i), overall: multiply(ratio, finalDrive) }));
  const over = facts.get('overdrive|');
  const overdrive = over && amountIn(over.statement.values[0], 'ratio', 'ratio');
  const top = known.at(-1);
  if (!over || !overdrive || !top || !(overdrive.low > 0)) return { gears, facts: [written] };
  const overall = multiply(multiply(top, overdrive), finalDrive);
  return { gears: [...gears, { name: OVERDRIVE, overall }], facts: [written, over] };
}

/** In m/s, without slip. */
export const speedIn = ({ tyre }: Gearing, { overall }: Gear, rpm: Interval): Interval =>
  monotoneEach([rpm, overall, tyre.metres] as const, roadSpeed);

/** A road speed reading: how fast, at which engine speed, in which gear. */
export interface SpeedRead {
  /** True m/s, with the speedometer error taken off where it is written. */
  readonly metresPerSecond: Interval;
  readonly rpm: Interval | undefined;
  /** Gear as named; undefined where none is, or one that the notebook does not have. */
  readonly gear: Gear | undefined;
}

/** Undefined where the value is no speed. */
export function speedRead(said: Statement, state: State, gearing: Gearing): SpeedRead | undefined {
  const metresPerSecond = trueSpeed(said, state);
  if (!metresPerSecond) return undefined;
  return { metresPerSecond, rpm: engineSpeedAt(said), gear: gearNamed(said, gearing.gears) };
}

/** In m/s, with the speedometer error taken off where it is written. */
export function trueSpeed(said: Statement, { facts }: State): Interval | undefined {
  const shown = amountIn(said.values[0], 'm/s', 'mph');
  const error = amountIn(facts.get('speedometer error|')?.statement.values[0], '%', '%');
  return shown && error
    ? monotoneEach([shown, error] as const, (speed, over) => speed / (1 + over / 100))
    : shown;
}

/** Engine rpm read with the speed. */
export const engineSpeedAt = (said: Statement): Interval | undefined =>
  said.conditions.map(({ value }) => amountIn(value, 'rpm')).find((each) => each !== undefined);

function gearNamed(said: Statement, gears: readonly Gear[]): Gear | undefined {
  const words = [...said.words, ...said.conditions.flatMap((condition) => condition.words)];
  const own = gears.filter(({ name }) => name !== OVERDRIVE);
  for (const { text } of words) {
    const word = text.toLowerCase();
    if (word === OVERDRIVE) return gears.find(({ name }) => name === OVERDRIVE);
    const index = gearIndex(word, own.length);
    if (index !== undefined) return own[index];
  }
  return undefined;
}

/** Slip of tyres and converter as a fraction: how far the measured speed falls short of the one worked out. */
export const slipIn = (gearing: Gearing, gear: Gear, rpm: Interval, measured: Interval): Interval =>
  monotoneEach([speedIn(gearing, gear, rpm), measured] as const, (worked, seen) => 1 - seen / worked);

/** Gear with the least slip, of those where it is not negative by more than `slack`. */
export function likeliestGear(
  gearing: Gearing,
  rpm: Interval,
  measured: Interval,
  { low, high }: { readonly low: number; readonly high: number },
): Gear | undefined {
  return gearing.gears
    .map((gear) => ({ gear, slip: middle(slipIn(gearing, gear, rpm, measured)) }))
    .filter(({ slip }) => slip >= low && slip <= high)
    .toSorted((a, b) => Math.abs(a.slip) - Math.abs(b.slip))[0]?.gear;
}
