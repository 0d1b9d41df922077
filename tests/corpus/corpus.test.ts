/** How a corpus of pencilled lines is read: what is asked of each class, counted line by line. */
import { expect, test } from 'vitest';
import { DISPUTED } from './disputed.ts';
import { type Class, ROWS } from './rows.ts';
import { type Outcome, results } from './run.ts';

const all = results();
const of = (kind: Class, ...outcomes: readonly Outcome[]) =>
  all.filter(
    ({ row, outcome }) => row.class === kind && (outcomes.length === 0 || outcomes.includes(outcome)),
  );
const share = (kind: Class, ...outcomes: readonly Outcome[]) =>
  of(kind, ...outcomes).length / of(kind).length;
const texts = (outcome: Outcome) => all.filter((each) => each.outcome === outcome).map(({ row }) => row.text);

test('nothing is stored that was not meant', () =>
  expect(texts('misread').filter((text) => !DISPUTED.has(text))).toEqual([]));

test('lines with one meaning get it, or are asked with it first where it leans on another line', () => {
  const disputed = of('read').filter(
    ({ row, outcome }) => !/^(?:exact|offered)$/.test(outcome) && DISPUTED.has(row.text),
  );
  const offered = of('read', 'offered').length;
  const wanted = of('read', 'exact').length + offered + disputed.length;
  expect(wanted / of('read').length).toBeGreaterThanOrEqual(0.85);
});

test('a remark is kept without complaint', () =>
  expect(share('prose', 'exact')).toBeGreaterThanOrEqual(0.95));
test('danger is told, or offered', () => expect(share('danger', 'exact')).toBe(1));
test('what is to be done is offered', () => expect(share('open', 'exact')).toBeGreaterThanOrEqual(0.9));
test('what nobody could know is asked', () => expect(share('ask', 'exact')).toBeGreaterThanOrEqual(0.9));

test('few meanings are disputed, all of them lines of the corpus', () => {
  expect(DISPUTED.size / ROWS.length).toBeLessThanOrEqual(0.05);
  const lines = new Set(ROWS.map(({ text }) => text));
  expect([...DISPUTED.keys()].filter((text) => !lines.has(text))).toEqual([]);
});
