/** The readings of a notebook with what the engine was set to as each was taken. */

import { amountIn } from '../../model/entry/amount.ts';
import type { Origin } from '../../model/entry/entry.ts';
import type { LineState } from '../../model/snapshot/page.ts';
import { keptByPage } from '../../model/snapshot/per-page.ts';
import { ofName } from '../../model/state/immutable.ts';
import type { State } from '../../model/state/state.ts';
import { middle } from '../../trade/measure/interval.ts';
import { type Air, airDensity } from '../../trade/sums/air.ts';
import { type Measured, measuredIn } from './conditions.ts';
import type { Setup } from './setup-changes.ts';

export interface Observation extends Measured {
  readonly setup: Setup;
  /** The air as written in its session up to there. */
  readonly air: WrittenAir | undefined;
  readonly by: Origin;
}

/** Air of which the temperature is known; what else was written. */
interface WrittenAir {
  readonly celsius: number;
  readonly pascals: number | undefined;
  readonly humidity: number | undefined;
}

/** The observations of each page, in the order of their lines. */
export const observationsOn = keptByPage(observationsIn);

function observationsIn(readings: readonly LineState[]): readonly Observation[] {
  return readings.flatMap(({ entry, before, where }) => {
    if (entry.kind !== 'reading') return [];
    const measured = entry.statements.flatMap((said) => measuredIn(entry.quantity, said, before));
    if (measured.length === 0) return [];
    const { settings, fitted, facts } = before;
    const setup = { settings, fitted, facts };
    const air = airOf(before);
    return measured.map((each) => ({ ...each, setup, air, by: where }));
  });
}

/** The day's air out of the session's weather line or the readings that stand for it; undefined without a temperature. */
export function airOf(state: State): WrittenAir | undefined {
  let air: Partial<WrittenAir> = {};
  for (const { quantity, statement: said } of ofName(state.readings, AIR_WORDS, AIR_READINGS)) {
    for (const value of said.values) {
      if (value.form !== 'amount' || (!value.unit && !quantity.unit)) continue;
      const number = (unit: string) => {
        const interval = amountIn(value, unit, quantity.unit ?? unit);
        return interval && middle(interval);
      };
      const [celsius, pascals, humidity] = [number('C'), number('Pa'), number('%RH') ?? number('%')];
      if (celsius !== undefined) air = { ...air, celsius };
      if (pascals !== undefined) air = { ...air, pascals };
      if (humidity !== undefined) air = { ...air, humidity: humidity / 100 };
    }
  }
  const { celsius, pascals, humidity } = air;
  return celsius === undefined ? undefined : { celsius, pascals, humidity };
}

/** Of each word: further back a session tells its air no more. */
const AIR_READINGS = 24;
const AIR_WORDS = ['weather', 'air temperature', 'barometer', 'humidity'] as const;
const STANDARD = { pascals: 101325, humidity: 0.5 } as const;

/**
 * How the air's density changed, as a fraction. Pressure and humidity count only where both days tell them. Undefined
 * where one of the days tells no temperature.
 */
export function airChange(before: WrittenAir | undefined, after: WrittenAir | undefined): number | undefined {
  if (!before || !after) return undefined;
  const both = <K extends 'pascals' | 'humidity'>(of: WrittenAir, key: K): number =>
    before[key] === undefined || after[key] === undefined ? STANDARD[key] : (of[key] as number);
  const whole = (of: WrittenAir): Air => {
    return { celsius: of.celsius, pascals: both(of, 'pascals'), humidity: both(of, 'humidity') };
  };
  const change = airDensity(whole(after)) / airDensity(whole(before)) - 1;
  return Number.isFinite(change) ? change : undefined;
}
