import { sessionAir } from '../../analysis/air/session-air.ts';
import type { Origin } from '../../model/entry/entry.ts';
import type { State } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { exact, type Interval, surelyAbove } from '../../trade/measure/interval.ts';
import { convertInterval, type Unit, unitById } from '../../trade/measure/units.ts';
import { ownAmounts } from '../lib/statement-values.ts';
import { rule } from '../rule.ts';

export const depressionAboveBarometer = rule({
  code: 'depression-above-barometer',
  severity: 'warning',
  title: 'More depression than the barometer allows',
  why: 'Depression is how far the manifold is below outside air, so it can never be more than the barometer reading. The barometer written in the session is used; without one, the standard pressure at its altitude, else at sea level.',
  standing: 'published',
  source: 'International Standard Atmosphere: 101325 Pa at sea level, less with altitude',
  good: 'session 2026-05-02\n  depression 17 inHg at idle\n',
  bad: 'session 2026-05-02\n  depression 31 inHg at idle\n',
  outranks: ['outside-band', 'ten-times', 'units-mixed-up'],
  on: ['reading'],
  about: ({ name }) => name === 'depression',
  check({ statements: said }, { before }) {
    const air = outsideAir(before);
    return said.flatMap(ownAmounts).flatMap(({ interval, unit: written, span }) => {
      const unit = written ?? unitById('inHg');
      if (!interval || unit.dimension !== 'pressure' || !surelyAbove(interval, inUnit(air.value, unit)))
        return [];
      return [
        {
          span,
          message: `${formatValue(interval, unit)} is more than ${air.name}, ${formatValue(inUnit(air.value, unit), unit)}. The manifold cannot be that far below outside air. Is the unit right?${air.basis}`,
          related: air.by ? [{ origin: air.by, message: air.label }] : [],
        },
      ];
    });
  },
});

interface Air {
  /** Pa */
  readonly value: Interval;
  readonly name: string;
  /** With a space before; empty for a barometer that was read. */
  readonly basis: string;
  readonly by: Origin | undefined;
  readonly label: string;
}

function outsideAir(state: State): Air {
  const read = sessionAir(state).pascals;
  if (!read) return SEA_LEVEL;
  return read.name === 'altitude'
    ? { ...read, name: "the standard pressure at this session's altitude", basis: BASIS, label: 'Altitude' }
    : { ...read, name: "this session's barometer", basis: '', label: 'Barometer' };
}

const BASIS = ' (published: ISA)';
const SEA_LEVEL: Air = {
  value: exact(101325),
  name: 'the standard pressure at sea level',
  basis: BASIS,
  by: undefined,
  label: '',
};

const inUnit = (air: Interval, unit: Unit): Interval => convertInterval(air, unitById('Pa'), unit);
