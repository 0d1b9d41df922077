/** What `show` tells beyond the settings: figures by topic with their working, logs beside the notebook, cautions once. */
import { describe, expect, it } from 'vitest';
import { dedent } from '../harness/fixture.ts';
import { ran } from './terminal.ts';

const BOOK = dedent(`
  vehicle
    tyre diameter 30 in
    final drive 3.73
  specs
    rod bolts torque "3/8-16 grade 5"
    stud torque "1/2-13 grade 5"
  ports
    manifold rear open
  session 2026-05-02
    odometer 1000 mi
    recheck head bolts after 200 mi
  session 2026-05-09
    odometer 1300 mi
    speed 60 mph @ 3000 rpm
    idle 800 rpm in neutral
    idle 780 rpm in neutral
    log logs/run.csv
    log ../run.csv
    log none.csv
`);
const FILES = { 'a/x.tappet': BOOK, 'a/logs/run.csv': 'RPM,AFR\n900,13\n', 'run.csv': 'RPM,AFR\n1,1\n' };
const shown = (columns?: number) => ran('show a/x.tappet', FILES, { columns }).out;
const report = () => JSON.parse(ran('show a/x.tappet --format json', FILES).out);

describe('as text', () => {
  it.each<[string, RegExp]>([
    ['a topic', /^Road\n {2}speed in each gear {2}/m],
    [
      'the table of a figure',
      /^ {4}gear +overall +at 1000 rpm\n {4}direct +3.73:1 +23.9 mph \(38.5 km\/h\)$/m,
    ],
    ['formula and working', /^ {4}= pi x tyre .*\n {4}= pi x 0.762 m x 1000 rpm .* = 10.7 m\/s$/m],
    ['standing and source', /^ {4}published: geometry of a rolling wheel/m],
    ['the lines it came from', /^ {4}line 2 +tyre diameter +30 in$/m],
    [
      'a log beside the notebook',
      /^ {2}log logs\/run.csv {2}1 line, engine speed 900 rpm, air fuel ratio 13:1$/m,
    ],
    ['a log outside', /^ {2}log \.\.\/run.csv {2}Can't be summarised: it is outside/m],
    ['a log that is missing', /^ {2}log none.csv {2}Can't be summarised: file not found$/m],
    ['a port', /^Ports\n {2}ports {2}1 open; manifold rear is open: a vacuum leak$/m],
    ['a reminder', /^Reminders\n {2}recheck head bolts {2}due, 100 mi over$/m],
    ['the cautions of the session', /^Cautions\n {2}engine running: Exhaust gas kills/m],
  ])('tells %s', (_what, text) => expect(shown()).toMatch(text));

  it('tells each caution once', () => {
    expect(shown().match(/Exhaust gas kills/g)).toHaveLength(1);
    expect(shown().match(/An estimate, good to about a third/g)).toHaveLength(1);
  });

  it.each([40, 60])('fits %i columns', (columns) => {
    for (const line of shown(columns).split('\n')) expect(line.length, line).toBeLessThanOrEqual(columns);
  });
});

it('as JSON: in words, in numbers, with working, table and lines', () => {
  const { figures, cautions } = report();
  const speed = figures.find(({ name }: { name: string }) => name === 'speed in each gear');
  expect(speed).toMatchObject({ topic: 'road', unit: 'km/h', standing: 'published' });
  expect(speed.low).toBeCloseTo((71.8 / 3) * 1.609344, 1);
  expect(speed.rows[1]).toEqual(['direct', '3.73:1', '23.9 mph (38.5 km/h)']);
  expect(speed.inputs[0]).toEqual({ name: 'tyre diameter', value: '30 in', where: { line: 1 } });
  expect(cautions.map(({ work }: { work: string }) => work)).toContain('run on the road or water');
});
