import { amountIn } from '../model/amounts.ts';
import { judgeCold } from '../model/cold.ts';
import { setsOfLine } from '../model/cylinders.ts';
import type { QuantityEntry, Said } from '../model/notebook.ts';
import { formatNumber } from '../trade/format.ts';
import { convert, unitById } from '../trade/units.ts';
import { cylinderSpan } from './cylinder-span.ts';
import { type Problem, rule } from './rule.ts';

export const coldCylinder = rule({
  code: 'cold-cylinder',
  severity: 'warning',
  title: 'An exhaust tube far colder than the others',
  why: 'Tubes differ a lot at idle, and that alone says little. One that barely rises over the air outside, or far less than all its neighbours, belongs to a cylinder that may not be firing: look at its plug, its lead and its valves.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  tube 310 295 505 440 350 455 365 380 F at idle\n',
  bad: 'session 2026-05-02\n  tube 388 401 384 120 F at idle\n',
  on: ['reading'],
  about: ({ name }) => name === 'tube' || name === 'egt',
  check(entry, { after, where }) {
    if (entry.said.every(isEven)) return [];
    return setsOfLine(after, entry.quantity.name, where).flatMap((set) => {
      const judged = judgeCold(after, set);
      const written = new Set(set.readings.filter(({ by }) => by === where).map(({ cylinder }) => cylinder));
      const cold = judged?.cold.filter(({ cylinder }) => written.has(cylinder)) ?? [];
      return cold.map(({ cylinder, value, othersMedian, riseFraction }) => {
        const told = (celsius: number) => degrees(celsius, set.unit ?? 'F');
        return problemOf(entry, cylinder, {
          own: told(value),
          others: told(othersMedian),
          share: `${Math.max(0, Math.round(riseFraction * 100))} % of theirs`,
        });
      });
    });
  },
});

/**
 * A list whose coldest tube has nearly what its hottest has, and that above 100 degC: on no day hotter than 57 degC is one
 * of them cold by the rule (0.85 - 0.65 of 100 is 0.35 of 57). Most lists need no more than this look.
 */
function isEven({ values, place }: Said): boolean {
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
    message: `Cylinder ${cylinder} may not be firing: its ${entry.quantity.name} is ${own}, the others' median ${others}; its rise over the air outside is ${share} (common practice, no source).`,
  };
}

const degrees = (celsius: number, unit: string): string =>
  `${formatNumber(convert(celsius, unitById('C'), unitById(unit)), unitById(unit))} ${unitById(unit).symbol}`;
