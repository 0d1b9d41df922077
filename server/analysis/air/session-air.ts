/** Air of a session, from its weather line or its separate temperature, barometer, humidity and altitude readings. */

import { amountIn } from '../../model/entry/amount.ts';
import { valueText } from '../../model/entry/as-written.ts';
import type { Origin, Statement } from '../../model/entry/entry.ts';
import type { Amount } from '../../model/entry/value.ts';
import { ofName } from '../../model/state/immutable.ts';
import type { SessionReading, State } from '../../model/state/state.ts';
import { type Interval, middle, monotone, monotoneEach, range, scale } from '../../trade/measure/interval.ts';
import { airDensity, standardAtmosphere } from '../../trade/sums/air.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { namesWith } from '../../trade/vocabulary/vocabulary.ts';
import type { Input } from '../figure.ts';

/** One part of the air, with the line it is written in. */
interface AirPart {
  /** In degC, Pa, or a fraction. */
  readonly value: Interval;
  readonly name: string;
  /** As written, with its unit. */
  readonly text: () => string;
  readonly by: Origin;
}

/** Air written in a session so far; any part may be missing. */
export interface SessionAir {
  readonly celsius?: AirPart;
  /** As read; where only an altitude was read, the approximate pressure of the standard atmosphere there. */
  readonly pascals?: AirPart;
  readonly humidity?: AirPart;
}

/** Air of which temperature and pressure are known. Each value may be approximate; humidity that is not written may be anything. */
export interface DayAir {
  readonly celsius: Interval;
  readonly pascals: Interval;
  /** From 0 to 1. */
  readonly humidity: Interval;
  readonly inputs: readonly Input[];
}

/** The one reader of the air of a session: of each part the last that was read. */
export function sessionAir({ readings }: Pick<State, 'readings'>): SessionAir {
  const read = ofName(readings, AIR_WORDS, MOST_READ).map(({ quantity, statement, by }) =>
    partsOf(quantity, statement, by),
  );
  return Object.assign({}, ...ofName(readings, 'altitude', 1).map(byAltitude), ...read);
}

const AIR_WORDS = namesWith('weather');
/** Most readings of each word that are searched back for the air. */
const MOST_READ = 24;

/** Air from the readings of a session. Undefined without a temperature, or without both pressure and altitude. */
export const airOf = (state: Pick<State, 'readings'>): DayAir | undefined => wholeOf(sessionAir(state));

/** Reference air as the notebook writes it. */
export function writtenReference(state: State): DayAir | undefined {
  const stated = state.facts.get('reference weather|');
  return stated && wholeOf(partsOf(stated.quantity, stated.statement, stated.by));
}

/**
 * How the air's density changed, as a fraction. Pressure and humidity count only where both sessions have them. Undefined
 * where either has no temperature.
 */
export function airChange(before: SessionAir, after: SessionAir): number | undefined {
  if (!before.celsius || !after.celsius) return undefined;
  const inBoth = (part: 'pascals' | 'humidity', { [part]: own }: SessionAir): number =>
    own && before[part] && after[part] ? middle(own.value) : STANDARD[part];
  const density = (air: SessionAir): number =>
    airDensity({
      celsius: air.celsius ? middle(air.celsius.value) : Number.NaN,
      pascals: inBoth('pascals', air),
      humidity: inBoth('humidity', air),
    });
  const change = density(after) / density(before) - 1;
  return Number.isFinite(change) ? change : undefined;
}

const STANDARD = { pascals: 101325, humidity: 0.5 } as const;

/** In kg/m3. */
export const densityOf = ({ pascals, celsius, humidity }: DayAir): Interval =>
  monotoneEach([pascals, celsius, humidity] as const, (p, t, h) =>
    airDensity({ pascals: p, celsius: t, humidity: h }),
  );

function wholeOf({ celsius, pascals, humidity }: SessionAir): DayAir | undefined {
  if (!celsius || !pascals) return undefined;
  return {
    celsius: celsius.value,
    pascals: pascals.value,
    humidity: humidity?.value ?? range(0, 1),
    inputs: [inputOf(celsius), inputOf(pascals), humidity ? inputOf(humidity) : ANY_HUMIDITY],
  };
}

const inputOf = ({ name, text, by }: AirPart): Input => ({ name, value: text(), by });

const ANY_HUMIDITY: Input = { name: 'humidity', value: '0..100 %, not written', by: undefined };

/** What one line says. A bare number is in the unit of its word; weather has none. */
function partsOf(quantity: Quantity, { values }: Statement, by: Origin): SessionAir {
  const part = (name: string, unit: string): AirPart | undefined => {
    for (const amount of values) {
      if (amount.form !== 'amount' || !(amount.unit || quantity.unit)) continue;
      const value = amountIn(amount, unit, quantity.unit ?? unit);
      if (value)
        return {
          value,
          name: quantity.unit ? quantity.name : name,
          text: textOf(amount, quantity, unit),
          by,
        };
    }
    return undefined;
  };
  const [celsius, pascals] = [part('temperature', 'C'), part('pressure', 'Pa')];
  const humidity = part('humidity', '%RH') ?? part('humidity', '%');
  return {
    ...(celsius && { celsius }),
    ...(pascals && { pascals }),
    ...(humidity && { humidity: { ...humidity, value: scale(humidity.value, 0.01) } }),
  };
}

const textOf = (amount: Amount, quantity: Quantity, unit: string) => () =>
  valueText(amount, quantity.unit ?? unit);

function byAltitude({ quantity, statement: { values }, by }: SessionReading): SessionAir {
  const [amount] = values;
  const metres = amountIn(amount, 'm', quantity.unit);
  if (amount?.form !== 'amount' || !metres) return {};
  const pascals = monotone(metres, (each) => standardAtmosphere(each).pascals);
  const text = () => `${valueText(amount, quantity.unit)}: standard-atmosphere pressure at that altitude`;
  return { pascals: { value: { ...pascals, about: true }, name: 'altitude', text, by } };
}
