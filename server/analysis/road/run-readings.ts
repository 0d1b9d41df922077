/** Measured runs of the whole notebook: time or speed, and the air they were made in. */

import { amountIn } from '../../model/entry/amount.ts';
import type { Origin, QuantityEntry, Statement } from '../../model/entry/entry.ts';
import { lineOf } from '../../model/snapshot/locate.ts';
import { type LineState, saidBy } from '../../model/snapshot/page.ts';
import { keptByPage } from '../../model/snapshot/per-page.ts';
import { pageAt, type Snapshot } from '../../model/snapshot/snapshot.ts';
import { readingKey } from '../../model/state/reading-key.ts';
import type { State } from '../../model/state/state.ts';
import { type Interval, middle } from '../../trade/measure/interval.ts';
import { type Air, type Correction, correctionJ1349 } from '../../trade/sums/air.ts';
import { sessionAir } from '../air/session-air.ts';
import { isBoosted } from '../boost.ts';

export interface Run {
  readonly quantity: 'run time' | 'speed';
  /** Equal for runs that can be compared. */
  readonly key: string;
  /** In s or km/h. */
  readonly value: Interval;
  readonly said: Statement;
  readonly correction: Corrected;
  readonly by: Origin;
}

/** Power correction factor for the air of that session, by name; or why there is none. */
type Corrected =
  | { readonly factor: number; readonly name: string; readonly assumed: string | undefined }
  | { readonly none: string };

export const RUN_UNIT = { 'run time': 's', speed: 'km/h' } as const;
/** Humidity assumed where none is written. */
const USUAL_HUMIDITY = 0.5;

const runsOn = keptByPage(runsAmong);

function runsAmong(readings: readonly LineState[]): readonly Run[] {
  return saidBy(readings).flatMap(({ entry, before, where }) =>
    entry.kind === 'reading' && isRun(entry)
      ? entry.statements.flatMap((said) => runOf(entry, said, before, where))
      : [],
  );
}

const isRun = ({ quantity }: QuantityEntry): boolean => Object.hasOwn(RUN_UNIT, quantity.name);

function runOf({ quantity }: QuantityEntry, said: Statement, before: State, by: Origin): readonly Run[] {
  const name = quantity.name as Run['quantity'];
  const value = amountIn(said.values[0], RUN_UNIT[name], quantity.unit);
  if (!value || !(value.low > 0) || !Number.isFinite(value.high)) return [];
  return [{ quantity: name, key: readingKey(name, said), value, said, correction: correctionOf(before), by }];
}

function correctionOf(state: State): Corrected {
  const { celsius, pascals, humidity } = sessionAir(state);
  if (!celsius) return { none: 'no weather written' };
  if (!pascals) return { none: 'no air pressure written' };
  const day: Air = {
    celsius: middle(celsius.value),
    pascals: middle(pascals.value),
    humidity: humidity ? middle(humidity.value) : USUAL_HUMIDITY,
  };
  const correction: Correction = correctionJ1349(day, isBoosted(state));
  if (correction.kind === 'refused') return { none: correction.reason };
  const assumed = humidity ? undefined : '50 % humidity assumed';
  return Number.isFinite(correction.factor) && correction.factor > 0
    ? { factor: correction.factor, name: correction.name, assumed }
    : { none: 'the weather written is impossible' };
}

/** The runs up to and with a line, in the order of their lines. */
export function runsUpTo(snapshot: Snapshot, line: number): readonly Run[] {
  const last = pageAt(snapshot, line);
  const above = Array.from({ length: last }, (_, page) => runsOn(snapshot, page)).flat();
  const here = runsOn(snapshot, last).filter(({ by }) => (lineOf(snapshot, by.ref) ?? line + 1) <= line);
  return [...above, ...here];
}

/** The shortest time, the highest speed. */
export const betterRun = (run: Run['quantity'], a: Interval, b: Interval): boolean =>
  run === 'run time' ? middle(a) < middle(b) : middle(a) > middle(b);
