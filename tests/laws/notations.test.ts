/**
 * Law 12: two notations of one fact give one answer. What is written in one of two ways has the same findings, effects, runs
 * and figures; a value may be rough (`~`) in one way and not in the other, and a text may name the unit it was written in.
 */
import fc from 'fast-check';
import { expect } from 'vitest';
import type { Figure } from '../../server/analysis/figure.ts';
import { allFigures } from '../../server/analysis/figures.ts';
import { lineCount, lineStateAt } from '../../server/model/snapshot/locate.ts';
import { sessionsOf } from '../../server/model/snapshot/section-ranges.ts';
import type { Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { standardAtmosphere } from '../../server/trade/sums/air.ts';
import { law } from './law.ts';

/** One fact in two notations, each one line or several. */
type Fact = readonly [one: string, other: string];

interface Answer {
  /** Codes with the number of the session they are found in, each once. */
  readonly findings: readonly string[];
  /** At the end of each session. */
  readonly figures: readonly unknown[];
}

const one = <T>(...values: readonly T[]): fc.Arbitrary<T> => fc.constantFrom(...values);
const both = (line: string): Fact => [line, line];

/** Lines that are written in one way only, and that the facts bear on. */
const readings = fc.oneof(
  one(
    'power 100 hp',
    'power 82 hp',
    'power 83 hp',
    'run time 14.2 s "400 m"',
    'run time 15.1 s "400 m"',
    'depression 12 inHg at idle',
    'depression 25 inHg',
    'idle 820 rpm in neutral',
    'idle 700 rpm in drive',
    'total 31 deg @ 3200 rpm',
    'main jet 130',
    'main jet 118',
    'initial 9 deg',
    'mixture 1 1/2 turns',
  ).map(both),
);

const pressure = one(0, 500, 2000, 6000, 8000, 12000).map((feet): Fact => {
  const hPa = standardAtmosphere(feet * 0.3048).pascals / 100;
  return [`altitude ${feet} ft`, `barometer ${hPa.toFixed(9)} hPa`];
});

/** Steps of 5 C, which are whole degrees in both. */
const celsius = one(-10, 0, 15, 20, 25, 35);
const fahrenheit = (c: number): number => (c * 9) / 5 + 32;
const temperature = fc.oneof(
  celsius.map((c): Fact => [`air temperature ${c} C`, `air temperature ${fahrenheit(c)} F`]),
  celsius.map((c): Fact => [`weather ${c} C, 1010 hPa`, `weather ${fahrenheit(c)} F, 1010 hPa`]),
  one(20, 55, 60, 80).map((c): Fact => [`water ${c} C`, `water ${fahrenheit(c)} F`]),
);

const distributor = fc.oneof(
  one(6, 9, 12, 40).map((deg): Fact => [`initial ${deg} deg`, `initial ${deg / 2} deg distributor`]),
  one(16, 22, 24).map(
    (deg): Fact => [
      `mechanical 0 deg @ 900 rpm, ${deg} deg @ 3200 rpm`,
      `mechanical 0 deg @ 450 rpm, ${deg / 2} deg @ 1600 rpm, distributor`,
    ],
  ),
  one(16, 20).map(
    (deg): Fact => [`mechanical limit ${deg} deg`, `mechanical limit ${deg / 2} deg distributor`],
  ),
);

const turns = fc.oneof(
  one(1, 1.5, 2, 6).map((n): Fact => [`mixture ${n} turns`, `mixture ${6 * n} flats`]),
  one('in', 'out').map((way): Fact => [`mixture ${way} 1/2 turn`, `mixture ${way} 3 flats`]),
  one(1, 2.5).map((n): Fact => [`idle screw ${n} turns`, `idle screw ${6 * n} flats`]),
);

const four = (values: fc.Arbitrary<number>) => fc.array(values, { minLength: 4, maxLength: 4 });
const eachOf =
  (name: string, unit: string) =>
  (values: readonly number[]): Fact => [
    `${name} ${values.join(' ')} ${unit}`,
    values.map((value, i) => `${name} #${i + 1} ${value} ${unit}`).join('\n  '),
  ];
const lists = fc.oneof(
  four(one(150, 148, 120, 60)).map(eachOf('compression', 'psi')),
  four(one(400, 390, 120)).map(eachOf('tube', 'F')),
  one(1, 1.5).map(
    (n): Fact => [
      `mixture left ${n} turns, right 2 turns`,
      `mixture left ${n} turns\n  mixture right 2 turns`,
    ],
  ),
);

const ENGINE = 'engine\n  cylinders 4\n  firing order 1-3-4-2\n  layout inline\n';

/** What is outside its band; which of these says so hangs on the unit it was written in. */
const GUESSES_AT_UNITS: ReadonlySet<string> = new Set([
  'outside-band',
  'degrees-mixed-up',
  'units-mixed-up',
  'ten-times',
]);

/** A notebook of some days, written in the one and in the other notation. */
const written = (facts: fc.Arbitrary<Fact>): fc.Arbitrary<readonly [string, string]> =>
  fc
    .array(fc.array(fc.oneof(facts, readings), { minLength: 1, maxLength: 8 }), {
      minLength: 1,
      maxLength: 5,
    })
    .map((days) => [text(days, 0), text(days, 1)] as const);

const text = (days: readonly (readonly Fact[])[], way: 0 | 1): string =>
  `${ENGINE}${days
    .map((facts, i) => `session 2026-05-0${i + 1}\n${facts.map((fact) => `  ${fact[way]}\n`).join('')}`)
    .join('')}`;

function answer(book: string, told: (figure: Figure) => unknown): Answer {
  const snapshot = openNotebook(book);
  const sessions = sessionsOf(snapshot);
  const findings = snapshot.findings.map(
    ({ at, code }) =>
      `${GUESSES_AT_UNITS.has(code) ? 'outside-band' : code} in ${sessions.findIndex(({ from, to }) => from <= at && at < to)}`,
  );
  return {
    findings: [...new Set(findings)].sort(),
    figures: sessions.map(({ to }) =>
      figuresAt(snapshot, to - 1)
        .map(told)
        .filter((each) => each !== undefined),
    ),
  };
}

function figuresAt(snapshot: Snapshot, line: number): readonly Figure[] {
  const at = Math.min(line, lineCount(snapshot) - 1);
  const state = lineStateAt(snapshot, at)?.after;
  return state ? allFigures({ state, snapshot, line: at }) : [];
}

const rounded = (figure: Figure): unknown =>
  figure.value && [figure.value.low, figure.value.high].map((n) => Number(n.toPrecision(6)));

/** Where both notations have the same units, all that a figure says but its inputs. */
const inFull = (figure: Figure): unknown => ({
  name: figure.name,
  value: rounded(figure),
  text: figure.text.replaceAll('~', ''),
  rows: figure.rows.map((cells) => cells.join(' | ').replaceAll('~', '')),
});

/** Where a text names what was written as it was written; of the known effects how often and how surely. */
const inNumbers = (figure: Figure): unknown => ({
  name: figure.name,
  // A difference of temperatures is told in the unit last written.
  value: figure.unit?.dimension === 'temperature' ? undefined : rounded(figure),
  effects:
    figure.name === 'known effects' &&
    figure.rows.map(([, reading, , seen, , verdict]) => `${reading}: ${seen}, ${verdict}`),
});

/**
 * A list is compared with earlier lists as a whole, by its mean, and a line of one cylinder with that cylinder's earlier
 * ones: what is compared across readings has other names. All else is the same.
 */
const ofCylinders = (figure: Figure): unknown =>
  figure.topic === 'effects' || figure.topic === 'history' ? undefined : inFull(figure);

function isOne(told: (figure: Figure) => unknown): (books: readonly [string, string]) => void {
  return ([first, second]) => {
    expect(answer(second, told)).toEqual(answer(first, told));
  };
}

law(
  'law 12: pressure by altitude is pressure by barometer',
  written(
    fc.oneof(
      pressure,
      celsius.map((c) => both(`air temperature ${c} C`)),
    ),
  ),
  isOne(inFull),
  2,
);
law('law 12: a temperature in C is one in F', written(temperature), isOne(inNumbers));
law('law 12: degrees of the distributor are half those of the crank', written(distributor), isOne(inNumbers));
law('law 12: six flats are a turn', written(turns), isOne(inNumbers));
law('law 12: what is found in one list is found in several lines', written(lists), ([list, lines]) => {
  const [one, other] = [answer(list, ofCylinders), answer(lines, ofCylinders)];
  const found = one.findings.filter((each) => !each.startsWith('unlike-its-past'));
  expect(other.figures).toEqual(one.figures);
  // A line is held to what is known by then, so several lines may show what a later one clears up.
  expect(other.findings).toEqual(expect.arrayContaining(found));
});
