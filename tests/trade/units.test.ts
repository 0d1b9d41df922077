import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { about, range } from '../../server/trade/measure/interval.ts';
import {
  convert,
  convertDifference,
  convertInterval,
  matchUnit,
  nearestUnit,
  UNITS,
  unitById,
} from '../../server/trade/measure/units.ts';

describe('the table', () => {
  it('has each id once', () => {
    expect(new Set(UNITS.map((unit) => unit.id)).size).toBe(UNITS.length);
  });

  it('gives each spelling to one unit', () => {
    const owners = new Map<string, string>();
    const shared: string[] = [];
    for (const unit of UNITS) {
      for (const spelling of new Set(unit.spellings.flatMap((each) => [each, each.replaceAll(' ', '')]))) {
        if (owners.has(spelling)) shared.push(`${spelling}: ${owners.get(spelling)} and ${unit.id}`);
        owners.set(spelling, unit.id);
      }
    }
    expect(shared).toEqual([]);
  });

  it('has a base unit in each dimension, and reads every spelling it gives', () => {
    for (const { dimension, spellings, id } of UNITS) {
      const base = UNITS.filter((unit) => unit.dimension === dimension && unit.factor === 1 && !unit.offset);
      expect(base.length, dimension).toBeGreaterThan(0);
      for (const spelling of spellings) {
        expect(matchUnit(spelling.split(' '), 0)?.unit.id, spelling).toBe(id);
      }
    }
  });

  it('refuses an unknown id', () => expect(() => unitById('furlong')).toThrow('furlong'));
});

describe('spellings as people write them', () => {
  it.each<[string, string | undefined, number?]>([
    ['deg', 'deg'],
    ['°', 'deg'],
    ['º', 'deg'],
    ['Deg.', 'deg'],
    ['deg BTDC', 'deg', 2],
    ['° ATDC', 'deg-atdc', 2],
    ['dist deg', 'dist-deg', 2],
    ['distributor degrees', 'dist-deg', 2],
    ['dist rpm', 'dist-rpm', 2],
    ['RPM', 'rpm'],
    ['F', 'F'],
    ['°F', 'F'],
    ['deg F', 'F', 2],
    ['degrees C', 'C', 2],
    ['inHg', 'inHg'],
    ['in Hg', 'inHg', 2],
    ['in. Hg', 'inHg', 2],
    ['" Hg', 'inHg', 2],
    ['"', 'in'],
    ['thou', 'thou'],
    ['lb-ft', 'lb-ft'],
    ['ft-lb', 'lb-ft'],
    ['ft lbs', 'lb-ft', 2],
    ['lbf.ft', 'lb-ft'],
    ['lbf·ft', 'lb-ft'],
    ['N·m', 'Nm'],
    ['N.m', 'Nm'],
    ['Nm', 'Nm'],
    ['turns', 'turn'],
    ['turn', 'turn'],
    ['psig', 'psi'],
    ['kPa', 'kPa'],
    ['mbar', 'mbar'],
    ['cm³', 'cc'],
    ['cu in', 'cu-in', 2],
    ['cu. in.', 'cu-in', 2],
    ['CID', 'cu-in'],
    ['L', 'L'],
    ['km/h', 'km/h'],
    ['kph', 'km/h'],
    ['%', '%'],
    ['%RH', '%RH'],
    ['% RH', '%RH', 2],
    ['µF', 'uF'],
    ['h', 'h'],
    ['US gal', 'gal', 2],
    ['imp gal', 'imp-gal', 2],
    ['heat cycles', 'heat-cycle', 2],
    ['heat-cycles', 'heat-cycle'],
    ['clicks', 'click'],
    ['deg per psi', 'deg/psi', 3],
    ['AFR', 'ratio'],
    ['in', 'in'],
    ['in drive', undefined],
    ['in Neutral', undefined],
    ['rpm in drive', 'rpm'],
    ['m in', 'm'],
    ['F probe at', 'F'],
    ['hogsheads', undefined],
    ['', undefined],
  ])('%s', (written, id, length = 1) => {
    const found = matchUnit(written.split(' '), 0);
    expect(found?.unit.id).toBe(id);
    if (found) expect(found.length).toBe(length);
  });

  it('also as one word, blanks and all', () => {
    expect(matchUnit(['in  Hg', 'at'], 0)).toEqual({ unit: unitById('inHg'), length: 1 });
  });

  it('begins at the word asked for', () => {
    expect(matchUnit(['idle', '920', 'dist', 'rpm'], 2)).toEqual({ unit: unitById('dist-rpm'), length: 2 });
    expect(matchUnit(['idle'], 1)).toBeUndefined();
  });

  it.each([
    ['dge', 'deg'],
    ['inhgg', 'inHg'],
    ['turms', 'turn'],
    ['pis', 'psi'],
    ['farenheit', 'F'],
    ['hogsheads', undefined],
    ['q', undefined],
  ])('nearest to %s is %s', (word, id) => expect(nearestUnit(word)?.id).toBe(id));
});

describe('conversion', () => {
  const pairs = fc
    .constantFrom(...UNITS)
    .chain((from) =>
      fc.tuple(fc.constant(from), fc.constantFrom(...UNITS.filter((u) => u.dimension === from.dimension))),
    );

  it('comes back to where it began', () => {
    fc.assert(
      fc.property(pairs, fc.double({ min: -1e6, max: 1e6, noNaN: true }), ([from, to], value) => {
        const back = convert(convert(value, from, to), to, from);
        const scale = Math.max(Math.abs(value), 500, Math.abs((to.offset ?? 0) * (to.factor / from.factor)));
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * scale);
      }),
    );
  });

  it('takes an interval where it takes each of its values', () => {
    const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(
        pairs,
        value,
        value,
        fc.double({ min: 0, max: 1, noNaN: true }),
        ([from, to], a, b, share) => {
          const made = range(a, b);
          const point = Math.min(made.high, Math.max(made.low, made.low + share * (made.high - made.low)));
          const { low, high } = convertInterval(made, from, to);
          const converted = convert(point, from, to);
          expect(low <= converted && converted <= high).toBe(true);
        },
      ),
    );
  });

  it.each<[number, string, string, number]>([
    [212, 'F', 'C', 100],
    [100, 'C', 'F', 212],
    [-40, 'F', 'C', -40],
    [0, 'C', 'K', 273.15],
    [17, 'dist-deg', 'deg', 34],
    [5, 'deg-atdc', 'deg', -5],
    [3, 'flat', 'turn', 0.5],
  ])('%d %s in %s', (value, from, to, expected) => {
    expect(convert(value, unitById(from), unitById(to))).toBe(expected);
  });

  it('keeps roughness and open ends', () => {
    expect(convertInterval(about(212), unitById('F'), unitById('C'))).toEqual(about(100));
    const open = { low: -Infinity, high: 212, about: false };
    expect(convertInterval(open, unitById('F'), unitById('C'))).toEqual({ ...open, high: 100 });
  });

  it('turns a bound round where the sign turns', () => {
    const after = convertInterval(
      { low: 4, high: Infinity, about: false },
      unitById('deg-atdc'),
      unitById('deg'),
    );
    expect(after).toEqual({ low: -Infinity, high: -4, about: false });
  });

  it('takes no offset in a difference', () => {
    expect(convertDifference(9, unitById('F'), unitById('C'))).toBeCloseTo(5, 12);
  });

  it('refuses another dimension', () => {
    expect(() => convert(1, unitById('deg'), unitById('psi'))).toThrow('deg');
    expect(() => convert(1, unitById('km'), unitById('m'))).toThrow('km');
  });
});
