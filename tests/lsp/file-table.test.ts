/** The table of files: states, readings that overlap, files that are forgotten, folders that change. */
import { expect, test } from 'vitest';
import { createFileTable, isContent } from '../../server/lsp/workspace/file-table.ts';
import type { Absent } from '../../server/model/state/lookup.ts';

type Content = { readonly text: string };
type Answer = Content | Absent;

/** A table whose readings end when the test says so. */
function tableByHand() {
  const waiting: { readonly end: (answer: Answer) => void; readonly fail: (error: Error) => void }[] = [];
  const table = createFileTable<Content>(() => new Promise((end, fail) => void waiting.push({ end, fail })));
  return { table, next: () => waiting.shift() as (typeof waiting)[number] };
}

const A = 'file:///shop/a.tappet';
const MISSING: Absent = { problem: 'missing' };

test('unknown, being read, read, read again', async () => {
  const { table, next } = tableByHand();
  expect([table.has(A), table.get(A), table.age(A)]).toEqual([false, undefined, Number.POSITIVE_INFINITY]);
  const first = table.read(A);
  expect([table.has(A), table.get(A), table.size()]).toEqual([true, undefined, 1]);
  next().end({ text: 'one' });
  expect(await first).toBe(true);
  expect(table.get(A)).toEqual({ text: 'one' });
  expect(table.age(A)).toBeLessThan(60_000);
  const second = table.read(A);
  expect(table.get(A)).toEqual({ text: 'one' });
  next().end({ text: 'two' });
  expect(await second).toBe(true);
  expect(table.get(A)).toEqual({ text: 'two' });
});

test.each<[what: string, answers: readonly Answer[], changes: readonly boolean[]]>([
  ['missing, missing', [MISSING, { problem: 'missing' }], [true, false]],
  ['missing, too large', [MISSING, { problem: 'too large' }], [true, true]],
  ['missing, there, missing', [MISSING, { text: '' }, MISSING], [true, true, true]],
])('%s', async (_, answers, changes) => {
  const { table, next } = tableByHand();
  for (const [i, answer] of answers.entries()) {
    const before = table.get(A);
    const reading = table.read(A);
    next().end(answer);
    expect(await reading).toBe(changes[i]);
    expect(table.get(A) === before).toBe(!changes[i]);
    expect(isContent(table.get(A))).toBe('text' in answer);
  }
});

test('of two readings at once the later one counts, whichever ends first', async () => {
  const { table, next } = tableByHand();
  const [early, late] = [table.read(A), table.read(A)];
  const [old, newer] = [next(), next()];
  newer.end({ text: 'new' });
  await late;
  old.end({ text: 'old' });
  await early;
  expect(table.get(A)).toEqual({ text: 'new' });
});

test('an earlier reading waits for the later one', async () => {
  const { table, next } = tableByHand();
  const [early, late] = [table.read(A), table.read(A)];
  next().end({ text: 'old' });
  await Promise.resolve();
  expect(table.get(A)).toBeUndefined();
  next().end({ text: 'new' });
  expect([await early, await late]).toEqual([true, true]);
  expect(table.get(A)).toEqual({ text: 'new' });
});

test('forgotten while it is read', async () => {
  const { table, next } = tableByHand();
  const reading = table.read(A);
  table.forget(A);
  next().end({ text: 'one' });
  expect(await reading).toBe(false);
  expect([table.has(A), table.size(), table.addresses()]).toEqual([false, 0, []]);
  table.set(A, { text: 'two' });
  expect(table.has(A)).toBe(false);
});

test('a reading that fails leaves nothing behind', async () => {
  const { table, next } = tableByHand();
  const reading = table.read(A);
  next().fail(new Error('broken'));
  await expect(reading).rejects.toThrow('broken');
  expect(table.has(A)).toBe(false);
});

test.each([
  ['file:///shop/a.tappet', [A]],
  ['file:///shop', [A, 'file:///shop/b/c.jpg']],
  ['file:///shop/b/', ['file:///shop/b/c.jpg']],
  ['file:///sho', []],
])('what changes with %s', (uri, addresses) => {
  const { table } = tableByHand();
  for (const address of [A, 'file:///shop/b/c.jpg']) void table.read(address);
  expect(table.at(uri)).toEqual(addresses);
});
