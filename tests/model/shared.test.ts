/** Notebooks that use one another, kept as texts by name. */
import { expect, test } from 'vitest';
import { edit, refresh, type Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { findingCircles } from '../../server/model/snapshot/use-circles.ts';
import {
  filesAskedBy,
  type NotebookTexts,
  sharedFor,
  stateGiven,
  usesIn,
  usesOf,
} from '../../server/model/snapshot/used-notebooks.ts';
import { openNotebook } from '../../server/rules/check.ts';

/** The names of files are their paths here; what begins with `/` is outside. */
function shelf(texts: Readonly<Record<string, string>>) {
  const known: NotebookTexts = {
    resolve: (_, path) => (path.startsWith('/') ? undefined : path),
    isCircle: findingCircles((name) => usesIn(texts[name] ?? '')),
    stateOf: (name) => (texts[name] === undefined ? { problem: 'missing' } : stateGiven(notebook(name))),
    missing: (name) => (texts[name] === undefined ? { problem: 'missing' } : undefined),
  };
  const notebook = (name: string): Snapshot => openNotebook(texts[name] ?? '', sharedFor(name, known));
  return notebook;
}
const codesIn = (snapshot: Snapshot) => snapshot.findings.map(({ code, at }) => `${at + 1} ${code}`);

const SHOP =
  'limits\n  total <= 30 deg\nwords\n  flap gap: setting, 2..5 mm\nspecs\n  head bolts torque 60 lb-ft\n';
const USER =
  'use shop\nsession 2026-05-02\n  total 31 deg @ 3000 rpm\n  flap gap 9 mm\n  head bolts 70 lb-ft\n';

test('limits, own words and specs hold where they are used', () =>
  expect(codesIn(shelf({ user: USER, shop: SHOP })('user'))).toEqual([
    '3 over-limit',
    '4 outside-band',
    '5 torque-outside-spec',
  ]));

test('through another page too', () =>
  expect(
    codesIn(shelf({ user: USER.replace('shop', 'mine'), mine: 'use shop\n', shop: SHOP })('user')),
  ).toHaveLength(3));

test.each([
  ['itself', { a: 'use a\n' }, ['1 use-cycle']],
  ['each other', { a: 'use b\n', b: 'use a\n' }, ['1 use-cycle']],
  ['round three', { a: 'use b\n', b: 'use c\n', c: 'use a\n' }, ['1 use-cycle']],
  ['a cycle further on is not this one', { a: 'use b\n', b: 'use c\n', c: 'use c\n' }, []],
  [
    'a circle off the way is not this one',
    { a: 'use b\nuse c\n', b: 'use d\n', c: 'use b\n', d: 'use b\n' },
    [],
  ],
  [
    'two circles that share one',
    { a: 'use b\nuse c\n', b: 'use a\n', c: 'use a\n' },
    ['1 use-cycle', '2 use-cycle'],
  ],
  ['nothing there', { a: 'use b\n' }, ['1 use-missing']],
  ['outside', { a: 'use /b\n' }, ['1 use-outside']],
])('%s', (_, texts, codes) => expect(codesIn(shelf(texts)('a'))).toEqual(codes));

test('what is used may change: the pages that asked are read again, and what follows from them', () => {
  const before = shelf({ user: USER, shop: SHOP })('user');
  const changed = shelf({ user: USER, shop: SHOP.replace('30', '40') });
  const after = refresh(before, changed('user').shared);
  expect(codesIn(after)).toEqual(codesIn(changed('user')));
  expect(codesIn(after)).not.toContain('3 over-limit');
});

test('a photo that comes to be there is told no more, and only its page is read again', () => {
  const user = 'session 2026-05-02\n  photo a.jpg\nsession 2026-05-03\n  idle 850 rpm\n';
  const before = shelf({ user })('user');
  expect(codesIn(before)).toEqual(['2 file-missing']);
  expect(filesAskedBy(before)).toEqual(['a.jpg']);
  const after = refresh(before, shelf({ user, 'a.jpg': '' })('user').shared);
  expect(codesIn(after)).toEqual([]);
  expect(after.pages.map((page, i) => page === before.pages[i])).toEqual([false, true]);
});

test.each([
  ['a line that uses it, added', '', 'use shop\n'],
  ['taken out', 'use shop\n', ''],
  ['turned to another', 'use shop\n', 'use nowhere\n'],
])('an edit of the user reads what opening would: %s', (_, before, after) => {
  const rest = USER.replace('use shop\n', '');
  const texts = { before: before + rest, after: after + rest, shop: SHOP };
  const end = { line: before === '' ? 0 : 1, character: 0 };
  const edited = edit(shelf(texts)('before'), {
    range: { start: { line: 0, character: 0 }, end },
    text: after,
  });
  expect(codesIn(edited)).toEqual(codesIn(shelf(texts)('after')));
});

test('sessions of the shared page are nothing to its users', () => {
  const plain = stateGiven(openNotebook(SHOP));
  expect(stateGiven(openNotebook(`; one line more\n${SHOP}session 2026-05-02\n  initial 9 deg\n`))).toEqual(
    plain,
  );
});

test.each([
  ['use a.tappet', ['a.tappet']],
  ['  USE "a; b.tappet" ; why', ['a; b.tappet']],
  ['note use a.tappet', []],
  ['photo a.jpg', []],
  ['use', []],
])('the uses of "%s"', (text, uses) => {
  expect(usesIn(text)).toEqual(uses);
  expect(usesOf(openNotebook(text))).toEqual(uses);
});
