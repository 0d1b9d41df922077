import { amountIn } from '../../model/entry/amount.ts';
import type { Origin } from '../../model/entry/entry.ts';
import { ofName } from '../../model/state/immutable.ts';
import type { State } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { exact, type Interval, surelyAbove } from '../../trade/measure/interval.ts';
import { convertInterval, type Unit, unitById } from '../../trade/measure/units.ts';
import { ownAmounts, valueIn } from '../lib/statement-values.ts';
import { rule } from '../rule.ts';

export const depressionAboveBarometer = rule({
  code: 'depression-above-barometer',
  severity: 'warning',
  title: 'More depression than the barometer allows',
  why: 'Depression is how far the manifold is below outside air, so it can never be more than the barometer reading. The barometer written in the session is used; without one, the standard pressure at sea level.',
  standing: 'published',
  source: 'International Standard Atmosphere: 101325 Pa at sea level',
  good: 'session 2026-05-02\n  depression 17 inHg at idle\n',
  bad: 'session 2026-05-02\n  depression 31 inHg at idle\n',
  outranks: ['outside-band', 'ten-times', 'units-mixed-up'],
  on: ['reading'],
  about: ({ name }) => name === 'depression',
  check({ statements: said }, { before }) {
    const air = barometer(before);
    return said.flatMap(ownAmounts).flatMap(({ interval, unit: written, span }) => {
      const unit = written ?? unitById('inHg');
      if (!interval || unit.dimension !== 'pressure' || !surelyAbove(interval, inUnit(air.value, unit)))
        return [];
      return [
        {
          span,
          message: `${formatValue(interval, unit)} is more than ${air.name}, ${formatValue(inUnit(air.value, unit), unit)}. The manifold cannot be that far below outside air. Is the unit right?${air.basis}`,
          related: air.by ? [{ origin: air.by, message: 'Barometer' }] : [],
        },
      ];
    });
  },
});

interface Air {
  /** hPa */
  readonly value: Interval;
  readonly name: string;
  /** With a space before; empty for a barometer that was read. */
  readonly basis: string;
  readonly by: Origin | undefined;
}

/** Barometers above a line that are looked at. */
const MOST_OF_AIR = 24;

function barometer({ readings }: State): Air {
  for (const { quantity, statement: said, by } of ofName(readings, ['barometer', 'weather'], MOST_OF_AIR)) {
    const value =
      quantity.name === 'barometer'
        ? valueIn(said, 'hPa', quantity)
        : quantity.name === 'weather'
          ? said.values.map((each) => amountIn(each, 'hPa', 'number')).find((each) => each !== undefined)
          : undefined;
    if (value) return { value, name: "this session's barometer", basis: '', by };
  }
  return {
    value: exact(1013.25),
    name: 'the standard pressure at sea level',
    basis: ' (published: ISA)',
    by: undefined,
  };
}

const inUnit = (air: Interval, unit: Unit): Interval => convertInterval(air, unitById('hPa'), unit);
