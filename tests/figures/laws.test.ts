/** Laws of the figures: the unit that is typed does not count, and a range gives a range that holds every point of it. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Figure } from '../../server/analysis/figure.ts';
import { convertInterval, unitById } from '../../server/trade/measure/units.ts';
import { figuresIn } from '../harness/figures.ts';
import { SEED } from '../laws/law.ts';

/** Many notebooks are read: a machine with other work takes its time. */
const SLOW = { timeout: 600_000 };

type Write = (value: number) => string;

interface Writing {
  readonly length: Write;
  readonly volume: Write;
  readonly pressure: Write;
  readonly boost: Write;
  readonly celsius: Write;
  readonly angle: Write;
  readonly rpm: Write;
  /** A point of a curve stands at one speed. */
  readonly at: Write;
  readonly plain: Write;
}

const SIZES = fc.record({
  bore: fc.double({ min: 50, max: 120, noNaN: true }),
  stroke: fc.double({ min: 50, max: 120, noNaN: true }),
  chamber: fc.double({ min: 30, max: 90, noNaN: true }),
  gasket: fc.double({ min: 0.5, max: 2, noNaN: true }),
  damper: fc.double({ min: 120, max: 220, noNaN: true }),
  celsius: fc.double({ min: 1, max: 40, noNaN: true }),
  hPa: fc.double({ min: 700, max: 1050, noNaN: true }),
  boost: fc.double({ min: 1, max: 14, noNaN: true }),
  initial: fc.double({ min: 4, max: 16, noNaN: true }),
  redLine: fc.double({ min: 3000, max: 8000, noNaN: true }),
  dwell: fc.double({ min: 20, max: 60, noNaN: true }),
  ratio: fc.double({ min: 7, max: 12, noNaN: true }),
});

type Sizes = typeof SIZES extends fc.Arbitrary<infer T> ? T : never;

/** A notebook in which every kind of figure has what it asks for. */
const bookOf = (sizes: Sizes, write: Writing): string => `
  engine
    cylinders 4
    bore ${write.length(sizes.bore)}
    stroke ${write.length(sizes.stroke)}
    chamber volume ${write.volume(sizes.chamber)}
    piston volume ${write.volume(5)}
    gasket thickness ${write.length(sizes.gasket)}
    deck clearance ${write.length(0.4)}
    damper ${write.length(sizes.damper)}
    stop radius ${write.length(12)}
    red line ${write.rpm(sizes.redLine)}
  session 2026-05-01
    weather ${write.celsius(15)}, ${write.pressure(1013.25)}, 0 %RH
    initial ${write.angle(sizes.initial)}
    mechanical ${write.angle(4)} @ ${write.at(900)}, ${write.angle(22)} @ ${write.at(3200)}
    main jet ${write.length(1.2)}
    dwell ${write.plain(sizes.dwell)} deg
    fuel line ${write.length(8)}
    needle seat ${write.length(2.5)}
  session 2026-05-02
    weather ${write.celsius(sizes.celsius)}, ${write.pressure(sizes.hPa)}, 0 %RH
    boost ${write.boost(sizes.boost)}
    air fuel ratio ${write.plain(sizes.ratio)}
    fuel pressure ${write.boost(4)}`;

const plainly =
  (unit: string): Write =>
  (value) =>
    `${text(value)} ${unit}`;
const inUnit =
  (unit: string, factor: number, offset = 0): Write =>
  (value) =>
    `${text(value * factor + offset)} ${unit}`;

/** As people write: no exponents. */
const text = (value: number): string => value.toFixed(12).replace(/\.?0+$/, '');

const USUAL: Writing = {
  length: plainly('mm'),
  volume: plainly('cc'),
  pressure: plainly('hPa'),
  boost: plainly('psi'),
  celsius: plainly('C'),
  angle: plainly('deg'),
  rpm: plainly('rpm'),
  at: plainly('rpm'),
  plain: text,
};

const OTHER: Writing = {
  length: inUnit('in', 1 / 25.4),
  volume: inUnit('cu in', 1 / 16.387064),
  pressure: inUnit('inHg', 100 / 3386.388640341),
  boost: inUnit('kPa', 6.894757293168361),
  celsius: inUnit('F', 1.8, 32),
  angle: inUnit('dist deg', 0.5),
  rpm: inUnit('dist rpm', 0.5),
  at: inUnit('dist rpm', 0.5),
  plain: text,
};

