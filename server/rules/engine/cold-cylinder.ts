import { judgeCold } from '../../analysis/engine/cold-cylinder.ts';
import { type CylinderSet, setsOfLine, shownByLine } from '../../analysis/engine/cylinder-readings.ts';
import { amountIn } from '../../model/entry/amount.ts';
import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import { formatNumber } from '../../trade/measure/format.ts';
import { convert, unitById } from '../../trade/measure/units.ts';
import { cylinderSpan } from '../lib/cylinder-span.ts';
import { type Problem, rule } from '../rule.ts';

export const coldCylinder = rule({
  code: 'cold-cylinder',
  severity: 'warning',
  title: 'An exhaust tube far colder than the others',
  why: 'Tubes differ a lot at idle, and that alone means little. One that is hardly warmer than the outside air, or far cooler than all the others, may belong to a cylinder that is not firing: check its plug, its lead and its valves.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  tube 310 295 505 440 350 455 365 380 F at idle\n',
  bad: 'session 2026-05-02\n  tube 388 401 384 120 F at idle\n',
  on: ['reading'],
  about: ({ name }) => name === 'tube' || name === 'egt',
  check(entry, context) {
    if (entry.statements.every(isEven)) return [];
    return setsOfLine(context, entry.quantity.name).flatMap((line) => {
      const { set } = line;
      const coldIn = (each: CylinderSet) => judgeCold(context.after, each)?.cold ?? [];
      return shownByLine(line, coldIn, ({ cylinder }) => [cylinder]).map(
        ({ cylinder, value, othersMedian, riseFraction }) => {
          const inUnit = (celsius: number) => degrees(celsius, set.unit ?? 'F');
          return problemOf(entry, cylinder, {
            own: inUnit(value),
            others: inUnit(othersMedian),
            share: `${Math.max(0, Math.round(riseFraction * 100))} % of theirs`,
          });
        },
      );
    });
  },
});

/**
 * A list whose coldest tube is nearly as hot as its hottest, which is above 100 degC: up to an outside air of 57 degC none
 * of them is cold by the rule (0.85 - 0.65 of 100 is 0.35 of 57). Most lists need no closer check.
 */
function isEven({ values, place }: Statement): boolean {
  if (place || values.length < 3) return false;
  const celsius = values.map((value) => amountIn(value, 'C', 'F')?.low ?? Number.NaN);
  const hottest = Math.max(...celsius);
  return hottest > 100 && Math.min(...celsius) >= NEARLY * hottest;
}

const NEARLY = 0.85;

function problemOf(
  entry: QuantityEntry,
  cylinder: number,
  { own, others, share }: Readonly<Record<'own' | 'others' | 'share', string>>,
): Problem {
  return {
    span: cylinderSpan(entry, cylinder),
    message: `Cylinder ${cylinder} may not be firing: its ${entry.quantity.name} is ${own}, the median of the others ${others}. Its rise above outside air is ${share}. Check its plug, lead and valves (common practice, no source).`,
  };
}

const degrees = (celsius: number, unit: string): string =>
  `${formatNumber(convert(celsius, unitById('C'), unitById(unit)), unitById(unit))} ${unitById(unit).symbol}`;
