/** What `read` writes: each line with what it was taken for, as the schema says. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fits, type Schema } from './schema.ts';
import { ran } from './terminal.ts';

const root = join(import.meta.dirname, '../..');
const SCHEMA = JSON.parse(readFileSync(join(root, 'schemas/read-line.schema.json'), 'utf8')) as Schema;

const BOOK = `Sat 3/14/26 - truck out
12 initial, 22 mech
idle 700..800 rpm in neutral  ; cold
fuel dripping off the bowl
the rain stopped
back to 850
initial 9 F

air temperature -5 C
mixture left 1 1/2 turns, right in 1/4 turn
`;

const objects = (text: string) =>
  ran('read x.tappet --format ndjson', { 'x.tappet': text })
    .out.trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));

describe('as ndjson', () => {
  it('tells of each line what it was taken for', () =>
    expect(objects(BOOK).map(({ line, status, as }) => [line, status, as.join(' | ')])).toEqual([
      [1, 'spoken', 'session 2026-03-14  Truck out'],
      [2, 'spoken', 'initial 12 deg | mechanical limit 22 deg'],
      [3, 'read', 'idle 700..800 rpm in neutral'],
      [4, 'asked', ''],
      [5, 'note', 'note the rain stopped'],
      [6, 'asked', ''],
      [7, 'asked', ''],
      [8, 'read', ''],
      [9, 'read', 'air temperature -5 C'],
      [10, 'read', 'mixture left 1 1/2 turns, right in 1/4 turn'],
      [11, 'read', ''],
    ]));

  it("gives values in the word's own unit", () => {
    const { entries } = objects('session 2026-05-02\nwater 80 C\nidle 850 rpm in neutral')[1];
    expect(entries).toEqual([
      {
        kind: 'reading',
        name: 'water',
        place: null,
        low: 176,
        high: 176,
        unit: 'F',
        relative: null,
        conditions: [],
        text: null,
      },
    ]);
  });

  it('tells how far a setting was moved, and a sign of anything else as its own', () => {
    const [cold, mixture] = objects(BOOK).slice(8, 10);
    expect(cold.entries[0]).toMatchObject({ low: 23, relative: null });
    expect(mixture.entries).toMatchObject([
      { place: 'left', low: 1.5, relative: null },
      { place: 'right', low: 0.25, relative: 'in' },
    ]);
  });

  it('offers what may be dangerous as a fault', () => {
    const danger = objects(BOOK)[3];
    expect(danger.safety).toBe(true);
    expect(danger.offers[0]).toMatch(/^fault .*\[safety\]$/);
  });

  it('offers nothing for what it does not understand, and keeps none of it', () =>
    expect(objects('session 2026-05-02\nidle 850 rmp')[1]).toMatchObject({
      status: 'unread',
      as: [],
      offers: [],
      entries: [],
    }));

  const samples = ['ski-boat', 'field-tractor', 'marsh-runner', 'lorry-year'];
  it.each(samples)('fits the schema: %s', (name) => {
    const text = readFileSync(join(root, `samples/${name}.tappet`), 'utf8');
    expect(objects(text).flatMap((each) => fits(each, SCHEMA, name))).toEqual([]);
  });
  it('fits the schema: plain speech', () =>
    expect(objects(BOOK).flatMap((each) => fits(each, SCHEMA, 'line'))).toEqual([]));
  it('anything else does not', () => {
    const [first] = objects(BOOK);
    expect(fits({ ...first, line: 0 }, SCHEMA, 'line')).toHaveLength(1);
    expect(fits({ ...first, status: 'guessed' }, SCHEMA, 'line')).toHaveLength(1);
    expect(fits({ ...first, more: 1 }, SCHEMA, 'line')).toHaveLength(1);
  });
});

describe('as text', () => {
  const { out } = ran('read x.tappet', { 'x.tappet': BOOK });

  it('shows what a line means below it', () =>
    expect(out).toContain('    2  12 initial, 22 mech\n         -> initial 12 deg\n'));
  it('shows what may be chosen', () => expect(out).toMatch(/ \? fault .* \[safety\]\n/));
});

describe('check --fix', () => {
  const fixed = (text: string) => ran('check x.tappet --fix', { 'x.tappet': text }).saved['x.tappet'];

  it('writes plain speech as it was read, and leaves what is asked', () =>
    expect(fixed(BOOK)?.split('\n').slice(0, 7)).toEqual([
      'session 2026-03-14  Truck out',
      'initial 12 deg',
      'mechanical limit 22 deg',
      'idle 700..800 rpm in neutral  ; cold',
      'fuel dripping off the bowl',
      'note the rain stopped',
      'back to 850',
    ]));

  it('keeps indentation, comment and breaks', () =>
    expect(fixed('session 2026-05-02\r\n  12 initial, 22 mech ; by lamp\r\n')).toBe(
      'session 2026-05-02\r\n  initial 12 deg\r\n  mechanical limit 22 deg ; by lamp\r\n',
    ));

  it('puts right what is sure', () =>
    expect(fixed('engine\n  cilynders 4\n')).toBe('engine\n  cylinders 4\n'));
  it('writes nothing where there is nothing to do', () =>
    expect(fixed('engine\n  cylinders 4\n')).toBeUndefined());
  it('tells what cannot be written', () => {
    const { code, err } = ran('check locked.tappet --fix', { 'locked.tappet': 'engine\n  cilynders 4\n' });
    expect([code, err]).toEqual([2, expect.stringContaining('locked.tappet')]);
  });
});