/** Fewer, and the notebook above no longer gives the figures what they ask for. */
const FEWEST = 15;
/** A setting worked out is told in the unit it was written in. */
const BASE: Readonly<Record<string, string>> = { in: 'mm' };

function valuesOf(book: string): ReadonlyMap<string, NonNullable<Figure['value']>> {
  const figures = figuresIn(book).filter((figure) => OWN_TOPICS.has(figure.topic));
  return new Map(
    figures.flatMap(({ name, value, unit }) => {
      const base = unit && BASE[unit.id];
      if (!value) return [];
      return [[name, unit && base ? convertInterval(value, unit, unitById(base)) : value] as const];
    }),
  );
}

const OWN_TOPICS: ReadonlySet<string> = new Set(['timing', 'points', 'air', 'fuel', 'squeeze']);

test('a figure does not depend on the unit typed', SLOW, () => {
  fc.assert(
    fc.property(SIZES, (sizes) => {
      const usual = valuesOf(bookOf(sizes, USUAL));
      const other = valuesOf(bookOf(sizes, OTHER));
      expect([...other.keys()]).toEqual([...usual.keys()]);
      expect(usual.size).toBeGreaterThanOrEqual(FEWEST);
      for (const [name, { low, high }] of usual) {
        expect(near(other.get(name)?.low, low), `${name}: ${other.get(name)?.low} for ${low}`).toBe(true);
        expect(near(other.get(name)?.high, high), name).toBe(true);
      }
    }),
    { numRuns: 60, seed: SEED },
  );
});

const near = (a: number | undefined, b: number): boolean =>
  a !== undefined && Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(b));

test('a range gives a range that holds what every point of it gives', SLOW, () => {
  const share = fc.double({ min: 0, max: 0.05, noNaN: true });
  fc.assert(
    fc.property(SIZES, share, share, (sizes, below, above) => {
      const around =
        (write: Write): Write =>
        (value) =>
          `${text(value * (1 - below))}..${write(value * (1 + above))}`;
      const ranges = Object.fromEntries(
        Object.entries(USUAL).map(([name, write]) => [name, name === 'at' ? write : around(write as Write)]),
      ) as unknown as Writing;
      const points = valuesOf(bookOf(sizes, USUAL));
      const wide = valuesOf(bookOf(sizes, ranges));
      for (const [name, { low, high }] of points) {
        const range = wide.get(name);
        expect(range, name).toBeDefined();
        const room = 1e-9 * Math.max(1, Math.abs(low));
        expect((range?.low ?? 0) <= low + room && high - room <= (range?.high ?? 0), name).toBe(true);
      }
    }),
    { numRuns: 60, seed: SEED },
  );
});

test('a trial gives the same knob whatever unit its rows are in', SLOW, () => {
  const rise = fc.double({ min: 0.5, max: 3, noNaN: true });
  fc.assert(
    fc.property(fc.array(rise, { minLength: 2, maxLength: 6 }), (rises) => {
      const trial = (knob: Write) => {
        const rows = rises.map((_, i) => {
          const gave = 3 + rises.slice(0, i + 1).reduce((a, b) => a + b);
          return `    ${knob(4 + i)} ${text(gave)} psi\n`;
        });
        return `session 2026-05-01\n  trial feed restrictor -> oil pressure\n${rows.join('')}    want 5 psi\n`;
      };
      const knobOf = (book: string) => {
        const found = figuresIn(book).find((figure) => figure.name === 'feed restrictor for 5 psi');
        return found?.value && found.unit && convertInterval(found.value, found.unit, unitById('mm'));
      };
      const [usual, other] = [knobOf(trial(USUAL.length)), knobOf(trial(OTHER.length))];
      expect(usual?.low !== undefined).toBe(true);
      expect(near(other?.low, usual?.low ?? 0) && near(other?.high, usual?.high ?? 0)).toBe(true);
    }),
    { numRuns: 40, seed: SEED },
  );
});
