import { describe, expect, it } from 'vitest';
import { unitById } from '../../server/trade/measure/units.ts';
import type { Band, Quantity } from '../../server/trade/vocabulary/quantity.ts';
import {
  findQuantity,
  nearestWords,
  PLACE_WORDS,
  VOCABULARY,
} from '../../server/trade/vocabulary/vocabulary.ts';

const rows = VOCABULARY.map((row) => [`${row.section ?? row.kind}: ${row.name}`, row] as const);

describe.each(rows)('%s', (_, row) => {
  it('is well formed', () => {
    for (const word of [row.name, ...row.aliases]) expect(word).toMatch(/^[a-z0-9]+( [a-z0-9]+){0,3}$/);
    expect(row.meaning).toMatch(/^[A-Z].+\.$/);
    expect(row.kind === 'fact').toBe(row.section !== undefined);
    if (row.kind === 'setting') expect(row.owner).toBeDefined();
  });

  it('has units that fit', () => {
    const measured = row.form === 'number' || row.form === 'curve';
    expect(row.unit !== undefined && row.dimension !== undefined).toBe(measured);
    expect(row.against !== undefined).toBe(row.form === 'curve');
    expect(row.parts !== undefined).toBe(row.form === 'several');
    if (row.unit) expect(unitById(row.unit).dimension).toBe(row.dimension);
    if (row.against) expect(unitById(row.against.unit).dimension).toBe(row.against.dimension);
    if (row.bare) expect(row.unit).toBeDefined();
    expect(row.orIn ?? []).not.toContain(row.dimension);
  });

  it('has limits that say how far they may be leaned on', () => {
    for (const [band, dimension] of bandsOf(row)) {
      expect(unitById(band.unit).dimension).toBe(dimension);
      expect(band.low).toBeLessThan(band.high);
      expect(['published', 'common practice', 'from memory']).toContain(band.standing);
      expect(band.source.length).toBeGreaterThan(5);
      if (band.standing === 'published') expect(band.source).toMatch(/^(TM |OD\d)/);
    }
  });
});

describe('the table', () => {
  it.each<[string, (row: Quantity) => boolean]>([
    ['of a session', (row) => row.kind !== 'fact'],
    ['of the engine', (row) => row.section === 'engine'],
    ['of the vehicle', (row) => row.section === 'vehicle'],
  ])('has no word twice among those %s', (_, among) => {
    const words = VOCABULARY.filter(among).flatMap((row) => [row.name, ...row.aliases]);
    expect(words.filter((word, i) => words.indexOf(word) !== i)).toEqual([]);
  });

  it('takes no word the notation begins a section or a work line with', () => {
    const notation =
      'notebook engine vehicle parts limits targets specs ports session use own words fit remove note todo';
    const more = 'fault done check photo log keep revert trial want recheck';
    const taken = new Set(`${notation} ${more}`.split(' '));
    const words = VOCABULARY.flatMap((row) => [row.name, ...row.aliases]);
    expect(words.filter((word) => taken.has(word))).toEqual([]);
  });

  /** The words the notebook is promised to know, each with its kind. */
  it.each([
    ...named(
      'setting',
      'initial, mechanical, mechanical limit, vacuum advance, vacuum limit, advance springs, dwell',
    ),
    ...named(
      'setting',
      'points gap, plug gap, plug type, mixture, idle screw, secondary stop, main jet, secondary jet',
    ),
    ...named('setting', 'idle jet, air bleed, power valve, float level, accelerator pump, choke, needle'),
    ...named('setting', 'fuel regulator, fuel line, valve lash, blower ratio'),
    ...named(
      'reading',
      'idle, timing, total, all in, depression, tube, egt, water, oil temperature, oil pressure',
    ),
    ...named(
      'reading',
      'fuel pressure, air-fuel ratio, lambda, carbon monoxide, boost, compression, leak-down, volts',
    ),
    ...named('reading', 'plug, knock, speed, run time, odometer, hours, fuel used, torque, weather'),
    ...named(
      'fact',
      'cylinders, firing order, bore, stroke, displacement, fuel, damper, bank, deck clearance',
    ),
    ...named('fact', 'gasket bore, gasket thickness, chamber volume, piston volume, rod length, camshaft'),
    ...named('fact', 'weight, tyre, final drive, gear ratios, transmission'),
  ])('knows %2$s as a %1$s', (kind, word) => {
    const found = findQuantity(word.split(' '));
    expect(found?.quantity.kind).toBe(kind);
    expect(found?.length).toBe(word.split(' ').length);
  });

  it('gives valve lash for intake and exhaust', () => {
    expect(findQuantity(['valve', 'lash'])?.quantity.places).toContain('valve');
    expect(PLACE_WORDS.get('intake')).toBe('valve');
    expect(PLACE_WORDS.get('exhaust')).toBe('valve');
  });
});

