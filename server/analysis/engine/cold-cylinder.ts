/** Exhaust tubes so cold that their cylinder may not be firing. */

import type { State } from '../../model/state/state.ts';
import { middle } from '../../trade/measure/interval.ts';
import { convert, type Unit, unitById } from '../../trade/measure/units.ts';
import { type ColdCylinder, type CylinderValue, coldCylinders } from '../../trade/sums/cylinders.ts';
import { namesWith } from '../../trade/vocabulary/vocabulary.ts';
import { sessionAir } from '../air/session-air.ts';
import { type CylinderSet, numbersOf } from './cylinder-readings.ts';

/** All temperatures in degC, so that a fraction of a rise can be taken. */
interface ColdJudged {
  readonly cold: readonly ColdCylinder[];
  readonly numbers: readonly CylinderValue[];
  readonly around: number;
  /** False where no air temperature is written and 20 degC is assumed. */
  readonly aroundWritten: boolean;
  /** Unit the readings are shown in. */
  readonly unit: Unit;
}

const OF_EXHAUST = namesWith('exhaust');
const CELSIUS = unitById('C');
const USUAL_AIR = 20;

/** No engine has more; each is compared with all others. */
const MOST_CYLINDERS = 64;

/** Undefined for readings other than exhaust temperatures, and for fewer than three cylinders. */
export function judgeCold(state: State, set: CylinderSet): ColdJudged | undefined {
  if (!OF_EXHAUST.includes(set.name) || set.unit === undefined || set.readings.length < 3) return undefined;
  if (set.readings.length > MOST_CYLINDERS) return undefined;
  const unit = unitById(set.unit);
  const written = sessionAir(state).celsius;
  const around = written ? middle(written.value) : USUAL_AIR;
  const numbers = numbersOf(set).map(({ cylinder, value }) => {
    return { cylinder, value: convert(value, unit, CELSIUS) };
  });
  return {
    cold: coldCylinders(numbers, around),
    numbers,
    around,
    aroundWritten: written !== undefined,
    unit,
  };
}
