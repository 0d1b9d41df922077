/** The air of a session, put together from what it says: the weather, or temperature, barometer, humidity and altitude. */

import { amountIn } from '../../model/entry/amount.ts';
import { valueText } from '../../model/entry/as-written.ts';
import type { Origin, Statement } from '../../model/entry/entry.ts';
import type { Amount } from '../../model/entry/value.ts';
import type { State } from '../../model/state/state.ts';
import { type Interval, monotone, monotoneEach, range, scale } from '../../trade/measure/interval.ts';
import { airDensity, standardAtmosphere } from '../../trade/sums/air.ts';
import type { Input } from '../figure.ts';
import { readingOf } from '../inputs.ts';

/** Each part may be rough; humidity that is not written may be anything. */
export interface DayAir {
  readonly celsius: Interval;
  readonly pascals: Interval;
  /** From 0 to 1. */
  readonly humidity: Interval;
  readonly inputs: readonly Input[];
}

interface Part {
  readonly value: Interval;
  readonly input: Input;
}

/** The readings of this session that tell its air. Undefined without a temperature, or without a pressure or an altitude. */
export function airOf(state: State): DayAir | undefined {
  const weather = [...state.readings.values()].findLast((taken) => taken.quantity.name === 'weather');
  const parts = weather ? partsOf(weather.statement, weather.by) : NO_PARTS;
  const celsius = parts.celsius ?? readingOf(state, 'air temperature', 'C');
  const pascals = parts.pascals ?? readingOf(state, 'barometer', 'Pa') ?? byAltitude(state);
  const humidity =
    parts.humidity ?? relative(readingOf(state, 'humidity', '%RH') ?? readingOf(state, 'humidity', '%'));
  return celsius && pascals && dayAirOf(celsius, pascals, humidity);
}

/** The air that the notebook says others are told against. */
export function writtenReference(state: State): DayAir | undefined {
  const stated = state.facts.get('reference weather|');
  if (!stated) return undefined;
  const { celsius, pascals, humidity } = partsOf(stated.statement, stated.by);
  return celsius && pascals && dayAirOf(celsius, pascals, humidity);
}

/** In kg/m3. */
export const densityOf = ({ pascals, celsius, humidity }: DayAir): Interval =>
  monotoneEach([pascals, celsius, humidity] as const, (p, t, h) =>
    airDensity({ pascals: p, celsius: t, humidity: h }),
  );

const ANY_HUMIDITY: Part = {
  value: range(0, 1),
  input: { name: 'humidity', value: '0..100 %, not written', by: undefined },
};

const dayAirOf = (celsius: Part, pascals: Part, humidity: Part = ANY_HUMIDITY): DayAir => ({
  celsius: celsius.value,
  pascals: pascals.value,
  humidity: humidity.value,
  inputs: [celsius.input, pascals.input, humidity.input],
});

interface Parts {
  readonly celsius: Part | undefined;
  readonly pascals: Part | undefined;
  readonly humidity: Part | undefined;
}

const NO_PARTS: Parts = { celsius: undefined, pascals: undefined, humidity: undefined };

function partsOf(said: Statement, by: Origin): Parts {
  const part = (name: string, unit: string): Part | undefined => {
    for (const value of said.values) {
      const found = value.form === 'amount' && value.unit ? amountIn(value, unit) : undefined;
      if (found) return { value: found, input: { name, value: valueText(value as Amount, unit), by } };
    }
    return undefined;
  };
  return {
    celsius: part('temperature', 'C'),
    pascals: part('pressure', 'Pa'),
    humidity: relative(part('humidity', '%RH') ?? part('humidity', '%')),
  };
}

function relative(percent: Part | undefined): Part | undefined {
  return percent && { ...percent, value: scale(percent.value, 0.01) };
}

/** Where no pressure was read, that of the standard atmosphere at the altitude stands in, as a rough value. */
function byAltitude(state: State): Part | undefined {
  const altitude = readingOf(state, 'altitude', 'm');
  if (!altitude) return undefined;
  const standard = monotone(altitude.value, (metres) => standardAtmosphere(metres).pascals);
  const value = { ...standard, about: true };
  const { input } = altitude;
  return { value, input: { ...input, value: `${input.value}: pressure of the standard atmosphere there` } };
}
