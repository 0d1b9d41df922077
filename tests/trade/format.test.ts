import { expect, it } from 'vitest';
import { formatNumber, formatValue, formatWithin } from '../../server/trade/measure/format.ts';
import { about, atLeast, atMost, exact, type Interval, range } from '../../server/trade/measure/interval.ts';
import { unitById } from '../../server/trade/measure/units.ts';

it.each<[Interval, string | undefined, string]>([
  [exact(9), 'deg', '9 deg'],
  [about(205), 'kPa', '~205 kPa'],
  [range(190, 220), 'kPa', '190..220 kPa'],
  [atMost(34), 'deg', '<= 34 deg'],
  [atLeast(800), 'F', '>= 800 F'],
  [exact(31.5), 'deg', '31.5 deg'],
  [exact(7.3333), 'deg', '7.3 deg'],
  [exact(1.5), 'turn', '1 1/2 turns'],
  [exact(-0.25), 'turn', '-1/4 turn'],
  [exact(1.3), 'turn', '1.3 turns'],
  [exact(5 / 16), 'in', '5/16 in'],
  [exact(17 / 64), 'in', '17/64 in'],
  [exact(0.035), 'in', '0.035 in'],
  [exact(2), 'in', '2 in'],
  [exact(1), 'turn', '1 turn'],
  [exact(8.4), 'ratio', '8.4:1'],
  [exact(0.92), 'number', '0.92'],
  [exact(6), undefined, '6'],
  [exact(1 / 3), 'in', '0.3333 in'],
  [exact(0.1 + 0.2), 'in', '0.3 in'],
  [exact(48210.4), 'mi', '48210 mi'],
  [exact(12.3456), 'psi', '12.35 psi'],
  [exact(999.96), 'hPa', '1000 hPa'],
  [exact(-0.3), 'C', '0 C'],
  [range(14.99999, 15.00001), 'deg', '15 deg'],
  [{ low: 30, high: 32, about: true }, 'deg', '~30..32 deg'],
  [{ low: -Infinity, high: 34, about: true }, 'deg', '<= ~34 deg'],
  [{ low: -Infinity, high: Infinity, about: false }, 'V', 'any V'],
])('%o in %s is written %s', (value, unit, expected) => {
  expect(formatValue(value, unit ? unitById(unit) : undefined)).toBe(expected);
});

it('writes a number alone', () => expect(formatNumber(2833.3333, unitById('rpm'))).toBe('2833'));

it.each<[number, number, number, string, string]>([
  [9.588, 9.141, 10.01, '9.59', '9.14..10.01'],
  [0.28237, 0.2544, 0.3112, '0.282', '0.254..0.311'],
  [783.4, 742.1, 824.7, '783', '742..825'],
  [1.375, 1.25, 1.5, '1.38', '1.25..1.5'],
  [9.588, Number.NEGATIVE_INFINITY, 10, '9.588', '<= 10'],
])('%d known from %d to %d is told as %s within %s', (value, low, high, told, span) =>
  expect(formatWithin(value, { low, high }, unitById('number'))).toEqual({ value: told, span }),
);

it('turns stay fractions', () =>
  expect(formatWithin(1.375, { low: 1.2, high: 1.5 }, unitById('turn')).value).toBe('1 3/8 turns'));