describe('a word is found', () => {
  it.each<[string, string | undefined, number, number?]>([
    ['initial', 'initial', 1],
    ['INITIAL', 'initial', 1],
    ['all in', 'all in', 2],
    ['All-in', 'all in', 1],
    ['all-in-speed 3000', 'all in', 1],
    ['mechanical 0', 'mechanical', 1],
    ['mechanical limit 14', 'mechanical limit', 2],
    ['vacuum 17', 'depression', 1],
    ['vacuum advance 0', 'vacuum advance', 2],
    ['vacuum-advance limit', 'vacuum limit', 2],
    ['main jet left', 'main jet', 2],
    ['idle mixture screw left', 'mixture', 3],
    ['fuel pressure regulator 5', 'fuel regulator', 3],
    ['at idle', undefined, 0],
    ['at idle', 'idle', 1, 1],
    ['toString', undefined, 0],
    ['', undefined, 0],
  ])('%s', (written, name, length, from = 0) => {
    const found = findQuantity(written.split(' '), from);
    expect([found?.quantity.name, found?.length ?? 0]).toEqual([name, length]);
  });

  it('that the notation gives as one, blanks and all', () => {
    expect(findQuantity(['all  in', '3000'])).toMatchObject({ quantity: { name: 'all in' }, length: 1 });
  });

  it.each([
    [undefined, 'pressure', 'reading'],
    ['engine', 'ratio', 'fact'],
    ['vehicle', 'pressure', 'reading'],
  ] as const)('compression in section %s is a %s', (section, dimension, kind) => {
    const quantity = findQuantity(['compression'], 0, section)?.quantity;
    expect([quantity?.dimension, quantity?.kind]).toEqual([dimension, kind]);
  });
});

describe('a slip of the pen is seen', () => {
  it.each([
    ['inital', 'initial'],
    ['initail', 'initial'],
    ['mixtrue', 'mixture'],
    ['deppression', 'depression'],
    ['mainjet', 'main jet'],
    ['Tottal', 'total'],
    ['All-inn', 'all in'],
    ['zzzzzz', undefined],
    ['q', undefined],
  ])('%s: %s', (written, meant) => expect(nearestWords(written, 3)[0]).toBe(meant));

  it('gives no more than asked for and takes words of the notebook', () => {
    expect(nearestWords('idle jett', 3)).toEqual(['idle jet', 'idle jets']);
    expect(nearestWords('idle jett', 1)).toEqual(['idle jet']);
    expect(nearestWords('strobbe', 3, ['strobe'])).toEqual(['strobe', 'stroke']);
    expect(nearestWords('Jet-ski', 3, ['jet skis', 'JET SKI'])).toEqual(['JET SKI', 'jet skis']);
  });

  it.each([
    ['idle', 75, 7500],
    ['all in', 280, 28000],
    ['initial', 90, -9],
    ['total', 3.4, 340],
    ['dwell', 5, 500],
    ['mixture', 0.15, 15],
    ['fuel regulator', 0.5, 55],
    ['water', 18, 1800],
    ['volts', 1.26, 126],
    ['cylinders', 0, 40],
  ])('%s: neither %d nor %d is within its limits', (word, low, high) => {
    const band = findQuantity(word.split(' '))?.quantity.band;
    expect([low, high].filter((value) => !band || (value >= band.low && value <= band.high))).toEqual([]);
  });
});

function named(kind: Quantity['kind'], words: string): (readonly [Quantity['kind'], string])[] {
  return words.split(', ').map((word) => [kind, word] as const);
}

function bandsOf(row: Quantity): (readonly [Band, Quantity['dimension']])[] {
  const own = row.band ? [[row.band, row.dimension] as const] : [];
  const parts = (row.parts ?? []).flatMap((part) =>
    part.band ? [[part.band, part.dimension] as const] : [],
  );
  return [...own, ...parts];
}
