import { expect, test } from 'vitest';
import { linkTexts, movedFiles } from '../harness/navigation.ts';

test('photos, logs and other notebooks', () =>
  expect(
    linkTexts(`
      use «shop/limits.tappet»
      session 2026-05-02
        photo «photos/a b.jpg»  ; from below
        09:30 log "«run; second.csv»"
        note photo c.jpg
        photo
    `),
  ).toEqual(['use shop/limits.tappet', 'photo photos/a b.jpg', 'log run; second.csv']));

const line = (path: string) => `session 2026-05-02\n  photo ${path} ; x\n`;

test.each([
  ['a/', 'b/', 'a/x.jpg', 'b/x.jpg'],
  ['a/', 'b;/', 'a/x.jpg', '"b;/x.jpg"'],
  ['a/', 'b;/', '"a/x.jpg"', '"b;/x.jpg"'],
  ['a/', 'b/', 'c/x.jpg', 'c/x.jpg'],
  ['a/', 'b"/', 'a/x.jpg', 'a/x.jpg'],
])('%s moved to %s: %s', (from, to, before, after) =>
  expect(movedFiles(from, to, line(before))).toBe(line(after)),
);
